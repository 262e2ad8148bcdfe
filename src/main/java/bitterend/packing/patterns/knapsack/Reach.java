package bitterend.packing.patterns.knapsack;

/** What can still be brought from a place in the order on: never less than there is. */
public interface Reach {
    /**
     * At least the best worth less what the run loses over all ways to go on with items from place {@code u} on, or to stop.
     *
     * @param load that is drawn already
     * @param worth of that
     */
    long from(int u, long load, long worth);
}
