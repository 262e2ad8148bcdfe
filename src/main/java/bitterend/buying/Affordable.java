package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Urgency;
import bitterend.packing.WorkingDays;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What a budget can pay for that lies below the least paid of all: pieces are served one by one, the most urgent class first,
 * within it by priority and then by the day by which they must be cut; a matched set at once. What would be paid beyond the
 * budget is left, and those behind it may still have what it did not take. What there is no time to look at is left, too.
 */
final class Affordable {
    /** So much is looked at, however late it is. */
    private static final int LEAST_LOOKS = 16;

    private final Orders orders;
    private final Packer packer;
    private final Effort effort;
    private final CoverLimit weeks;
    private final Set<String> anyway;
    private final Set<String> late;
    private final Map<List<String>, Bought> least = new HashMap<>();
    private final List<Piece> served = new ArrayList<>();
    private final List<String> left = new ArrayList<>();
    private final long deadline;
    private int looks;
    private boolean ranOut;

    /**
     * @param effort for all of it
     * @param weeks how long rope that is bought may last
     * @param anyway ids of pieces that have no rope whatever is paid
     * @param late ids of pieces for which rope may come after they are due
     */
    Affordable(
            Orders orders,
            Packer packer,
            Effort effort,
            CoverLimit weeks,
            Collection<String> anyway,
            Collection<String> late) {
        this.weeks = weeks;
        this.orders = orders;
        this.packer = packer;
        this.effort = effort;
        this.anyway = Set.copyOf(anyway);
        this.late = Set.copyOf(late);
        deadline = System.nanoTime() + effort.time().toNanos();
    }

    /**
     * What is bought.
     *
     * @param purchase the least paid that serves what can be served
     * @param served the work that it serves
     * @param left ids of the pieces that stay without rope, in the order in which they were looked at
     * @param ranOut whether some of them were not looked at for want of time
     */
    record Found(Purchase purchase, Orders served, List<String> left, boolean ranOut) {}

    private record Bought(PartBuyer buyer, Purchase purchase) {}

    /** What can be had for no more than this. */
    Found within(Cost budget) {
        serve(byUrgency(), budget);
        List<Purchase> needed = least(served).stream()
                .map(each -> each.buyer().needed(each.purchase(), share()))
                .toList();
        return new Found(together(needed), only(served), left, ranOut);
    }

    /** All of some ropes, as their suppliers bill it. */
    private Purchase together(List<Purchase> some) {
        Purchase sum = some.stream().reduce(Purchase.NONE, Purchase::plus);
        return sum.billed(orders.market().bill(sum.set().counts()));
    }

    /** All of some, or the first half of them before the second: as if they were looked at one by one, in fewer steps. */
    private void serve(List<List<Piece>> some, Cost budget) {
        if (some.isEmpty()) {
            return;
        }
        List<Piece> all = some.stream().flatMap(List::stream).toList();
        if (looks++ >= LEAST_LOOKS && System.nanoTime() >= deadline) {
            ranOut = true;
            leave(all);
            return;
        }
        List<Piece> with = new ArrayList<>(served);
        with.addAll(all);
        Purchase purchase = together(least(with).stream().map(Bought::purchase).toList());
        if (purchase.unplanned().isEmpty() && purchase.paid().compareTo(budget) <= 0) {
            served.addAll(all);
        } else if (some.size() == 1) {
            leave(all);
        } else {
            serve(some.subList(0, some.size() / 2), budget);
            serve(some.subList(some.size() / 2, some.size()), budget);
        }
    }

    private void leave(List<Piece> pieces) {
        pieces.stream().map(Piece::id).sorted(NaturalOrder.IDS).forEach(left::add);
    }

    /** Single pieces and matched sets. */
    private List<List<Piece>> byUrgency() {
        Urgency urgency = new Urgency(orders.day());
        WorkingDays working = new WorkingDays(orders.day().calendar());
        Map<String, List<Piece>> together = new TreeMap<>(NaturalOrder.IDS);
        for (Piece piece : orders.day().pieces()) {
            if (!piece.ownRope() && !anyway.contains(piece.id())) {
                together.computeIfAbsent(
                                piece.isMatched() ? "set " + piece.matching().set() : piece.id(),
                                id -> new ArrayList<>())
                        .add(piece);
            }
        }
        return together.values().stream()
                .sorted(Comparator.comparingInt((List<Piece> some) -> urgency.classOf(some.get(0)))
                        .thenComparingInt(some -> some.stream()
                                .mapToInt(piece -> piece.source().priority())
                                .min()
                                .orElse(0))
                        .thenComparing(some -> some.stream()
                                .map(working::cutBy)
                                .min(Comparator.naturalOrder())
                                .orElse(LocalDate.MAX)))
                .toList();
    }

    /** The least paid of each group of ropes. */
    private List<Bought> least(List<Piece> pieces) {
        Orders some = only(pieces);
        List<Bought> all = new ArrayList<>();
        for (Orders part : IndependentRopes.of(some)) {
            List<String> ids = part.day().pieces().stream().map(Piece::id).toList();
            Bought bought = least.get(ids);
            if (bought == null) {
                PartBuyer buyer = new PartBuyer(part, packer, share(), weeks);
                bought = new Bought(buyer, buyer.leastPaid(late));
                least.put(ids, bought);
            }
            all.add(bought);
        }
        return all;
    }

    private Orders only(List<Piece> pieces) {
        return orders.part(orders.day().about(pieces), orders.onOrder(), orders.offers());
    }

    /** Most packings are proven in a moment; none takes more than a quarter of what is left. */
    private Effort share() {
        Duration left = Duration.ofNanos(Math.max(0, deadline - System.nanoTime()));
        return new Effort(left.dividedBy(4), effort.work(), effort.seed(), 1, effort.cancelled(), effort.progress());
    }
}
