package bitterend.buying;

import java.util.List;

/**
 * What to buy for the orders in hand.
 *
 * @param best the least-cost set found, ropes left out that nobody offers
 * @param next up to two sets that do without a reel of those before them, cheapest first
 * @param unheld pieces that nothing on offer can hold
 * @param late ids of pieces whose rope comes after they are due, whatever is ordered
 * @param allCompared whether there was time to look for all of the next-best sets
 */
public record Advice(Purchase best, List<Purchase> next, List<Unheld> unheld, List<String> late, boolean allCompared) {
    static final int MOST_NEXT = 2;

    public Advice {
        next = List.copyOf(next);
        unheld = List.copyOf(unheld);
        late = List.copyOf(late);
    }
}
