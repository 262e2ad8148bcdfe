package bitterend.packing.patterns;

/**
 * What leaving pieces out costs in the program at hand.
 *
 * @param mode see there
 * @param weight the limit of {@link Mode#LIMITED}
 */
record Leaving(Mode mode, long weight) {
    enum Mode {
        /** Everything is planned. */
        NEVER,
        /** Drawing is free, the weight left out is the cost. */
        PRICED,
        /** Leaving out is free up to a given weight. */
        LIMITED
    }

    static final Leaving NEVER = new Leaving(Mode.NEVER, 0);
    static final Leaving PRICED = new Leaving(Mode.PRICED, 0);

    static Leaving limited(long weight) {
        return new Leaving(Mode.LIMITED, weight);
    }
}
