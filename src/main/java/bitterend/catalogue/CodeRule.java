package bitterend.catalogue;

import java.util.List;

/**
 * One rule of a region's code for slings and lifting.
 *
 * @param code id of the code: us, en, or one of the shop's own
 * @param rule what it rules
 * @param suits the ropes it is for
 * @param ends ids or families of ends it is for; empty for any
 * @param warned whether it is only warned of; otherwise lifting is refused
 * @param from the code the row was read under; empty for its own
 * @param least the least it asks for
 */
public record CodeRule(
        String code, Rule rule, Suits suits, List<String> ends, boolean warned, String from, Least least) {
    public CodeRule {
        ends = List.copyOf(ends);
    }

    /**
     * The least that a rule asks for: so many, or so long.
     *
     * @param count how many; 0 where nothing is counted
     * @param length how long, with the source of the rule; nothing where no length is asked for
     */
    public record Least(int count, Allowance length) {
        public Least {
            if (count < 0) {
                throw new IllegalArgumentException("at least " + count);
            }
        }
    }

    /** What a code rules. */
    public enum Rule {
        /** Clear rope between two splices or fittings. */
        CLEAR_ROPE("clear rope"),
        /** A thimble in every eye that goes on a pin or fitting. */
        THIMBLE("thimble"),
        /** Smallest inside length of a soft eye, laid flat. */
        LEAST_EYE("least eye"),
        /** Smallest inside circumference of a ring. */
        RING("ring"),
        /** Full tucks of each strand, in a join on its side. */
        TUCKS("tucks");

        private final String word;

        Rule(String word) {
            this.word = word;
        }

        /** The word used in files. */
        public String word() {
            return word;
        }
    }

    /** Whether it is for an end. */
    public boolean isFor(Termination end) {
        return ends.isEmpty() || ends.contains(end.id()) || ends.contains(end.family());
    }

    /** {@code code us (8 CCR 5045(b))}; a row read under another code names that one. */
    public String words() {
        String source = least.length().provenance().source();
        String read = from.isEmpty() || from.equals(code) ? "" : ", as " + from;
        return "code " + code + read + (source.isEmpty() ? "" : " (" + source + ")");
    }
}
