package bitterend.packing.explain;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.packing.Arrival;
import bitterend.packing.Cut;
import bitterend.packing.CutDays;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.WorkingDays;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * An order of ours that a plan cuts off rope that is not here yet: if that comes late, so may this.
 *
 * @param order the order
 * @param pieces ids of its pieces that ride on the rope
 * @param arrival which order of rope, and when it comes
 * @param cutBy the last day on which the first of the pieces may be cut
 * @param leeway working days that the rope may come later than it is expected before that day is missed
 */
public record Rider(String order, List<String> pieces, Arrival arrival, LocalDate cutBy, int leeway) {
    public Rider {
        pieces = List.copyOf(pieces);
    }

    /** All that rides on rope that is on order, the least leeway first. */
    public static List<Rider> of(PackingProblem problem, List<ReelDraw> draws) {
        Map<String, Piece> pieces = new HashMap<>();
        problem.pieces().forEach(piece -> pieces.put(piece.id(), piece));
        CutDays days = new CutDays(problem);
        WorkingDays working = new WorkingDays(problem.calendar());
        Map<String, Map<Arrival, List<Piece>>> riding = new TreeMap<>(NaturalOrder.IDS);
        for (ReelDraw draw : draws) {
            Arrival arrival = problem.arrivals().get(draw.reel());
            if (arrival != null) {
                for (Cut cut : draw.cuts()) {
                    Piece piece = pieces.get(cut.piece());
                    if (piece == null) {
                        throw new IllegalArgumentException("no piece " + cut.piece());
                    }
                    riding.computeIfAbsent(piece.order(), any -> new HashMap<>())
                            .computeIfAbsent(arrival, any -> new ArrayList<>())
                            .add(piece);
                }
            }
        }
        List<Rider> riders = new ArrayList<>();
        riding.forEach((order, by) -> by.forEach((arrival, some) -> {
            LocalDate cutBy =
                    some.stream().map(days::lastFor).min(LocalDate::compareTo).orElseThrow();
            riders.add(new Rider(
                    order,
                    some.stream().map(Piece::id).sorted(NaturalOrder.IDS).toList(),
                    arrival,
                    cutBy,
                    working.between(working.firstFrom(arrival.earliest(problem.day())), cutBy)));
        }));
        riders.sort(Comparator.comparingInt(Rider::leeway)
                .thenComparing(Rider::order, NaturalOrder.IDS)
                .thenComparing(rider -> rider.arrival().order(), NaturalOrder.IDS));
        return riders;
    }
}
