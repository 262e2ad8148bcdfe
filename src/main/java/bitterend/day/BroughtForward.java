package bitterend.day;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.packing.Arrival;
import bitterend.packing.CutDays;
import bitterend.packing.CutPlan;
import bitterend.packing.Horizon;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Cuts reels before the day that their pieces ask for, where the bench would else not be done in time. One reel after another
 * goes to the last day on which less work is late in all, for as long as that helps: once from the days that are asked for,
 * once from the first on which each may be cut. The better way is taken, and every reel goes as far back as it may without
 * more being late. What is on which reel stays as it is, and so does what the plan costs.
 */
public final class BroughtForward {
    /** So many pieces are looked at in all, each way of putting the reels on days counting all of them. */
    private static final int MOST_LOOKED_AT = 400_000;

    private final BenchHours hours;
    private final PackingProblem problem;
    private final Horizon brake;
    private final List<Piece> cut;
    private final CutDays cutDays;
    private final Map<String, Piece> pieces = new HashMap<>();
    private int left;

    /**
     * The bench of a plan.
     *
     * @param problem what was asked
     * @param brake what is not cut ahead before more rope comes
     * @param cut pieces that are cut and wait for their ends
     */
    public BroughtForward(BenchHours hours, PackingProblem problem, Horizon brake, List<Piece> cut) {
        this.hours = hours;
        this.problem = problem;
        this.brake = brake;
        this.cut = List.copyOf(cut);
        cutDays = new CutDays(problem);
        problem.pieces().forEach(piece -> pieces.put(piece.id(), piece));
    }

    /** Draws, and what they ask of the bench. */
    private record Weeks(List<ReelDraw> draws, List<BenchDay> days) {
        /** Minutes that are not done in time. */
        long late() {
            return days.stream().mapToLong(BenchDay::over).sum();
        }
    }

    /** The plan with the days on which its reels are best cut. */
    public CutPlan of(CutPlan plan) {
        left = MOST_LOOKED_AT / Math.max(1, pieces.size());
        Weeks asked = weeks(plan.draws());
        if (asked.late() == 0) {
            return plan;
        }
        Weeks best = lessLate(asked);
        Weeks early = best.late() == 0 ? best : lessLate(weeks(earliest(plan.draws(), asked.days())));
        return plan.withDraws(asLate(early.late() < best.late() ? early : best).draws());
    }

    private Weeks weeks(List<ReelDraw> draws) {
        left--;
        return new Weeks(draws, new BenchDays(hours, problem, draws, cut).days());
    }

    /** Each reel on the first day on which it may be cut. */
    private List<ReelDraw> earliest(List<ReelDraw> draws, List<BenchDay> days) {
        return draws.stream()
                .map(draw -> days.stream()
                        .filter(day -> day.there() > 0 && mayBeCut(draw, day.day()))
                        .findFirst()
                        .map(day -> on(draw, day.day()))
                        .orElse(draw))
                .toList();
    }

    /** One reel after another on a day for which less is late, until none is left. */
    private Weeks lessLate(Weeks first) {
        Weeks best = first;
        Optional<Weeks> better = better(best);
        while (better.isPresent()) {
            best = better.get();
            better = better(best);
        }
        return best;
    }

    private Optional<Weeks> better(Weeks weeks) {
        for (BenchDay full : weeks.days()) {
            for (ReelDraw draw : full.isTooFull() ? crowding(weeks.draws(), full.day()) : List.<ReelDraw>of()) {
                for (LocalDate day : others(weeks, draw)) {
                    Weeks moved = weeks(with(weeks.draws(), on(draw, day)));
                    if (moved.late() < weeks.late()) {
                        return Optional.of(moved);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /**
     * Days with somebody at the bench on which a reel may be cut but is not, the last in front; none when enough was looked
     * at.
     */
    private List<LocalDate> others(Weeks weeks, ReelDraw draw) {
        return left <= 0
                ? List.of()
                : weeks.days().stream()
                        .filter(day -> day.there() > 0)
                        .map(BenchDay::day)
                        .filter(day -> !day.equals(cutDays.of(draw)) && mayBeCut(draw, day))
                        .sorted(Comparator.reverseOrder())
                        .toList();
    }

    /** Reels with work that is due by a day and that are cut no later: those with most of it first. */
    private List<ReelDraw> crowding(List<ReelDraw> draws, LocalDate full) {
        return draws.stream()
                .filter(draw -> !cutDays.of(draw).isAfter(full) && minutes(draw, full) > 0)
                .sorted(Comparator.comparingLong((ReelDraw draw) -> -minutes(draw, full))
                        .thenComparing(ReelDraw::reel, NaturalOrder.IDS))
                .toList();
    }

    private long minutes(ReelDraw draw, LocalDate due) {
        return draw.cuts().stream()
                .map(each -> Objects.requireNonNull(pieces.get(each.piece()), each.piece()))
                .filter(piece -> !piece.source().due().isAfter(due))
                .mapToLong(piece -> piece.source().minutes() + hours.cut())
                .sum();
    }

    /** Every reel that was brought forward on the last day for which no more is late. */
    private Weeks asLate(Weeks weeks) {
        Weeks best = weeks;
        for (ReelDraw draw : weeks.draws()) {
            if (draw.isBroughtForward()) {
                best = later(best, draw);
            }
        }
        return best;
    }

    private Weeks later(Weeks weeks, ReelDraw draw) {
        for (LocalDate day : others(weeks, draw)) {
            if (day.isAfter(draw.forward())) {
                Weeks moved = weeks(with(weeks.draws(), on(draw, day)));
                if (moved.late() <= weeks.late()) {
                    return moved;
                }
            }
        }
        return weeks;
    }

    private ReelDraw on(ReelDraw draw, LocalDate day) {
        return draw.broughtForwardTo(day.equals(cutDays.askedFor(draw)) ? LocalDate.MAX : day);
    }

    /** No later than is asked for, its rope there by then, and none of its pieces kept by the brake. */
    private boolean mayBeCut(ReelDraw draw, LocalDate day) {
        LocalDate asked = cutDays.askedFor(draw);
        if (!day.isBefore(asked)) {
            return day.equals(asked);
        }
        Arrival arrival = problem.arrivals().get(draw.reel());
        boolean isThere = arrival == null || !day.isBefore(arrival.from());
        return isThere
                && draw.cuts().stream()
                        .flatMap(each -> brake.waitingOf(each.piece()).stream())
                        .noneMatch(waiting -> day.isBefore(waiting.until()));
    }

    private static List<ReelDraw> with(List<ReelDraw> draws, ReelDraw changed) {
        List<ReelDraw> all = new ArrayList<>(draws);
        all.replaceAll(draw -> draw.reel().equals(changed.reel()) ? changed : draw);
        return all;
    }
}
