package bitterend.buying;

import bitterend.buying.PurchasePacker.Found;
import bitterend.market.Offer;
import bitterend.measure.Cost;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks for sets of reels that respect every minimum and every price that wants so many reels. What falls short of one is
 * looked for both ways, without that price and with as many reels as it wants; what is proven of both is proven of all.
 */
final class SetSearch {
    /** Sets that are looked at to come within the weeks. */
    private static final int MOST_LOOKS = 40;

    /** Nobody orders more reels of an offer than this at once. */
    private static final int MOST_REELS = 10_000;

    private final Orders orders;
    private final PurchasePacker packs;
    private final EffortShare pace;
    private final List<Tier> charged;
    private final List<Tier> free;
    private final Pool pool = new Pool();

    SetSearch(Orders orders, PurchasePacker packs, EffortShare pace) {
        this.orders = orders;
        this.packs = packs;
        this.pace = pace;
        charged = tiers(Freight.CHARGED);
        free = tiers(Freight.PAID_BY_SUPPLIER);
    }

    private List<Tier> tiers(Freight freight) {
        return orders.offers().stream()
                .flatMap(offer -> Tier.of(orders, offer, freight).stream())
                .toList();
    }

    /**
     * Looks for the best set for an aim.
     *
     * @return proven: what the aim weighs comes to no less; first where the freight of reels is charged, then whatever it is
     */
    Map<Freight, Cost> proven(Aim aim) {
        Cost bound = raised(aim, solved(aim, Limits.NONE, charged).bound(), charged);
        Cost whatever = free.equals(charged)
                ? bound
                : raised(aim, solved(aim, Limits.NONE, free).bound(), free);
        return Map.of(Freight.CHARGED, bound, Freight.PAID_BY_SUPPLIER, whatever);
    }

    /** Of the least paid it is known that whole reels are paid. */
    private Cost raised(Aim aim, Cost bound, List<Tier> tiers) {
        return aim == Aim.LEAST_PAID ? PaidSums.raised(bound, pool.best(aim).paid(), tiers) : bound;
    }

    /** The best set for an aim within limits. */
    Solved solved(Aim aim, Limits limits) {
        return solved(aim, limits, charged);
    }

    /**
     * The best set for an aim of those that keep within the weeks, each time with a reel less of what goes beyond them.
     *
     * @param unplanned pieces that have no rope whatever is bought: sets that leave more are not looked at further
     */
    Optional<Solved> within(Aim aim, CoverLimit weeks, int unplanned) {
        Deque<Limits> open = new ArrayDeque<>(List.of(within(weeks, Limits.NONE)));
        Optional<Solved> best = Optional.empty();
        Cost proven = new Cost(Long.MAX_VALUE);
        for (int looked = 0; looked < MOST_LOOKS && !open.isEmpty() && (looked == 0 || pace.goesOn()); looked++) {
            Limits limits = open.removeFirst();
            Solved found = solved(aim, limits);
            ReelSet set = found.purchase().set();
            if (found.purchase().unplanned().size() > unplanned) {
                continue;
            }
            if (weeks.isKept(set)) {
                best = Optional.of(best.map(before -> before.or(found, aim)).orElse(found));
                proven = least(proven, found.bound());
            } else {
                set.counts().forEach((offer, reels) -> open.addLast(fewer(limits, offer, reels - 1)));
            }
        }
        Cost bound = open.isEmpty() ? proven : Cost.ZERO;
        return best.map(found -> new Solved(found.purchase(), bound));
    }

    private static Cost least(Cost one, Cost other) {
        return other.compareTo(one) < 0 ? other : one;
    }

    /** Limits with no more reels of any offer than keep within the weeks alone. */
    Limits within(CoverLimit weeks, Limits limits) {
        Limits fewer = limits;
        for (Offer offer : orders.offers()) {
            fewer = fewer(
                    fewer, offer.id(), weeks.most(offer, Math.min(offer.terms().supply(), MOST_REELS)));
        }
        return fewer;
    }

    /** Looks for the set that lasts for the fewest weeks. */
    void shortest(CoverLimit weeks) {
        solved(
                Aim.LEAST_PAID,
                Limits.NONE,
                charged.stream()
                        .map(tier ->
                                new Tier(tier.offer(), tier.from(), new Cost(weeks.weight(tier.offer())), Cost.ZERO))
                        .toList());
    }

    /** Whether the freight of reels is what it is, however large the order. */
    boolean isFreightFixed() {
        return free.equals(charged);
    }

    /** Every set that was found. */
    Pool pool() {
        return pool;
    }

    /** The best that was found within limits, and what is proven of all: what the aim weighs comes to no less. */
    record Solved(Purchase purchase, Cost bound) {
        private Solved or(Solved other, Aim aim) {
            return new Solved(
                    other.purchase.isBetterThan(purchase, aim) ? other.purchase : purchase,
                    other.bound.compareTo(bound) < 0 ? other.bound : bound);
        }
    }

