package bitterend.report;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.packing.Urgency;
import bitterend.packing.WorkingDays;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** In which order reels are cut: by the most urgent piece they hold, then by place, then by number. */
final class OrderOfWork {
    private final PlanView view;
    private final Urgency urgency;
    private final WorkingDays working;
    private final Map<String, Need> needs = new HashMap<>();

    OrderOfWork(PlanView view) {
        this.view = view;
        urgency = new Urgency(view.problem());
        working = new WorkingDays(view.problem().calendar());
    }

    /**
     * How urgent a reel is.
     *
     * @param urgency class of its most urgent piece
     * @param cutBy the day by which that piece must be cut; the earliest of several
     * @param priority the lowest number of those
     */
    record Need(int urgency, LocalDate cutBy, int priority) {
        static final Comparator<Need> ORDER = Comparator.comparingInt(Need::urgency)
                .thenComparing(Need::cutBy)
                .thenComparingInt(Need::priority);
    }

    List<ReelDraw> draws() {
        return view.plan().draws().stream()
                .sorted(Comparator.comparing(this::need, Need.ORDER)
                        .thenComparing(draw -> view.reel(draw).where().place(), NaturalOrder.IDS)
                        .thenComparing(ReelDraw::reel, NaturalOrder.IDS))
                .toList();
    }

    /** How urgent a reel is; one without pieces comes last. */
    private Need need(ReelDraw draw) {
        return needs.computeIfAbsent(draw.reel(), reel -> mostUrgent(draw));
    }

    /** When its most urgent piece must be cut, which is its due day where finishing takes none: {@code today}, {@code overdue}, a day; {@code first} in front where the order says so. */
    String due(ReelDraw draw) {
        Need need = need(draw);
        LocalDate day = view.plan().day();
        String when = need.cutBy().equals(LocalDate.MAX)
                ? "no day"
                : need.cutBy().equals(day)
                        ? "today"
                        : need.cutBy().isBefore(day) ? "overdue" : need.cutBy().toString();
        return need.priority() == 1 ? "first, " + when : when;
    }

    private Need mostUrgent(ReelDraw draw) {
        return draw.cuts().stream()
                .map(Cut::piece)
                .map(view.pieces()::get)
                .map(this::of)
                .min(Need.ORDER)
                .orElse(new Need(Integer.MAX_VALUE, LocalDate.MAX, Integer.MAX_VALUE));
    }

    private Need of(Piece piece) {
        return new Need(
                urgency.classOf(piece), working.cutBy(piece), piece.source().priority());
    }
}
