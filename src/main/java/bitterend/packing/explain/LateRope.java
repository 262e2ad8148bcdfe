package bitterend.packing.explain;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Cost;
import bitterend.packing.Arrival;
import bitterend.packing.CutDays;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.Unplanned;
import bitterend.packing.WorkingDays;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What a plan would leave undone if rope came later than it is expected, against the plan without the delay.
 *
 * @param day the day that is planned
 * @param delays the orders of rope that would come later
 * @param hits what would be left undone then and is not left undone now, what must be cut first in front
 * @param waiting orders of ours with pieces that would not be cut ahead then, since rope is short, and may be now
 * @param spared orders of ours that ride on this rope now and would be cut in time all the same
 * @param undone how many pieces are left undone in any case
 * @param more what the plan would cost more then, less when negative; says little where work is left undone or waits
 */
public record LateRope(
        LocalDate day,
        List<Delay> delays,
        List<Hit> hits,
        List<String> waiting,
        List<String> spared,
        int undone,
        Cost more) {
    public LateRope {
        delays = List.copyOf(delays);
        hits = List.copyOf(hits);
        waiting = List.copyOf(waiting);
        spared = List.copyOf(spared);
    }

    /** An order of rope as it is counted on now, and as it would be. */
    public record Delay(Arrival now, Arrival then) {}

    /**
     * Work of one order that would be left undone.
     *
     * @param order the order
     * @param customer who wants it; may be empty
     * @param pieces ids of the pieces
     * @param cutBy the last day on which the first of them may be cut
     * @param from the day from which the rope is counted on that they ride on now; {@link LocalDate#MAX} where they ride on none
     * @param late how many working days after its last day the first would be cut off that rope; 0 where there is none
     */
    public record Hit(String order, String customer, List<String> pieces, LocalDate cutBy, LocalDate from, int late) {
        public Hit {
            pieces = List.copyOf(pieces);
        }

        /** Whether the rope that comes late would do for it. */
        public boolean waits() {
            return !from.equals(LocalDate.MAX);
        }
    }

    /**
     * A question and its plan.
     *
     * @param problem the question
     * @param plan the answer
     */
    public record Planned(PackingProblem problem, CutPlan plan) {
        private Set<String> undone() {
            return plan.unplanned().stream().map(Unplanned::piece).collect(Collectors.toSet());
        }
    }

    /** Holds two plans of one day against each other, {@code then} with the delay; customers by order. */
    public static LateRope of(Planned now, Planned then, Map<String, String> customers) {
        Map<String, Arrival> later = new TreeMap<>(NaturalOrder.IDS);
        then.problem().arrivals().values().forEach(arrival -> later.put(arrival.order(), arrival));
        Map<String, Delay> delays = new TreeMap<>(NaturalOrder.IDS);
        now.problem().arrivals().values().forEach(arrival -> {
            Arrival other = later.getOrDefault(arrival.order(), arrival);
            if (!other.equals(arrival)) {
                delays.put(arrival.order(), new Delay(arrival, other));
            }
        });
        Set<String> lost = new HashSet<>(then.undone());
        lost.removeAll(now.undone());
        Set<String> riding = new HashSet<>();
        Map<String, Arrival> waits = new HashMap<>();
        for (Rider rider : Rider.of(now.problem(), now.plan().draws())) {
            Delay delay = delays.get(rider.arrival().order());
            if (delay != null) {
                riding.add(rider.order());
                rider.pieces().forEach(piece -> waits.put(piece, delay.then()));
            }
        }
        List<Hit> hits = hits(then.problem(), lost, waits, customers);
        List<String> waiting = waiting(now, then);
        Set<String> hit = hits.stream().map(Hit::order).collect(Collectors.toSet());
        hit.addAll(waiting);
        return new LateRope(
                now.problem().day(),
                List.copyOf(delays.values()),
                hits,
                waiting,
                riding.stream()
                        .filter(order -> !hit.contains(order))
                        .sorted(NaturalOrder.IDS)
                        .toList(),
                now.undone().size(),
                then.plan().cost().minus(now.plan().cost()));
    }

    /** Orders with pieces that wait then, and are looked at now. */
    private static List<String> waiting(Planned now, Planned then) {
        return now.problem().pieces().stream()
                .filter(piece -> then.problem().horizon().waitingOf(piece.id()).isPresent())
                .map(Piece::order)
                .distinct()
                .sorted(NaturalOrder.IDS)
                .toList();
    }

    private static List<Hit> hits(
            PackingProblem problem, Set<String> lost, Map<String, Arrival> waits, Map<String, String> customers) {
        Map<String, List<Piece>> byOrder = new TreeMap<>(NaturalOrder.IDS);
        problem.pieces().stream().filter(piece -> lost.contains(piece.id())).forEach(piece -> byOrder.computeIfAbsent(
                        piece.order(), any -> new ArrayList<>())
                .add(piece));
        CutDays days = new CutDays(problem);
        WorkingDays working = new WorkingDays(problem.calendar());
        List<Hit> hits = new ArrayList<>();
        byOrder.forEach((order, pieces) -> {
            LocalDate cutBy =
                    pieces.stream().map(days::lastFor).min(LocalDate::compareTo).orElseThrow();
            LocalDate from = pieces.stream()
                    .map(piece -> waits.get(piece.id()))
                    .map(arrival -> arrival == null ? LocalDate.MAX : arrival.from())
                    .max(LocalDate::compareTo)
                    .orElse(LocalDate.MAX);
            hits.add(new Hit(
                    order,
                    customers.getOrDefault(order, ""),
                    pieces.stream().map(Piece::id).sorted(NaturalOrder.IDS).toList(),
                    cutBy,
                    from,
                    from.equals(LocalDate.MAX) ? 0 : working.between(cutBy, from)));
        });
        hits.sort(java.util.Comparator.comparing(Hit::cutBy));
        return hits;
    }
}
