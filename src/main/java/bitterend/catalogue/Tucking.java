package bitterend.catalogue;

/**
 * How many tucks a splice asks for. Regulations state the least number by fibre.
 *
 * @param natural full tucks at least in natural fibre; 0 where nothing is tucked
 * @param other full tucks at least in synthetic fibre and wire; 0 where nothing is tucked
 * @param form how they are made
 * @param projection tail left past the last tuck
 * @param advised full tucks that handbooks ask in synthetic fibre, each strand on its side
 * @param provenance where the least numbers come from
 */
public record Tucking(int natural, int other, Form form, Allowance projection, Advised advised, Provenance provenance) {
    /** Nothing is tucked. */
    public static final Tucking NONE =
            new Tucking(0, 0, Form.PLAIN, Allowance.NOTHING, Advised.NONE, Provenance.ARITHMETIC);

    public Tucking {
        if (natural < 0 || other < 0 || (natural == 0) != (other == 0)) {
            throw new IllegalArgumentException("tucks " + natural + ", " + other);
        }
        if (natural % form.sides() != 0 || other % form.sides() != 0) {
            throw new IllegalArgumentException("tucks " + natural + ", " + other + " on " + form.sides() + " sides");
        }
    }

    /**
     * How tucks are made.
     *
     * @param taper further tucks that take the place of the projection when the strands are tapered away
     * @param half tucks with half of each strand that follow the full ones; 0 for none
     * @param sides sides that share the number: 2 in a join, where each strand makes half of it on its side
     */
    public record Form(int taper, int half, int sides) {
        public static final Form PLAIN = new Form(0, 0, 1);

        public Form {
            if (taper < 0 || half < 0 || sides < 1 || sides > 2 || taper % sides != 0) {
                throw new IllegalArgumentException("taper " + taper + ", half " + half + ", sides " + sides);
            }
        }
    }

    /**
     * What is warned of below, though it is not refused.
     *
     * @param count full tucks of each strand on its side; 0 for none
     * @param provenance who asks it
     */
    public record Advised(int count, Provenance provenance) {
        public static final Advised NONE = new Advised(0, Provenance.ARITHMETIC);

        public Advised {
            if (count < 0) {
                throw new IllegalArgumentException("advised " + count);
            }
        }

        /** {@code 5 full tucks in every synthetic (a source)}. */
        public String words() {
            return count + " full tucks in every synthetic (" + provenance.source() + ")";
        }
    }

    public boolean isNone() {
        return natural == 0;
    }

    /** Full tucks at least for a fibre, on all sides together. */
    public int least(Fibre fibre) {
        return fibre.isNatural() ? natural : other;
    }
}
