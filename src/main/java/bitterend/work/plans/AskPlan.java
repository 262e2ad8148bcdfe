package bitterend.work.plans;

import bitterend.day.BegunSets;
import bitterend.day.RackToday;
import bitterend.demand.Piece;
import bitterend.packing.CutPlan;
import bitterend.packing.Horizon;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.WorkingDays;
import bitterend.packing.explain.Explanation;
import bitterend.packing.explain.PieceAnswer;
import bitterend.packing.explain.ReelAnswer;
import bitterend.packing.strategy.EffortLevel;
import bitterend.packing.strategy.FullStrategy;
import bitterend.quoting.PlanShares;
import bitterend.stock.Movement;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Asks a plan that went through the gate. A question writes nothing and changes no plan; what it costs that a reel is kept
 * for later work is found by planning its rope for a moment without that work.
 */
public final class AskPlan {
    private final ShopNow shop;
    private final PackingProblem problem;
    private final CutPlan plan;

    public AskPlan(ShopNow shop, Verdict.Passed passed) {
        this.shop = shop;
        problem = passed.problem();
        plan = passed.plan();
    }

    /** What is said of one piece or reel. */
    public sealed interface About {
        /**
         * A piece that is to be cut: where, why there, and what of its set is cut by now.
         *
         * @param begun the piece bound to what is cut of its matched set; null when nothing of one is
         */
        record OfPiece(PieceAnswer answer, @Nullable Piece begun) implements About {}

        /** A reel: what comes off it, or why nothing does. */
        record OfReel(ReelAnswer answer) implements About {}

        /** A piece that is cut already, by this movement. */
        record CutAlready(Movement cut) implements About {}

        /**
         * A piece that is ordered and need not be cut yet: the plan does not look so far ahead.
         *
         * @param cutBy the day by which it must be cut
         * @param until the day up to which the plan looks
         */
        record Later(LocalDate cutBy, LocalDate until) implements About {}

        /** The plan does not look at it, since rope is short and it need not be cut today. */
        record Waits(String piece, Horizon.Waiting what) implements About {}

        /**
         * No piece and no reel is called that.
         *
         * @param piece the id of some piece, as an example
         */
        record Unknown(String piece) implements About {}
    }

    /** What the plan does with a piece, or with a reel when no piece has this id; and why. */
    public About about(String id) {
        Optional<Movement> cut =
                shop.rack().flatMap(rack -> Optional.ofNullable(rack.cut().get(id)));
        if (cut.isPresent()) {
            return new About.CutAlready(cut.get());
        }
        Explanation explanation = new Explanation(problem, Packing.of(plan.draws()));
        return explanation
                .piece(id)
                .<About>map(answer -> new About.OfPiece(answer, bound(id)))
                .or(() -> explanation.reel(id).map(answer -> new About.OfReel(kept(answer))))
                .or(() -> later(id))
                .orElseGet(() -> new About.Unknown(
                        problem.pieces().stream().findFirst().map(Piece::id).orElse("1041/2.1")));
    }

    private ReelAnswer kept(ReelAnswer answer) {
        return answer.keptFor(new ReelsKept(problem, plan, FullStrategy.at(EffortLevel.QUICK))
                .of(answer.reel())
                .orElse(null));
    }

    private Optional<About> later(String id) {
        Horizon horizon = problem.horizon();
        Optional<About> waits = horizon.waitingOf(id).map(what -> new About.Waits(id, what));
        return waits.isPresent()
                ? waits
                : shop.shop().pieces().stream()
                        .filter(piece -> piece.id().equals(id) && !horizon.holds(piece, problem.calendar()))
                        .findFirst()
                        .map(piece ->
                                new About.Later(new WorkingDays(problem.calendar()).cutBy(piece), horizon.until()));
    }

    /** A piece whose set is begun by now, bound to what is cut of it. */
    private @Nullable Piece bound(String id) {
        return shop.rack().flatMap(rack -> bound(id, rack)).orElse(null);
    }

    private Optional<Piece> bound(String id, RackToday rack) {
        return shop.shop().pieces().stream()
                .filter(piece -> piece.id().equals(id))
                .map(piece -> new BegunSets(shop.shop().pieces(), rack).bound(piece))
                .filter(piece -> !piece.matching().begun().isEmpty())
                .findFirst();
    }

    /** What each order of the plan caused, waste and reels included. */
    public List<PlanShares.OrderShare> shares() {
        return PlanShares.of(problem, plan);
    }
}
