package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.market.Offer;
import bitterend.market.Supplier;
import bitterend.measure.Cost;
import bitterend.measure.Money;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds what to buy of ropes that belong together. Where the rope that is there or on its way holds every piece, nothing is
 * bought: no price list makes rope on the rack worth buying again.
 */
final class PartBuyer {
    private static final int MOST_BRANCHES = 24;

    private final Orders orders;
    private final Packer packer;
    private final EffortShare pace;
    private final CoverLimit weeks;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Unheld> unheld = new ArrayList<>();
    private final Set<String> late = new HashSet<>();
    private @Nullable SetSearch search;
    private Purchase rack = Purchase.NONE;

    /** @param weeks how long rope that is bought may last */
    PartBuyer(Orders orders, Packer packer, Effort effort, CoverLimit weeks) {
        this.weeks = weeks;
        this.orders = orders;
        this.packer = packer;
        this.pace = new EffortShare(effort);
    }

    /** What there is to say where nothing is to be bought: nothing is offered, or what is there holds all that can be held. */
    Optional<PartFound> withoutBuying() {
        List<Piece> wanted = orders.day().pieces();
        Holding whenever = holding(wanted, ids(wanted));
        wanted.stream()
                .filter(piece -> !whenever.holds(piece))
                .map(whenever::unheld)
                .forEach(unheld::add);
        if (orders.offers().isEmpty()) {
            return Optional.of(PartFound.of(Purchase.NONE, unheld, List.of()));
        }
        wanted.stream().filter(whenever::holds).forEach(pieces::add);
        Holding inTime = holding(pieces, Set.of());
        pieces.stream().filter(piece -> !inTime.holds(piece)).map(Piece::id).forEach(late::add);
        search = search(pieces, late);
        rack = search.rackAlone();
        return rack.unplanned().isEmpty() ? Optional.of(PartFound.of(rack, unheld, sorted(late))) : Optional.empty();
    }

    /** Looks for sets of reels, where something is to be bought. */
    PartFound search(Effort effort) {
        pace.grant(effort);
        SetSearch sets = search(pieces, late);
        Cost bound = costProven(sets);
        if (late.addAll(sets.pool().best(Aim.LEAST_COST).unplanned())) {
            sets = search(pieces, late);
            rack = sets.rackAlone();
            bound = costProven(sets);
        }
        search = sets;
        Map<Freight, Cost> paid = sets.proven(Aim.LEAST_PAID);
        if (pace.goesOn()) {
            sets.solved(Aim.BETWEEN, Limits.NONE);
        }
        withoutSuppliers(sets);
        Purchase longest = sets.pool().best(Aim.LEAST_COST);
        WithinWeeks within = new WithinWeeks(sets, weeks);
        Proof proof = within.look(new Proof(bound, paid));
        List<Purchase> found = within.found();
        Purchase best = Pool.best(found, Aim.LEAST_COST);
        return new PartFound(
                found,
                proof.cost(),
                proof.paid(),
                orders.offers(),
                nearest(sets, best),
                unheld,
                sorted(late),
                within.tooLong(longest, best));
    }

    /** Looks for the least cost: no set costs less, whatever freight is charged. */
    private static Cost costProven(SetSearch sets) {
        return sets.proven(Aim.LEAST_COST).getOrDefault(Freight.PAID_BY_SUPPLIER, Cost.ZERO);
    }

    /** Where a supplier charges by order, asks for a least order or sends large ones freight paid, others may do without him. */
    private void withoutSuppliers(SetSearch sets) {
        List<String> all =
                orders.offers().stream().map(Offer::supplier).distinct().toList();
        boolean charged = all.stream()
                .map(orders.market()::supplier)
                .anyMatch(supplier -> !supplier.minimumOrder().equals(Money.ZERO)
                        || !supplier.freight().byOrder().equals(Money.ZERO)
                        || supplier.freight().freeFrom().compareTo(Supplier.Freight.NEVER) < 0);
        if (all.size() < 2 || !charged) {
            return;
        }
        for (String supplier : all) {
            sets.without(List.of(supplier));
            if (all.size() > 2) {
                sets.without(
                        all.stream().filter(other -> !other.equals(supplier)).toList());
            }
        }
    }

    /** The sets that are known by now, these among them. */
    List<Purchase> also(ReelSet set) {
        if (search != null && !search.pool().holds(set)) {
            search.told(set);
        }
        return search == null ? List.of() : new WithinWeeks(search, weeks).found();
    }

    /** A way that was chosen, with what those of its reels are needed for that take no time to see. */
    Purchase neededAtOnce(Purchase purchase) {
        return search == null ? purchase : new Needs(search, rack, pace).atOnce(purchase);
    }

