package bitterend.packing.check;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.Prices;
import bitterend.packing.ReelDraw;
import bitterend.packing.Undone;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A bound with the pieces and reels it speaks of: every reel of its ropes, every piece that may come off one of them. */
final class BoundClaim {
    private final Facts facts;
    private final UndoneWork work;
    private final CutPlan plan;
    private final Bound bound;
    private final Set<String> ropes;
    private final List<Reel> reels;
    private final List<Piece> pieces;
    private final Map<String, Long> duals = new HashMap<>();

    BoundClaim(PackingProblem problem, CutPlan plan, Bound bound) {
        facts = new Facts(problem);
        work = new UndoneWork(problem);
        this.plan = plan;
        this.bound = bound;
        ropes = new HashSet<>(bound.ropes());
        reels = problem.reels().stream()
                .filter(reel -> ropes.contains(reel.rope()))
                .toList();
        pieces = problem.pieces().stream()
                .filter(piece -> piece.choices().stream().anyMatch(choice -> ropes.contains(choice.rope())))
                .toList();
    }

    Facts facts() {
        return facts;
    }

    List<Reel> reels() {
        return reels;
    }

    List<Piece> pieces() {
        return pieces;
    }

    Bound bound() {
        return bound;
    }

    /**
     * The dual of a piece, zero when none is given; where it is limited no more than what leaving the piece unplanned is
     * charged at. With everything planned both are sound.
     */
    long dual(Piece piece, boolean limited) {
        long dual = duals.getOrDefault(piece.id(), 0L);
        return limited ? Math.min(dual, Math.multiplyExact(priceIn(work.classOf(piece)), work.weight(piece))) : dual;
    }

    private long priceIn(int urgency) {
        return bound.undonePrices().get(urgency - 1);
    }

    /** What leaving undone as much as the bound says is charged at. */
    long chargeForUndone() {
        long charge = 0;
        for (int k = 1; k <= Undone.CLASSES; k++) {
            charge = Math.addExact(
                    charge, Math.multiplyExact(priceIn(k), bound.undone().in(k)));
        }
        return charge;
    }

    /** Whether leaving anything undone is charged. */
    boolean hasPrices() {
        return bound.undonePrices().stream().anyMatch(price -> price > 0);
    }

    /** Reads the duals and tells what contradicts the day or the plan, if anything does. */
    Optional<String> contradiction() {
        return Optional.<String>empty()
                .or(this::wrongDual)
                .or(this::escape)
                .or(this::wrongWeight)
                .or(this::wrongOrder);
    }

    private Optional<String> wrongDual() {
        Set<String> known = new HashSet<>();
        pieces.forEach(piece -> known.add(piece.id()));
        for (Bound.Dual dual : bound.duals()) {
            for (String piece : dual.pieces()) {
                if (!known.contains(piece) || dual.price() < 0 || duals.put(piece, dual.price()) != null) {
                    return Optional.of("the dual of " + piece + " is unknown here, negative, or given twice");
                }
            }
        }
        return bound.undonePrices().stream().anyMatch(price -> price < 0)
                ? Optional.of("a price of leaving undone is negative")
                : Optional.empty();
    }

    /** A piece that might come off a reel of another rope is not bound by this group. */
    private Optional<String> escape() {
        Set<String> others = new HashSet<>();
        facts.problem().reels().stream()
                .map(Reel::rope)
                .filter(rope -> !ropes.contains(rope))
                .forEach(others::add);
        return pieces.stream()
                .filter(piece -> piece.choices().stream().anyMatch(choice -> others.contains(choice.rope())))
                .findFirst()
                .map(piece -> piece.id() + " may also come off another rope that is in stock");
    }

    private Optional<String> wrongWeight() {
        Set<String> unplanned = new HashSet<>();
        plan.unplanned().forEach(piece -> unplanned.add(piece.piece()));
        Undone undone = Undone.NONE;
        for (Piece piece : pieces) {
            if (unplanned.contains(piece.id())) {
                undone = undone.plus(work.of(piece));
            }
        }
        return undone.equals(bound.undone())
                ? Optional.empty()
                : Optional.of("the plan leaves " + undone + " undone by class, the bound says " + bound.undone());
    }

    private Optional<String> wrongOrder() {
        Cost cost = cost();
        if (bound.root().compareTo(bound.best()) > 0) {
            return Optional.of("the best bound is below the one that the duals prove");
        }
        return bound.best().compareTo(cost) > 0
                ? Optional.of("no plan is said to cost less than "
                        + bound.best().millis() + ", and this one costs " + cost.millis() + " (1/1000 minor units)")
                : Optional.empty();
    }

    /** What the plan spends on these ropes. */
    private Cost cost() {
        Map<String, Reel> mine = new HashMap<>();
        reels.forEach(reel -> mine.put(reel.id(), reel));
        List<WholePlanCheck.Placed> placed = new ArrayList<>();
        Prices prices = facts.problem().prices();
        Cost cost = Cost.ZERO;
        for (ReelDraw draw : plan.draws()) {
            Reel reel = mine.get(draw.reel());
            if (reel != null) {
                cost = cost.plus(draw.cost());
                for (Cut cut : draw.cuts()) {
                    facts.findPiece(cut.piece()).ifPresent(piece -> placed.add(new WholePlanCheck.Placed(piece, reel)));
                }
            }
        }
        return cost.plus(prices.splitOrder().times(WholePlanCheck.lotsBeyondTheFirst(placed)))
                .plus(prices.movedPiece().times(WholePlanCheck.moved(facts, placed)));
    }
}
