package bitterend.buying;

import bitterend.buying.SetSearch.Solved;
import bitterend.measure.Cost;
import java.util.List;
import java.util.Optional;

/**
 * Of the sets that were found those whose rope lasts no longer than it may. Where none keeps within, those that last longest are
 * left out until the shortest remain: work comes first.
 */
final class WithinWeeks {
    private final SetSearch sets;
    private final CoverLimit weeks;

    WithinWeeks(SetSearch sets, CoverLimit weeks) {
        this.sets = sets;
        this.weeks = weeks;
    }

    /** Looks for sets within the weeks, where one that was found goes beyond them; what is proven of those within. */
    Proof look(Proof all) {
        if (sets.pool().all().stream().allMatch(each -> weeks.isKept(each.set()))) {
            return all;
        }
        sets.shortest(weeks);
        if (found().stream().noneMatch(each -> weeks.isKept(each.set()))) {
            return all;
        }
        int unplanned = sets.pool().best(Aim.LEAST_COST).unplanned().size();
        Optional<Solved> cost = sets.within(Aim.LEAST_COST, weeks, unplanned);
        Optional<Solved> paid = sets.within(Aim.LEAST_PAID, weeks, unplanned);
        sets.within(Aim.BETWEEN, weeks, unplanned);
        return all.raised(sets.isFreightFixed() ? bound(cost) : Cost.ZERO, bound(paid));
    }

    private static Cost bound(Optional<Solved> solved) {
        return solved.map(Solved::bound).orElse(Cost.ZERO);
    }

    /** The sets that may be chosen from; of those that leave the least unplanned at least one. */
    List<Purchase> found() {
        List<Purchase> all = sets.pool().all();
        int unplanned =
                all.stream().mapToInt(each -> each.unplanned().size()).min().orElse(0);
        List<Purchase> serving = all.stream()
                .filter(each -> each.unplanned().size() == unplanned)
                .toList();
        long least = serving.stream()
                .mapToLong(each -> weeks.excess(each.set()))
                .min()
                .orElse(0);
        return all.stream().filter(each -> weeks.excess(each.set()) <= least).toList();
    }

    /** What would cost less than the best within the weeks, if there is such. */
    List<TooLong> tooLong(Purchase longest, Purchase best) {
        return longest.cost().compareTo(best.cost()) >= 0
                ? List.of()
                : weeks.over(longest.set()).stream()
                        .map(cover -> new TooLong(
                                longest.set(),
                                cover.rope(),
                                cover.tenthsRoundedUp(),
                                best.cost().minus(longest.cost())))
                        .toList();
    }
}
