package bitterend.packing.strategy;

import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.Undone;
import bitterend.packing.loads.LoadPacker;
import java.util.List;
import java.util.Optional;

/** What both engines proved of a part: the patterns at their root, single reels by cases where they were asked. */
final class PartBounds {
    private final BoundOfPart patterns;
    private final Optional<LoadPacker.Answer> loads;

    PartBounds(BoundOfPart patterns, Optional<LoadPacker.Answer> loads) {
        this.patterns = patterns;
        this.loads = loads;
    }

    /** Whether it is proven that no plan leaves less undone. */
    boolean isLeast(Undone undone) {
        return patterns.isLeast(undone)
                || loads.filter(answer ->
                                answer.leastProven() && answer.undone().equals(undone))
                        .isPresent();
    }

    /** The bound on plans that leave no more undone than this. */
    Bound forUndone(Undone undone) {
        Bound root = patterns.forUndone(undone);
        return loads.filter(answer -> undone.isWithin(answer.undone()))
                .map(answer -> raised(root, answer))
                .orElse(root);
    }

    private static Bound raised(Bound root, LoadPacker.Answer answer) {
        Cost best = larger(root.best(), larger(new Cost(answer.bound()), new Cost(answer.shown())));
        Cost shown = new Cost(answer.shown());
        List<Bound.CostProof> costs =
                shown.compareTo(root.shown()) > 0 ? List.of(new Bound.CostProof(shown, answer.proof())) : List.of();
        List<Bound.LeastProof> least = answer.least().stream()
                .filter(work -> work.weight() > 0)
                .map(work -> new Bound.LeastProof(work.urgency(), work.weight(), work.proof()))
                .toList();
        return new Bound(
                root.ropes(),
                best,
                root.root(),
                root.scale(),
                root.undone(),
                root.undonePrices(),
                root.duals(),
                new Bound.Cases(costs, least));
    }

    private static Cost larger(Cost a, Cost b) {
        return a.compareTo(b) >= 0 ? a : b;
    }
}