    /** Ways that were chosen, with what each of their reels is needed for. */
    Map<ReelSet, Purchase> needed(Collection<Purchase> chosen, Effort effort) {
        pace.grant(effort);
        Map<ReelSet, Purchase> needed = new HashMap<>();
        for (Purchase purchase : chosen) {
            needed.computeIfAbsent(
                    purchase.set(), set -> search == null ? purchase : new Needs(search, rack, pace).of(purchase));
        }
        return needed;
    }

    /** The same of one way. */
    Purchase needed(Purchase purchase, Effort effort) {
        return needed(List.of(purchase), effort).getOrDefault(purchase.set(), purchase);
    }

    /** Whether there was time for all that was to be looked at. */
    boolean allCompared() {
        return !pace.ranOut();
    }

    /** What pays least of all that was found with rope for the most of the work; for these pieces it may come late. */
    Purchase leastPaid(Set<String> mayBeLate) {
        List<Piece> wanted = orders.day().pieces();
        Holding whenever = holding(wanted, ids(wanted));
        SetSearch sets = search(wanted.stream().filter(whenever::holds).toList(), mayBeLate);
        Purchase alone = sets.rackAlone();
        if (!alone.unplanned().isEmpty() && !orders.offers().isEmpty()) {
            search = sets;
            rack = alone;
            sets.solved(Aim.LEAST_PAID, Limits.NONE);
            WithinWeeks within = new WithinWeeks(sets, weeks);
            within.look(Proof.NOTHING);
            return Pool.best(within.found(), Aim.LEAST_PAID);
        }
        return alone;
    }

    /** The two nearest sets that do without a size of those before them, where there are such. */
    private List<Purchase> nearest(SetSearch search, Purchase best) {
        List<Branch> without = without(best.set(), search.within(weeks, Limits.NONE), search);
        Optional<Branch> second = cheapest(without, best);
        List<Purchase> next = new ArrayList<>();
        second.ifPresent(branch -> {
            next.add(branch.purchase());
            List<Branch> third = new ArrayList<>();
            for (Branch other : without) {
                if (other.purchase()
                        .set()
                        .sizes()
                        .containsAll(branch.purchase().set().sizes())) {
                    third.addAll(without(branch.purchase().set(), other.limits(), search));
                } else {
                    third.add(other);
                }
            }
            cheapest(third, best).ifPresent(found -> next.add(found.purchase()));
        });
        return next;
    }

    private record Branch(Limits limits, Purchase purchase) {}

    /** For each offer of a set, the best that has no reel of it. */
    private List<Branch> without(ReelSet set, Limits limits, SetSearch search) {
        List<Branch> branches = new ArrayList<>();
        for (String offer : set.sizes()) {
            if (branches.size() < MOST_BRANCHES && pace.goesOn()) {
                Limits fewer = search.fewer(limits, offer, 0);
                branches.add(
                        new Branch(fewer, search.solved(Aim.LEAST_COST, fewer).purchase()));
            }
        }
        return branches;
    }

    private Optional<Branch> cheapest(List<Branch> branches, Purchase best) {
        return branches.stream()
                .filter(branch ->
                        branch.purchase().unplanned().size() <= best.unplanned().size())
                .filter(branch -> weeks.isKept(branch.purchase().set()))
                .reduce((a, b) -> b.purchase().isBetterThan(a.purchase(), Aim.LEAST_COST) ? b : a);
    }

    private SetSearch search(List<Piece> some, Set<String> mayBeLate) {
        return new SetSearch(orders, new PurchasePacker(orders, some, mayBeLate, packer), pace);
    }

    private Holding holding(List<Piece> some, Set<String> mayBeLate) {
        return holding(orders, some, mayBeLate);
    }

    /** Which pieces can be had at all: with one reel of each offer. */
    static Holding holding(Orders orders, List<Piece> pieces, Set<String> late) {
        List<Tier> tiers = new ArrayList<>();
        Limits oneOfEach = Limits.NONE;
        for (Offer offer : orders.offers()) {
            Tier tier = Tier.of(orders, offer, 1);
            tiers.add(tier);
            oneOfEach = oneOfEach.atMost(tier.id(), 1);
        }
        return new Holding(new PurchaseProblem(orders, tiers, late, Aim.LEAST_COST).problem(pieces, oneOfEach));
    }

    private static List<String> sorted(Set<String> ids) {
        return ids.stream().sorted(NaturalOrder.IDS).toList();
    }

    static Set<String> ids(List<Piece> pieces) {
        Set<String> ids = new HashSet<>();
        pieces.forEach(piece -> ids.add(piece.id()));
        return ids;
    }
}
