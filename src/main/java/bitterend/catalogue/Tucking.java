package bitterend.catalogue;

/**
 * How many tucks a splice asks for. Regulations state the least number by fibre.
 *
 * @param natural tucks at least in natural fibre; 0 where nothing is tucked
 * @param other tucks at least in synthetic fibre and wire; 0 where nothing is tucked
 * @param projection tail left past the last tuck
 * @param taperTucks further tucks that take the place of the projection when the strands are tapered away
 * @param provenance where the least numbers come from
 */
public record Tucking(int natural, int other, Allowance projection, int taperTucks, Provenance provenance) {
    /** Nothing is tucked. */
    public static final Tucking NONE = new Tucking(0, 0, Allowance.NOTHING, 0, Provenance.ARITHMETIC);

    public Tucking {
        if (natural < 0 || other < 0 || taperTucks < 0 || (natural == 0) != (other == 0)) {
            throw new IllegalArgumentException("tucks " + natural + ", " + other + ", tapered " + taperTucks);
        }
    }

    public boolean isNone() {
        return natural == 0;
    }

    /** Tucks at least for a fibre. */
    public int least(Fibre fibre) {
        return fibre.isNatural() ? natural : other;
    }
}