    /** What the rope that is there or on its way holds, if nothing is bought. */
    Purchase rackAlone() {
        Found found = packs.found(Aim.LEAST_COST, List.of(), Limits.NONE, pace.next());
        return found.purchase().boundedBy(found.bound());
    }

    private Solved solved(Aim aim, Limits limits, List<Tier> tiers) {
        Found found = packs.found(aim, tiers, limits, pace.next());
        for (Tier tier : tiers) {
            int reels = found.byTier().of(tier.id());
            Optional<Tier> other = reels == 0 ? Optional.empty() : other(tiers, tier, found.byTier());
            if (other.isPresent()) {
                return oneOf(aim, limits, tier, other.get(), tiers);
            }
            if (reels > 0 && reels < tier.from()) {
                return eitherWay(aim, limits, tier, tiers);
            }
        }
        Purchase purchase = kept(found, aim);
        return new Solved(purchase, found.bound());
    }

    /** No order has two prices of one offer: without the one, or without the other, unless it is bought whatever happens. */
    private Solved oneOf(Aim aim, Limits limits, Tier one, Tier other, List<Tier> tiers) {
        if (limits.committed().of(one.id()) > 0) {
            return solved(aim, limits.atMost(other.id(), 0), tiers);
        }
        Solved without = solved(aim, limits.atMost(one.id(), 0), tiers);
        return limits.committed().of(other.id()) > 0
                ? without
                : without.or(solved(aim, limits.atMost(other.id(), 0), tiers), aim);
    }

    private Solved eitherWay(Aim aim, Limits limits, Tier tier, List<Tier> tiers) {
        Solved without = solved(aim, limits.atMost(tier.id(), 0), tiers);
        return limits.mostOf(tier) < tier.from()
                ? without
                : without.or(solved(aim, limits.committing(tier.id(), tier.from()), tiers), aim);
    }

    /** Another price of the same offer that is taken, too: no order has both. */
    private static Optional<Tier> other(List<Tier> tiers, Tier tier, ReelSet byTier) {
        return tiers.stream()
                .filter(each -> !each.equals(tier) && each.offer().equals(tier.offer()))
                .filter(each -> byTier.of(each.id()) > 0)
                .findFirst();
    }

    /** Into the pool, with the best packing of its set: one that weighs less than the cost is packed again for that. */
    private Purchase kept(Found found, Aim aim) {
        Purchase purchase = found.purchase();
        boolean priced = purchase.lines().stream()
                .allMatch(line -> line.each().plus(line.freight()).equals(priceOf(line.offer(), line.reels())));
        if (priced) {
            pool.add(purchase);
        }
        if (!priced || (aim != Aim.LEAST_COST && pace.goesOn())) {
            told(purchase.set());
        }
        return pool.holds(purchase.set()) ? pool.of(purchase.set()) : purchase;
    }

    private Cost priceOf(Offer offer, int reels) {
        return Tier.of(orders, offer, reels).each();
    }

    /** A set in true figures, all of its reels bought. */
    void told(ReelSet set) {
        pool.add(bought(set).purchase());
    }

    /** The best packing of the orders in hand with exactly these reels bought. */
    Found bought(ReelSet set) {
        return packs.found(Aim.LEAST_COST, tiers(set), exactly(set), pace.next());
    }

    /** Which pieces could be held with exactly these reels bought, each piece alone: nothing is packed. */
    Holding holding(ReelSet set) {
        return packs.holding(tiers(set), exactly(set));
    }

    private List<Tier> tiers(ReelSet set) {
        return set.counts().entrySet().stream()
                .map(entry -> Tier.of(orders, orders.offer(entry.getKey()), entry.getValue()))
                .toList();
    }

    private Limits exactly(ReelSet set) {
        Limits all = Limits.NONE;
        for (Tier tier : tiers(set)) {
            int reels = set.of(tier.offer().id());
            all = all.committing(tier.id(), reels).atMost(tier.id(), reels);
        }
        return all;
    }

    /** Looks for the best set of every aim that does without some suppliers. */
    void without(Collection<String> suppliers) {
        Limits limits = Limits.NONE;
        for (Offer offer : orders.offers()) {
            if (suppliers.contains(offer.supplier())) {
                limits = fewer(limits, offer.id(), 0);
            }
        }
        for (Aim aim : Aim.values()) {
            if (pace.goesOn()) {
                solved(aim, limits);
            }
        }
    }

    /** Limits with no more reels of an offer than so many. */
    Limits fewer(Limits limits, String offer, int most) {
        Limits fewer = limits;
        for (Tier tier : charged) {
            if (tier.offer().id().equals(offer)) {
                fewer = fewer.atMost(tier.id(), most);
            }
        }
        return fewer;
    }
}
