package bitterend.work.plans;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Cut;
import bitterend.packing.CutDays;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.LinkedRopes;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunId;
import bitterend.packing.explain.KeptFor;
import java.time.Duration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reels that a plan keeps for work of a later day, and what that costs the other work in their rope: it is planned once more
 * as if the later pieces were not wanted.
 */
final class ReelsKept {
    private static final Duration LONGEST = Duration.ofMillis(800);

    private final PackingProblem problem;
    private final CutPlan plan;
    private final Packer packer;

    ReelsKept(PackingProblem problem, CutPlan plan, Packer packer) {
        this.problem = problem;
        this.plan = plan;
        this.packer = packer;
    }

    /** For what a reel is kept; nothing where it is cut today, or the other work would not be better off with it. */
    Optional<KeptFor> of(String reel) {
        return plan.draws().stream()
                .filter(draw -> draw.reel().equals(reel) && !problem.isComing(reel))
                .filter(draw -> !new CutDays(problem).isToday(draw))
                .findFirst()
                .flatMap(this::without);
    }

    private Optional<KeptFor> without(ReelDraw draw) {
        List<String> kept = draw.cuts().stream().map(Cut::piece).toList();
        PackingProblem others =
                problem.about(others(draw.reel(), new HashSet<>(kept))).withEarlier(Map.of());
        Packing now = only(Packing.of(plan.draws()), others);
        Packing then = packer.pack(others, Effort.of(LONGEST)).packing();
        PlanPrice price = new PlanPrice(others);
        boolean takesIt =
                then.places().values().stream().anyMatch(place -> place.reel().equals(draw.reel()));
        if (!takesIt || !price.isBetter(then, now)) {
            return Optional.empty();
        }
        List<String> undone = others.pieces().stream()
                .map(Piece::id)
                .filter(piece ->
                        then.placeOf(piece).isPresent() && now.placeOf(piece).isEmpty())
                .toList();
        Cost saving = undone.isEmpty() ? price.of(now).minus(price.of(then)) : Cost.ZERO;
        return Optional.of(new KeptFor(kept, new CutDays(problem).of(draw), undone, saving));
    }

    /** The other pieces in the rope of a reel, and in ropes that have to do with it. */
    private List<Piece> others(String reel, Set<String> kept) {
        LinkedRopes ropes = new LinkedRopes(problem.pieces());
        String rope = problem.reel(reel).rope();
        return ropes.groups().entrySet().stream()
                .filter(group -> ropes.isIn(group.getKey(), rope))
                .flatMap(group -> group.getValue().stream())
                .filter(piece -> !kept.contains(piece.id()))
                .toList();
    }

    private static Packing only(Packing packing, PackingProblem problem) {
        Map<String, RunId> places = new HashMap<>();
        problem.pieces()
                .forEach(piece -> packing.placeOf(piece.id()).ifPresent(place -> places.put(piece.id(), place)));
        return new Packing(places);
    }
}
