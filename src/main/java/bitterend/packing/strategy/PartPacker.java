package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.Effort;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Undone;
import bitterend.packing.bench.Dividing;
import bitterend.packing.bench.EveryWay;
import bitterend.packing.bench.LeastUndone;
import bitterend.packing.bench.LotMending;
import bitterend.packing.bench.Promised;
import bitterend.packing.bench.Workbench;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.loads.LoadPacker;
import bitterend.packing.loads.Plans;
import bitterend.packing.patterns.PatternPacker;
import bitterend.packing.patterns.PatternPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Packs ropes that belong together: greedy starts, patterns for the bound and a better start, then the search over all
 * rules from either and on from what came of it, which ends early when the bound is met. Never worse than any of its parts.
 */
final class PartPacker {
    /** Per cent of the time that a search may take beside the patterns and the search that follows them. */
    private static final int BESIDE_ALL_ELSE = 75;

    /** Tries for less undone work without success after which that ends: so many, and so many more for each piece. */
    private static final long PATIENCE = 3_000;

    private static final long PATIENCE_PER_PIECE = 60;

    /** So few pieces are cut in every way, as far as so many partial ways go. */
    private static final int FEW = 10;

    private static final long WAYS = 3_000_000;

    /** Up to so many pieces single reels are bounded; fewer where lots are paid for. */
    private static final int MOST_PLAIN = 300;

    private static final int MOST_USUAL = 200;

    private static final int LARGE = 3_000;

    /** No smaller difference can be paid. */
    private static final Cost COIN = new Cost(Cost.MILLIS_PER_MINOR);

    private final PackingProblem part;
    private final Share share;
    private final PlanPrice prices;
    private final Workbench bench;
    private final HardRules rules;
    private final SameNames names;
    private final List<String> unsound = new ArrayList<>();
    private final boolean coreToSpare;
    private Packing best = Packing.EMPTY;
    private Cost bestCost;
    private Undone bestUndone;

    /** @param coreToSpare whether a search may run beside the rest; the packing under a limit of work is the same */
    PartPacker(PackingProblem part, Share share, boolean coreToSpare) {
        this.part = part;
        this.share = share;
        this.coreToSpare = coreToSpare;
        bench = new Workbench(part);
        prices = bench.prices();
        rules = new HardRules(part);
        names = new SameNames(part);
        bestCost = prices.of(best);
        bestUndone = prices.undone(best);
    }

    /** A packing, the bound on it, and what was wrong with packings that were thrown away. */
    record Answer(Packing packing, Bound bound, List<String> unsound) {}

    Answer pack(Improver improver) {
        if (!part.earlier().isEmpty()) {
            offer(Promised.packing(bench));
        }
        Packing greedy = new GreedyPacker(bench)
                .best(share.overForStarts(
                        (long) part.pieces().size() * part.reels().size()));
        offer(greedy);
        tell(Cost.ZERO);
        lessUndone(0);
        SideSearch fromGreedy = new SideSearch(dividedFirst(improver), part, best);
        if (coreToSpare) {
            fromGreedy.begin(share.besides(1, BESIDE_ALL_ELSE, fromGreedy::isCalledOff));
        }
        try {
            Optional<LoadPacker> engine = loadEngine();
            BoundOfPart root = patterns(engine.isPresent());
            lessUndone(1);
            if (!isProven(new PartBounds(root, Optional.empty()))) {
                divide(0);
            }
            PartBounds bounds = loads(engine, root);
            if (isProven(bounds)) {
                lastOfACoin(bounds);
            } else if (!share.isSpent() && !everyWay()) {
                search(improver, fromGreedy, bounds);
            }
            return answer(bounds);
        } finally {
            fromGreedy.callOff();
        }
    }

    /** The best of the quick starts and the patterns alone: a seam for tests. */
    Packing startedByPatterns() {
        offer(new GreedyPacker(bench).best());
        patterns(false);
        return best;
    }

