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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What stays without rope if no more is paid than a budget: the lines of the orders are served one by one, the most urgent
 * first, and one whose rope would be paid beyond it is left.
 */
final class Unpaid {
    private final Orders orders;
    private final Packer packer;
    private final Effort effort;
    private final Set<String> anyway;
    private final Set<String> late;
    private final Map<List<String>, Purchase> least = new HashMap<>();
    private final long deadline;

    /**
     * @param effort for all of it
     * @param anyway ids of pieces that have no rope whatever is paid
     * @param late ids of pieces for which rope may come after they are due
     */
    Unpaid(Orders orders, Packer packer, Effort effort, Collection<String> anyway, Collection<String> late) {
        this.orders = orders;
        this.packer = packer;
        this.effort = effort;
        this.anyway = Set.copyOf(anyway);
        this.late = Set.copyOf(late);
        deadline = System.nanoTime() + effort.time().toNanos();
    }

    /** The ids of the pieces of the lines that are left, in the order in which they were looked at. */
    List<String> pieces(Cost budget) {
        List<Piece> served = new ArrayList<>();
        List<String> left = new ArrayList<>();
        for (List<Piece> line : byUrgency()) {
            List<Piece> with = new ArrayList<>(served);
            with.addAll(line);
            Purchase purchase = least(with);
            if (purchase.unplanned().isEmpty() && purchase.paid().compareTo(budget) <= 0) {
                served = with;
            } else {
                line.stream().map(Piece::id).sorted(NaturalOrder.IDS).forEach(left::add);
            }
        }
        return left;
    }

    private Iterable<List<Piece>> byUrgency() {
        Urgency urgency = new Urgency(orders.day());
        WorkingDays working = new WorkingDays(orders.day().calendar());
        Map<String, List<Piece>> byLine = new TreeMap<>(NaturalOrder.IDS);
        for (Piece piece : orders.day().pieces()) {
            if (!piece.ownRope() && !anyway.contains(piece.id())) {
                byLine.computeIfAbsent(
                                piece.source().order() + "/" + piece.source().line(), line -> new ArrayList<>())
                        .add(piece);
            }
        }
        Map<String, Urgent> urgent = new LinkedHashMap<>();
        byLine.forEach((line, pieces) -> urgent.put(
                line,
                new Urgent(
                        pieces.stream().mapToInt(urgency::classOf).min().orElse(0),
                        pieces.stream()
                                .map(working::cutBy)
                                .min(Comparator.naturalOrder())
                                .orElseThrow(),
                        pieces.stream()
                                .mapToInt(piece -> piece.source().priority())
                                .min()
                                .orElse(0))));
        return byLine.entrySet().stream()
                .sorted(Comparator.comparing(entry -> urgent.get(entry.getKey())))
                .map(Map.Entry::getValue)
                .toList();
    }

    private record Urgent(int urgency, LocalDate cutBy, int priority) implements Comparable<Urgent> {
        @Override
        public int compareTo(Urgent other) {
            return Comparator.comparingInt(Urgent::urgency)
                    .thenComparing(Urgent::cutBy)
                    .thenComparingInt(Urgent::priority)
                    .compare(this, other);
        }
    }

    private Purchase least(List<Piece> pieces) {
        Orders some = orders.part(orders.day().about(pieces), orders.onOrder(), orders.offers());
        Purchase sum = Purchase.NONE;
        for (Orders part : IndependentRopes.of(some)) {
            List<String> ids = part.day().pieces().stream().map(Piece::id).toList();
            Purchase purchase = least.get(ids);
            if (purchase == null) {
                purchase = new PartBuyer(part, packer, share()).leastPaid(late);
                least.put(ids, purchase);
            }
            sum = sum.plus(purchase);
        }
        return sum;
    }

    /** Most packings are proven in a moment; none takes more than a quarter of what is left. */
    private Effort share() {
        Duration left = Duration.ofNanos(Math.max(0, deadline - System.nanoTime()));
        return new Effort(left.dividedBy(4), effort.work(), effort.seed(), 1, effort.cancelled(), effort.progress());
    }
}
