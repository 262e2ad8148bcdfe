package bitterend.buying;

import bitterend.market.Bill;
import bitterend.measure.Cost;
import java.util.ArrayList;
import java.util.List;

/**
 * A way to buy for the orders in hand.
 *
 * @param aims what it is the best way for; of ways that come out the same there is one
 * @param purchase what is bought
 * @param bill what its suppliers charge for it, and what they would not send so
 * @param covers how long each rope lasts that is bought
 * @param overBudget what it pays beyond the budget; zero where it does not
 * @param overWeeks ids of ropes that last longer than they may
 */
public record Way(
        List<Aim> aims, Purchase purchase, Bill bill, List<Cover> covers, Cost overBudget, List<String> overWeeks) {
    public Way {
        aims = List.copyOf(aims);
        covers = List.copyOf(covers);
        overWeeks = List.copyOf(overWeeks);
    }

    /** The same, the best way for one aim more. */
    Way also(Aim aim) {
        List<Aim> all = new ArrayList<>(aims);
        all.add(aim);
        return new Way(all, purchase, bill, covers, overBudget, overWeeks);
    }
}