    /** @param beforeLoads whether single reels are bounded after this */
    private BoundOfPart patterns(boolean beforeLoads) {
        PatternBridge whole = new PatternBridge(part);
        bitterend.packing.patterns.Effort effort = beforeLoads
                ? share.forPatternsFirst(this::tellPatterns)
                : share.forPatterns(isAllSeen(), this::tellPatterns);
        PatternPlan patterns = bestUndone.isNone()
                ? PatternPacker.packAll(whole.patterns(), effort)
                : PatternPacker.pack(whole.patterns(), effort);
        BoundOfPart root = new BoundOfPart(part, whole, patterns);
        offer(new Handout(whole, patterns).packing());
        boolean proven = isProven(new PartBounds(root, Optional.empty()));
        if (!beforeLoads && hasSets() && !proven && !share.isSpent()) {
            packAroundSets();
        }
        return root;
    }

    /** So many pieces that mending lots would take the time that patterns need. */
    private boolean isLarge() {
        return part.pieces().size() > LARGE;
    }

    /** Bounds by single reels; none for parts so large that tables and rows would take all the time. */
    private Optional<LoadPacker> loadEngine() {
        return part.pieces().size() > (isAllSeen() ? MOST_PLAIN : MOST_USUAL)
                ? Optional.empty()
                : LoadPacker.of(part, new Offers(), share.seed());
    }

    private PartBounds loads(Optional<LoadPacker> engine, BoundOfPart root) {
        PartBounds first = new PartBounds(root, Optional.empty());
        return isProven(first) ? first : new PartBounds(root, engine.map(loads -> loads.run(share.forLoads())));
    }

    /** Takes what the load engine finds. */
    private final class Offers implements Plans {
        @Override
        public void offer(Packing packing) {
            PartPacker.this.offer(packing);
        }

        @Override
        public Plans.Standing best() {
            return new Plans.Standing(best, bestUndone, bestCost.millis());
        }
    }

    /** From the best so far, from the greedy start, and on from the better of the two. */
    private void search(Improver improver, SideSearch fromGreedy, PartBounds bounds) {
        divide(1);
        offer(improver.improve(part, best, share.forSearch(0, coreToSpare ? 50 : 30), target(bounds)));
        if (isProven(bounds) || share.isSpent()) {
            return;
        }
        offer(coreToSpare ? fromGreedy.answer() : fromGreedy.now(share.forSearch(1, 43)));
        lessUndone(2);
        divide(2);
        if (!isProven(bounds) && !share.isSpent()) {
            offer(improver.improve(part, best, share.forSearch(2, 100), target(bounds)));
        }
    }

    /** Beside all else, on a bench of its own, so that neither waits for the other. */
    private Improver dividedFirst(Improver improver) {
        return (problem, start, effort, bound) -> {
            Packing divided = Dividing.improve(new Workbench(problem), start, share.forDividing(problem, effort));
            return improver.improve(problem, divided, effort, bound);
        };
    }

    /** Pieces of two runs at a time are divided anew. */
    private void divide(int turn) {
        if (!share.isSpent() && part.pieces().size() > 1) {
            offer(Dividing.improve(
                    bench, best, share.forDividing(turn, part.pieces().size())));
        }
    }

    /** Where rope is short: which work stays undone, sets and single pieces alike. */
    private void lessUndone(int turn) {
        if (!bestUndone.isNone() && !share.isSpent() && bench.mayPlanMore(best)) {
            long patience = PATIENCE + PATIENCE_PER_PIECE * part.pieces().size();
            offer(LeastUndone.improve(bench, best, share.forUndone(turn), patience));
        }
    }

    /** Tries every way to cut a few pieces; whether the best so far is the best there is. */
    private boolean everyWay() {
        if (part.pieces().size() > FEW) {
            return false;
        }
        EveryWay.Answer answer = EveryWay.best(bench, best, share.ways(WAYS), share.over(50));
        offer(answer.packing());
        return answer.isBest();
    }

    /** Of a few pieces the best plan is found to the last part of a coin, though nobody can pay it. */
    private void lastOfACoin(PartBounds bounds) {
        if (bestCost.compareTo(target(bounds)) > 0 && !share.isSpent()) {
            everyWay();
        }
    }

