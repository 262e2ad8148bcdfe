package bitterend.buying;

import bitterend.market.Bill;
import bitterend.market.Market;
import bitterend.market.Supplier;
import bitterend.measure.Cost;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiPredicate;

/**
 * Chooses a set for each group of ropes so that the whole is best: what a supplier charges by order is charged once for all
 * ropes, and an order is held against what he sends.
 */
final class Combination {
    private static final int MOST_SUPPLIERS = 5;

    private final Market market;
    private final List<PartFound> parts;
    private final BiPredicate<ReelSet, Cost> limit;

    Combination(Market market, List<PartFound> parts) {
        this(market, parts, (set, paid) -> true);
    }

    /** @param limit whether so many reels for so much money are within what the shop may spend; what is comes first */
    Combination(Market market, List<PartFound> parts, BiPredicate<ReelSet, Cost> limit) {
        this.market = market;
        this.parts = parts;
        this.limit = limit;
    }

    /** What a choice comes to with the bills of its suppliers. */
    private record Whole(int unplanned, int objections, Cost paid, Cost cost) {
        private boolean isBetterThan(Whole other, Aim aim) {
            int order = Integer.compare(unplanned, other.unplanned);
            order = order != 0 ? order : Integer.compare(objections, other.objections);
            order = order != 0 ? order : weighed(aim).compareTo(other.weighed(aim));
            order = order != 0 ? order : paid.compareTo(other.paid);
            return (order != 0 ? order : cost.compareTo(other.cost)) < 0;
        }

        private Cost weighed(Aim aim) {
            return aim.of(paid, cost);
        }
    }

    /** The best that is found for an aim, a purchase for each part. */
    List<Purchase> best(Aim aim) {
        List<Purchase> best = improved(start(aim, Set.of()), aim);
        for (Set<String> suppliers : exclusions()) {
            List<Purchase> other = improved(start(aim, suppliers), aim);
            best = whole(other).isBetterThan(whole(best), aim) ? other : best;
        }
        return best;
    }

    /** The best between two ways: what weighs both by halves; where that is one of them, what costs least for half the money. */
    List<Purchase> between(List<Purchase> least, List<Purchase> most) {
        List<Purchase> best = best(Aim.BETWEEN);
        Cost paid = whole(best).paid();
        Cost low = whole(least).paid();
        Cost high = whole(most).paid();
        if (paid.compareTo(low) > 0 && paid.compareTo(high) < 0) {
            return best;
        }
        List<Purchase> half = within(new Cost(Math.floorDiv(low.millis() + high.millis(), 2)));
        Whole found = whole(half);
        boolean lies = found.paid().compareTo(low) > 0
                && found.paid().compareTo(high) < 0
                && found.unplanned() <= whole(most).unplanned();
        return lies ? half : paid.compareTo(high) > 0 ? most : best;
    }

    /**
     * What costs least for no more money than this, over all parts: of every choice that is worth its money, see {@link
     * MoneyFront}. Where none pays so little, what pays least.
     */
    List<Purchase> within(Cost budget) {
        Combination limited = new Combination(market, parts, (set, paid) -> paid.compareTo(budget) <= 0);
        List<Purchase> best = limited.best(Aim.LEAST_PAID);
        for (Set<String> suppliers : limited.allExclusions()) {
            MoneyFront front = new MoneyFront(
                    parts.stream().map(part -> some(part, suppliers)).toList());
            for (List<Purchase> each : front.within(mayComeFree() ? MoneyFront.ANY : budget)) {
                best = limited.whole(each).isBetterThan(limited.whole(best), Aim.LEAST_COST) ? each : best;
            }
        }
        return limited.improved(best, Aim.LEAST_COST);
    }

    /** Whether a supplier sends large orders freight paid, so that one more reel may pay less. */
    private boolean mayComeFree() {
        return suppliers().stream()
                .anyMatch(name -> market.supplier(name).freight().freeFrom().compareTo(Supplier.Freight.NEVER) < 0);
    }

    /**
     * The same choice with the least paid of each part whose cost lies no further from the least than what is unproven of it.
     *
     * @param ties told of each part in which another set is taken
     */
    List<Purchase> tied(List<Purchase> least, Collection<Tie> ties) {
        List<Purchase> taken = new ArrayList<>(least);
        for (int part = 0; part < parts.size(); part++) {
            PartFound found = parts.get(part);
            Cost unproven = positive(found.leastCost().minus(found.costBound()));
            Whole before = whole(taken);
            Whole lowest = before;
            Purchase first = taken.get(part);
            for (Purchase each : found.found()) {
                List<Purchase> changed = with(taken, part, each);
                Whole after = whole(changed);
                boolean near = after.unplanned() <= before.unplanned()
                        && after.objections() <= before.objections()
                        && after.cost().minus(before.cost()).compareTo(unproven) <= 0;
                if (near && after.isBetterThan(lowest, Aim.LEAST_PAID)) {
                    lowest = after;
                    taken = changed;
                }
            }
            if (!taken.get(part).set().equals(first.set())) {
                ties.add(new Tie(
                        first.set(),
                        taken.get(part).set(),
                        lowest.cost().minus(before.cost()),
                        unproven,
                        before.paid().minus(lowest.paid())));
            }
        }
        return taken;
    }

