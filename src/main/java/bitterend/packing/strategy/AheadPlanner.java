package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.packing.Brake;
import bitterend.packing.Cut;
import bitterend.packing.CutDays;
import bitterend.packing.CutPlan;
import bitterend.packing.Horizon;
import bitterend.packing.Horizon.Waiting;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.Unplanned;
import bitterend.packing.Urgency;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Plans a day that looks ahead, in several ways where it must. As far ahead as was asked; without what the brake holds back of
 * the ropes of which the plan would cut any of that today, where what comes off rope on order stays promised, and what finds no rope even so is told; and today alone,
 * where the plan leaves first-class work of today undone and today alone leaves less of it.
 */
public final class AheadPlanner {
    /** All the time there is; a plan that another may follow gets less, so that all together keep to it. */
    public static final int QUARTERS = 4;

    private static final int BEFORE_THE_BRAKE = 2;
    private static final int BEFORE_TODAY_ALONE = 3;
    /** So often what is held back is taken out rope by rope; then all of it is. */
    private static final int ROUNDS = 2;

    private final Engine engine;

    public AheadPlanner(Engine engine) {
        this.engine = engine;
    }

    /** Plans one question. */
    public interface Engine {
        /**
         * A checked plan.
         *
         * @param quarters how many quarters of the time that is left it may take
         */
        DayPlanner.Checked plan(PackingProblem problem, int quarters);
    }

    /** A plan, and the question that it answers. */
    public record Planned(PackingProblem problem, DayPlanner.Checked checked) {
        public CutPlan plan() {
            return checked.plan();
        }
    }

    /**
     * The plan of a day.
     *
     * @param near all that is looked at
     * @param held the same without what is not to be cut ahead
     * @param atTheBench ids of pieces that stay, since sheets at the bench have them
     */
    public Planned plan(PackingProblem near, PackingProblem held, Set<String> atTheBench) {
        boolean alone = hasFirstClassToday(near);
        Planned far = ahead(near, held, alone);
        long undone = undoneToday(near, far.plan());
        PackingProblem today = Horizon.today(far.problem(), atTheBench);
        if (undone == 0 || today.pieces().size() == far.problem().pieces().size()) {
            return far;
        }
        Planned planned = planned(today, QUARTERS);
        return undoneToday(near, planned.plan()) < undone ? planned : far;
    }

    private Planned ahead(PackingProblem near, PackingProblem held, boolean alone) {
        int last = alone ? BEFORE_TODAY_ALONE : QUARTERS;
        List<Waiting> all = held.horizon().waiting();
        Planned planned = planned(near, all.isEmpty() ? last : BEFORE_THE_BRAKE);
        Set<String> undone = undone(planned.plan());
        Map<String, Set<String>> out = new TreeMap<>();
        for (int round = 1; takeOut(planned, all, out); round++) {
            planned = round > ROUNDS
                    ? planned(Brake.without(near, all, undone), last)
                    : planned(without(near, all, out, undone), BEFORE_THE_BRAKE);
        }
        return planned;
    }

    private Planned planned(PackingProblem problem, int quarters) {
        return new Planned(problem, engine.plan(problem, quarters));
    }

    private static PackingProblem without(
            PackingProblem near, List<Waiting> all, Map<String, Set<String>> out, Set<String> undone) {
        List<Waiting> waiting = new ArrayList<>();
        for (Waiting each : all) {
            Set<String> pieces = out.getOrDefault(each.rope(), Set.of());
            if (!pieces.isEmpty()) {
                waiting.add(new Waiting(
                        each.rope(),
                        each.pieces().stream().filter(pieces::contains).toList(),
                        each.until(),
                        each.order()));
            }
        }
        return Brake.without(near, waiting, undone);
    }

    /**
     * Adds what waits of the ropes of which a plan would cut any of that today, but for what comes off rope on order and shares
     * no set with the others; says whether there is any.
     */
    private static boolean takeOut(Planned planned, List<Waiting> all, Map<String, Set<String>> out) {
        PackingProblem problem = planned.problem();
        CutDays days = new CutDays(problem);
        Set<String> today = new HashSet<>();
        Set<String> riding = new HashSet<>();
        for (ReelDraw draw : planned.plan().draws()) {
            if (days.isToday(draw)) {
                draw.cuts().stream().map(Cut::piece).forEach(today::add);
            } else if (problem.isComing(draw.reel())) {
                draw.cuts().stream().map(Cut::piece).forEach(riding::add);
            }
        }
        Set<String> torn = new HashSet<>();
        problem.pieces().stream()
                .filter(piece -> piece.isMatched() && !riding.contains(piece.id()))
                .forEach(piece -> torn.add(piece.matching().set()));
        problem.pieces().stream()
                .filter(piece ->
                        piece.isMatched() && torn.contains(piece.matching().set()))
                .map(Piece::id)
                .forEach(riding::remove);
        boolean any = false;
        for (Waiting each : all) {
            if (each.pieces().stream().anyMatch(today::contains)) {
                Set<String> pieces = out.computeIfAbsent(each.rope(), rope -> new HashSet<>());
                each.pieces().stream().filter(piece -> !riding.contains(piece)).forEach(pieces::add);
                any = true;
            }
        }
        return any;
    }

    private static boolean hasFirstClassToday(PackingProblem near) {
        CutDays days = new CutDays(near);
        Urgency urgency = new Urgency(near);
        return near.pieces().stream()
                .anyMatch(piece ->
                        urgency.classOf(piece) == 1 && days.lastFor(piece).equals(near.day()));
    }

    private static Set<String> undone(CutPlan plan) {
        return plan.unplanned().stream().map(Unplanned::piece).collect(Collectors.toSet());
    }

    /** The weight of first-class pieces that must be cut today and are not planned. */
    private static long undoneToday(PackingProblem near, CutPlan plan) {
        Set<String> undone = undone(plan);
        CutDays days = new CutDays(near);
        Urgency urgency = new Urgency(near);
        return near.pieces().stream()
                .filter(piece -> undone.contains(piece.id()) && urgency.classOf(piece) == 1)
                .filter(piece -> days.lastFor(piece).equals(near.day()))
                .mapToLong(Urgency::weight)
                .sum();
    }
}
