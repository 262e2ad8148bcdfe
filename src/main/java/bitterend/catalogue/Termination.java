package bitterend.catalogue;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One way of making an end, as a row of data.
 *
 * @param id short name, as orders use it
 * @param family a name it shares with rows for other ropes; an order may use it instead; empty for none
 * @param name the name printed for people
 * @param kind what an order must state with it
 * @param suits the ropes it is made on
 * @param tucking tucks at least, {@link Tucking#NONE} where nothing is tucked
 * @param allowances rope it asks for; what is missing is nothing
 * @param onRope allowances the shop has measured on a rope of its own, by the rope's id; they come before the others
 * @param layout how it is laid out on the bench
 * @param work what it asks of the splicer
 * @param provenance where the row comes from
 */
public record Termination(
        String id,
        String family,
        String name,
        Kind kind,
        Suits suits,
        Tucking tucking,
        Map<What, Allowance> allowances,
        Map<String, Map<What, Allowance>> onRope,
        Layout layout,
        Work work,
        Provenance provenance) {
    public Termination {
        allowances = Map.copyOf(allowances);
        onRope = onRope.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, entry -> Map.copyOf(entry.getValue())));
    }

    /** What an order must state with a termination. */
    public enum Kind {
        /** An eye whose size the order states and whose throat angle counts. */
        EYE("eye"),
        /** A loop whose throat is not spliced: sewn or knotted. Its size is stated, its angle does not count. */
        LOOP("loop"),
        /** A metal end, stated by its id or its depth. */
        FITTING("fitting"),
        /** An end with nothing on it. */
        BARE("bare"),
        /** An end that is joined to another rope, or to the other end of its own; it may state to which. */
        JOIN("join"),
        /** A ring laid up from one strand: the finished length is its inside circumference, and there is no other end. */
        GROMMET("grommet"),
        /** A knot along a piece, made in the standing part. */
        KNOT_ALONG("knot along"),
        /** A loop along a piece, made in the standing part; its size is stated. */
        LOOP_ALONG("loop along");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word used in files. */
        public String word() {
            return word;
        }

        /** Whether it is made along a piece and not at an end of it. */
        public boolean isAlong() {
            return this == KNOT_ALONG || this == LOOP_ALONG;
        }

        /** Whether the order states the size of an eye with it. */
        public boolean wantsEye() {
            return this == EYE || this == LOOP || this == LOOP_ALONG;
        }
    }

    /** What rope a termination asks for, or where. */
    public enum What {
        TAIL("tail", true),
        TAKE_UP("take-up", true),
        /** Half the width of the band in which the take-up of the next splice lies, 95 times in 100. */
        TAKE_UP_SPREAD("spread of the take-up", false),
        /** Rope left long while the take-up is not known better. */
        MARGIN("margin of the take-up", true),
        /** The same for each of two ends of a piece that are made alike; where a row does not say it is the margin of one. */
        MARGIN_OF_TWO("margin of the take-up, of two ends alike", false),
        TRIM("trim", true),
        /** From where the rope turns inside a fitting back to where its dead end comes out. */
        RETURN("back out of the socket", true),
        /** Working room: slack standing part that the splice needs for the tools while it is made. */
        ROOM("room", false),
        /** Standing part that the finished splice fills; two never overlap. What is missing is the room. */
        FILLS("filled", false),
        /** Distance from the throat at which the rope is knotted or pinned while splicing. */
        SLIP_KNOT("slip knot", false),
        /** Smallest sensible inside length of a soft eye, laid flat. */
        LEAST_EYE("smallest eye", false),
        /** Shortest tail that holds in such rope. */
        LEAST_TAIL("least tail", false);

        private final String word;
        private final boolean isCut;

        What(String word, boolean isCut) {
            this.word = word;
            this.isCut = isCut;
        }

        /** The word used in files and on paper. */
        public String word() {
            return word;
        }

        /** Whether it adds to the cut length. */
        public boolean isCut() {
            return isCut;
        }
    }

    /**
     * What a termination asks of the splicer.
     *
     * @param minutes labour; 0 when not known
     * @param parts what it uses up besides rope
     * @param notForLifting why slings and lifting may not have it; empty when they may
     * @param dangers ropes on which it is dangerous
     * @param caution what to read before making it; empty for nothing
     */
    public record Work(int minutes, List<Part> parts, String notForLifting, List<Danger> dangers, String caution) {
        public Work {
            parts = List.copyOf(parts);
            dangers = List.copyOf(dangers);
            if (minutes < 0) {
                throw new IllegalArgumentException("minutes " + minutes);
            }
        }
    }

    /** The same with these allowances in place of all others of their kind, on a rope. */
    public Termination withMeasured(String rope, Map<What, Allowance> measured) {
        Map<String, Map<What, Allowance>> more = new HashMap<>(onRope);
        Map<What, Allowance> ofRope = new EnumMap<>(What.class);
        ofRope.putAll(onRope.getOrDefault(rope, Map.of()));
        ofRope.putAll(measured);
        more.put(rope, ofRope);
        return with(allowances, more);
    }

    /** The row as it holds on a rope: what the shop has measured there comes first. */
    public Termination on(Rope rope) {
        Map<What, Allowance> measured = onRope.getOrDefault(rope.id(), Map.of());
        if (measured.isEmpty()) {
            return this;
        }
        Map<What, Allowance> merged = new EnumMap<>(What.class);
        merged.putAll(allowances);
        merged.putAll(measured);
        return with(merged, onRope);
    }

    private Termination with(Map<What, Allowance> known, Map<String, Map<What, Allowance>> ofRopes) {
        return new Termination(id, family, name, kind, suits, tucking, known, ofRopes, layout, work, provenance);
    }

    /**
     * What it asks for; {@link Allowance#NOTHING} when the row does not say. A take-up that is verified leaves no margin
     * that is not.
     */
    public Allowance allowance(What what) {
        Allowance stated = allowances.getOrDefault(what, Allowance.NOTHING);
        return switch (what) {
            case FILLS -> stated.isNothing() ? allowance(What.ROOM) : stated;
            case MARGIN -> allowance(What.TAKE_UP).provenance().verified()
                            && !stated.provenance().verified()
                    ? Allowance.NOTHING
                    : stated;
            case MARGIN_OF_TWO -> stated.isNothing() ? allowance(What.MARGIN) : stated;
            default -> stated;
        };
    }

    /** Whether the shop has measured what it takes up on this rope: what else adds to the length is confirmed by that. */
    public boolean isMeasured() {
        Provenance takeUp = allowance(What.TAKE_UP).provenance();
        return takeUp.verified() && takeUp.grade() == Grade.SHOP;
    }

    /** Whether everything that adds to a cut length has been confirmed. */
    public boolean isVerified() {
        return isMeasured()
                || (provenance.verified()
                        && allowances.entrySet().stream()
                                .filter(entry -> entry.getKey().isCut() && entry.getKey() != What.MARGIN)
                                .allMatch(entry -> entry.getValue().provenance().verified()));
    }
}