    /** All of a choice, with the bill of it. */
    Purchase together(List<Purchase> chosen) {
        return chosen.stream().reduce(Purchase.NONE, Purchase::plus).billed(bill(chosen));
    }

    Bill bill(List<Purchase> chosen) {
        ReelSet set = chosen.stream().map(Purchase::set).reduce(ReelSet.EMPTY, ReelSet::plus);
        return market.bill(set.counts());
    }

    private static Cost positive(Cost cost) {
        return cost.millis() < 0 ? Cost.ZERO : cost;
    }

    private Whole whole(List<Purchase> chosen) {
        ReelSet set = ReelSet.EMPTY;
        Cost paid = Cost.ZERO;
        Cost cost = Cost.ZERO;
        int unplanned = 0;
        for (Purchase each : chosen) {
            set = set.plus(each.set());
            paid = paid.plus(each.paid());
            cost = cost.plus(each.cost());
            unplanned += each.unplanned().size();
        }
        Bill bill = market.bill(set.counts());
        Cost sum = bill.sum().fine();
        int objections = bill.objections().size() + (limit.test(set, sum) ? 0 : 1);
        return new Whole(unplanned, objections, sum, cost.plus(sum).minus(paid));
    }

    /** Of each part the best that does without some suppliers, where there is one that leaves no more unplanned. */
    private List<Purchase> start(Aim aim, Set<String> suppliers) {
        return parts.stream().map(part -> Pool.best(some(part, suppliers), aim)).toList();
    }

    /** Of a part what leaves the least unplanned, without some suppliers where there is such. */
    private List<Purchase> some(PartFound part, Set<String> suppliers) {
        int unplanned = Pool.best(part.found(), Aim.LEAST_COST).unplanned().size();
        List<Purchase> serving = part.found().stream()
                .filter(each -> each.unplanned().size() <= unplanned)
                .toList();
        List<Purchase> some = serving.stream()
                .filter(each -> each.set().sizes().stream()
                        .noneMatch(
                                offer -> suppliers.contains(market.offer(offer).supplier())))
                .toList();
        return some.isEmpty() ? serving : some;
    }

    /** Part by part, until no other set of one part makes the whole better. */
    private List<Purchase> improved(List<Purchase> start, Aim aim) {
        List<Purchase> chosen = start;
        Whole whole = whole(chosen);
        for (boolean better = true; better; ) {
            better = false;
            for (int part = 0; part < parts.size(); part++) {
                for (Purchase each : parts.get(part).found()) {
                    List<Purchase> changed = with(chosen, part, each);
                    if (!each.set().equals(chosen.get(part).set())
                            && whole(changed).isBetterThan(whole, aim)) {
                        chosen = changed;
                        whole = whole(changed);
                        better = true;
                    }
                }
            }
        }
        return chosen;
    }

    private static List<Purchase> with(List<Purchase> chosen, int part, Purchase each) {
        List<Purchase> changed = new ArrayList<>(chosen);
        changed.set(part, each);
        return changed;
    }

    /** Each choice of suppliers to do without, one at least left; of many suppliers each alone. */
    private List<Set<String>> exclusions() {
        List<String> all = suppliers();
        List<Set<String>> exclusions = new ArrayList<>();
        if (all.size() > MOST_SUPPLIERS) {
            all.forEach(supplier -> exclusions.add(Set.of(supplier)));
            return exclusions;
        }
        for (int choice = 1; choice < (1 << all.size()) - 1; choice++) {
            Set<String> some = new TreeSet<>();
            for (int i = 0; i < all.size(); i++) {
                if ((choice >> i & 1) == 1) {
                    some.add(all.get(i));
                }
            }
            exclusions.add(some);
        }
        return exclusions;
    }

    /** The same, and none. */
    private List<Set<String>> allExclusions() {
        List<Set<String>> all = new ArrayList<>(exclusions());
        all.add(Set.of());
        return all;
    }

    private List<String> suppliers() {
        return parts.stream()
                .flatMap(part -> part.found().stream())
                .flatMap(each -> each.set().sizes().stream())
                .map(offer -> market.offer(offer).supplier())
                .distinct()
                .sorted()
                .toList();
    }
}
