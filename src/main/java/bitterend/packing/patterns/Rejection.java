package bitterend.packing.patterns;

/**
 * What leaving pieces out costs in the program at hand.
 *
 * @param mode see there
 * @param weight the limit of {@link Mode#LIMITED}
 */
record Rejection(Mode mode, long weight) {
    enum Mode {
        /** Everything is planned. */
        NEVER,
        /** Drawing is free, the weight left out is the cost. */
        PRICED,
        /** Leaving out is free up to a given weight. */
        LIMITED
    }

    static final Rejection NEVER = new Rejection(Mode.NEVER, 0);
    static final Rejection PRICED = new Rejection(Mode.PRICED, 0);

    static Rejection limited(long weight) {
        return new Rejection(Mode.LIMITED, weight);
    }
}
