package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.market.Offer;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the least-cost set of reels for ropes that belong together. A set that falls below the minimum of an offer is
 * mended both ways, without the offer and with its minimum, and the cheaper kept.
 */
final class PartBuyer {
    private static final int MOST_BRANCHES = 24;

    private final Orders orders;
    private final Packer packer;
    private final EffortShare pace;

    PartBuyer(Orders orders, Packer packer, Effort effort) {
        this.orders = orders;
        this.packer = packer;
        this.pace = new EffortShare(effort);
    }

    /** What to buy; the best set takes half of the effort at most. */
    Advice advise() {
        List<Piece> wanted = orders.day().pieces();
        Holding whenever = holding(wanted, ids(wanted));
        List<Unheld> unheld = wanted.stream()
                .filter(piece -> !whenever.holds(piece))
                .map(whenever::unheld)
                .toList();
        if (orders.plannable().isEmpty()) {
            return new Advice(Purchase.NONE, List.of(), unheld, List.of(), true);
        }
        List<Piece> pieces = wanted.stream().filter(whenever::holds).toList();
        Holding inTime = holding(pieces, Set.of());
        Set<String> late = new HashSet<>();
        pieces.stream().filter(piece -> !inTime.holds(piece)).map(Piece::id).forEach(late::add);
        Purchase best = solved(new PurchasePacker(orders, pieces, late), Limits.NONE);
        Set<String> scarce = new HashSet<>(best.unplanned());
        if (late.addAll(scarce)) {
            best = solved(new PurchasePacker(orders, pieces, late), Limits.NONE);
        }
        return compared(best, new PurchasePacker(orders, pieces, late), unheld, late);
    }

    private Advice compared(Purchase best, PurchasePacker packs, List<Unheld> unheld, Set<String> late) {
        List<Branch> without = without(best.set(), Limits.NONE, packs);
        Optional<Branch> second = cheapest(without, best);
        List<Purchase> next = new ArrayList<>();
        second.ifPresent(branch -> next.add(branch.purchase()));
        second.ifPresent(branch -> {
            List<Branch> third = new ArrayList<>();
            for (Branch other : without) {
                if (other.purchase().set().covers(branch.purchase().set())) {
                    third.addAll(without(branch.purchase().set(), other.limits(), packs));
                } else {
                    third.add(other);
                }
            }
            cheapest(third, best).ifPresent(found -> next.add(found.purchase()));
        });
        return new Advice(
                best, next, unheld, late.stream().sorted(NaturalOrder.IDS).toList(), !pace.ranOut());
    }

    private record Branch(Limits limits, Purchase purchase) {}

    /** For each offer of a set, the best that has at least one reel less of it. */
    private List<Branch> without(ReelSet set, Limits limits, PurchasePacker packs) {
        List<Branch> branches = new ArrayList<>();
        set.counts().forEach((offer, count) -> {
            Limits fewer = limits.atMost(offer, count - 1);
            if (branches.size() < MOST_BRANCHES && pace.goesOn()) {
                branches.add(new Branch(fewer, solved(packs, fewer)));
            }
        });
        return branches;
    }

    private static Optional<Branch> cheapest(List<Branch> branches, Purchase best) {
        return branches.stream()
                .filter(branch ->
                        branch.purchase().unplanned().size() <= best.unplanned().size())
                .reduce((a, b) -> b.purchase().isBetterThan(a.purchase()) ? b : a);
    }

    /** The best within limits that respects every minimum. */
    private Purchase solved(PurchasePacker packs, Limits limits) {
        Purchase found = packs.purchase(packer, limits, pace.next());
        Optional<Offer> small = orders.plannable().stream()
                .filter(offer -> found.set().of(offer.id()) > 0)
                .filter(offer -> found.set().of(offer.id()) < offer.terms().minimum())
                .findFirst();
        if (small.isEmpty()) {
            return found;
        }
        Offer offer = small.get();
        Purchase without = solved(packs, limits.atMost(offer.id(), 0));
        if (limits.mostOf(offer) < offer.terms().minimum()) {
            return without;
        }
        Purchase with =
                solved(packs, limits.committing(offer.id(), offer.terms().minimum()));
        return with.isBetterThan(without) ? with.boundedBy(without) : without.boundedBy(with);
    }

    /** With one reel of each offer. */
    private Holding holding(List<Piece> pieces, Set<String> late) {
        Limits oneOfEach = Limits.NONE;
        for (Offer offer : orders.plannable()) {
            oneOfEach = oneOfEach.atMost(offer.id(), 1);
        }
        return new Holding(new PurchaseProblem(orders, late).problem(pieces, oneOfEach));
    }

    private static Set<String> ids(List<Piece> pieces) {
        Set<String> ids = new HashSet<>();
        pieces.forEach(piece -> ids.add(piece.id()));
        return ids;
    }
}