    private Answer answer(PartBounds bounds) {
        Bound bound = atLeastByRope(bounds.forUndone(bestUndone));
        tell(bound.best());
        return new Answer(best, bound, unsound);
    }

    /** Says what the best so far costs, and leaves undone. */
    private void tell(Cost bound) {
        share.tell(part, bestCost, bound, part.pieces().size() - best.places().size());
    }

    /** Where work stays undone the rope alone may prove more than what the engines had time for. */
    private Bound atLeastByRope(Bound bound) {
        return bestUndone.isNone()
                ? bound
                : new RopeAlone(part)
                        .of(bestUndone)
                        .filter(rope -> rope.best().compareTo(bound.best()) > 0)
                        .map(rope -> rope.with(bound.cases()))
                        .orElse(bound);
    }

    /** Improves a start under all rules; a seam for tests and for packing without the search. */
    @FunctionalInterface
    interface Improver {
        Packing improve(PackingProblem problem, Packing start, Effort effort, Cost bound);
    }

    /** The bound on plans like the best so far; zero while more might be planned. */
    private Cost target(PartBounds bounds) {
        return bounds.isLeast(bestUndone) ? bounds.forUndone(bestUndone).best() : Cost.ZERO;
    }

    private boolean isProven(PartBounds bounds) {
        return bounds.isLeast(bestUndone) && bestCost.minus(target(bounds)).compareTo(COIN) < 0;
    }

    private void packAroundSets() {
        TreeMap<String, bitterend.packing.RunId> sets = part.pieces().stream()
                .filter(Piece::isMatched)
                .filter(piece -> best.places().containsKey(piece.id()))
                .collect(Collectors.toMap(
                        Piece::id, piece -> best.placeOf(piece.id()).orElseThrow(), (a, b) -> a, TreeMap::new));
        List<Piece> singles =
                part.pieces().stream().filter(piece -> !piece.isMatched()).toList();
        PatternBridge rest = new PatternBridge(part, new Packing(sets), singles);
        PatternPlan patterns = PatternPacker.pack(rest.patterns(), share.aroundSets());
        offer(new Handout(rest, patterns).packing());
    }

    /** Neither sets nor split orders are to be paid for. */
    private boolean isAllSeen() {
        return !hasSets() && part.prices().splitOrder().equals(Cost.ZERO);
    }

    private boolean hasSets() {
        return part.pieces().stream().anyMatch(Piece::isMatched);
    }

    private void tellPatterns(bitterend.packing.patterns.Progress progress) {
        share.tell(part, new Cost(progress.cost()), new Cost(progress.bound()), 0);
    }

    /** Keeps the better: less work undone, then the lower true price. What still finds room is placed first. */
    private void offer(Packing offered) {
        if (!isSound(offered)) {
            return;
        }
        Packing filled = LeastUndone.filled(bench, offered);
        Packing mended = LeastUndone.filled(bench, LotMending.mended(bench, filled, share.over(isLarge() ? 5 : 30)));
        if (!isSound(mended)) {
            return;
        }
        Packing packing = withNamesOfBefore(mended);
        Undone undone = prices.undone(packing);
        Cost cost = prices.of(packing);
        int work = undone.compareTo(bestUndone);
        boolean better = work < 0 || (work == 0 && cost.compareTo(bestCost) < 0);
        if (better) {
            best = packing;
            bestCost = cost;
            bestUndone = undone;
        }
    }

    /** The same with as few pieces off their reel of an earlier plan as can be, where that costs no more. */
    private Packing withNamesOfBefore(Packing packing) {
        if (part.earlier().isEmpty()) {
            return packing;
        }
        Packing named = names.of(packing);
        return rules.brokenBy(named).isEmpty() && prices.of(named).compareTo(prices.of(packing)) <= 0 ? named : packing;
    }

    /** A packing that breaks a hard rule is a fault of this program: it is remembered, and never the best. */
    private boolean isSound(Packing packing) {
        Optional<String> broken = rules.brokenBy(packing);
        broken.ifPresent(unsound::add);
        return broken.isEmpty();
    }
}
