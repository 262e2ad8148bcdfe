package bitterend.packing.order;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.packing.Cut;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.Urgency;
import bitterend.packing.WorkingDays;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** In which order reels are cut: by the most urgent piece they hold, then by place, then by number. */
public final class OrderOfWork {
    private final Urgency urgency;
    private final WorkingDays working;
    private final Map<String, Piece> pieces = new HashMap<>();
    private final Map<String, String> places = new HashMap<>();

    public OrderOfWork(PackingProblem problem) {
        urgency = new Urgency(problem);
        working = new WorkingDays(problem.calendar());
        problem.pieces().forEach(piece -> pieces.put(piece.id(), piece));
        for (Reel reel : problem.reels()) {
            places.put(reel.id(), reel.where().place());
        }
    }

    /**
     * How urgent a reel is.
     *
     * @param urgency class of its most urgent piece
     * @param cutBy the day by which that piece must be cut; the earliest of several
     * @param priority the lowest number of those
     */
    public record Need(int urgency, LocalDate cutBy, int priority) {
        private static final Comparator<Need> ORDER = Comparator.comparingInt(Need::urgency)
                .thenComparing(Need::cutBy)
                .thenComparingInt(Need::priority);
        private static final Need NONE = new Need(Integer.MAX_VALUE, LocalDate.MAX, Integer.MAX_VALUE);
    }

    /** The draws as they follow one another at the bench. */
    public List<ReelDraw> of(List<ReelDraw> draws) {
        Map<String, Need> needs = new HashMap<>();
        draws.forEach(draw -> needs.put(draw.reel(), need(draw)));
        Comparator<ReelDraw> byNeed =
                Comparator.comparing(draw -> needs.getOrDefault(draw.reel(), Need.NONE), Need.ORDER);
        return draws.stream()
                .sorted(byNeed.thenComparing(draw -> places.getOrDefault(draw.reel(), ""), NaturalOrder.IDS)
                        .thenComparing(ReelDraw::reel, NaturalOrder.IDS))
                .toList();
    }

    /** How urgent a reel is; one without pieces comes last. */
    public Need need(ReelDraw draw) {
        return draw.cuts().stream()
                .map(Cut::piece)
                .map(pieces::get)
                .filter(Objects::nonNull)
                .map(this::of)
                .min(Need.ORDER)
                .orElse(Need.NONE);
    }

    private Need of(Piece piece) {
        return new Need(
                urgency.classOf(piece), working.cutBy(piece), piece.source().priority());
    }
}
