package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.packing.DrawPrice;
import bitterend.packing.Eligibility;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunLoad;
import bitterend.packing.Undone;
import bitterend.packing.Urgency;
import bitterend.packing.patterns.Item;
import bitterend.packing.patterns.PatternProblem;
import bitterend.packing.patterns.ReelKind;
import bitterend.packing.patterns.Run;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongUnaryOperator;

/**
 * A packing problem in the numbers of the pattern engine: pieces that are alike become items, reels that are alike become
 * kinds. Matched sets, split orders and moved pieces are not seen there. Pieces that are fixed beforehand only shorten
 * the runs they lie on.
 */
final class PatternBridge {
    private static final RunLoad[] UNTOUCHED = {};

    private final PackingProblem problem;
    private final Packing fixed;
    private final PlanPrice prices;
    private final Map<String, RunLoad[]> fixedLoads;
    private final Eligibility rules;
    private final Urgency urgency;
    private final ClassScale scale;
    private final List<List<Piece>> kinds;
    private final Map<ReelKey, List<Reel>> reels = new LinkedHashMap<>();
    private final Map<StockValue, LongUnaryOperator> values = new HashMap<>();

    private record ReelKey(List<Run> runs, long opening, long loss, List<Long> lengths, LongUnaryOperator value) {}

    /** Every piece is an item. */
    PatternBridge(PackingProblem problem) {
        this(problem, Packing.EMPTY, problem.pieces());
    }

    /** The pieces of {@code open} are items; those of {@code fixed} stay where they are. */
    PatternBridge(PackingProblem problem, Packing fixed, List<Piece> open) {
        this.problem = problem;
        this.fixed = fixed;
        prices = new PlanPrice(problem);
        fixedLoads = prices.loads(fixed);
        rules = new Eligibility(problem);
        urgency = new Urgency(problem);
        scale = ClassScale.of(open.stream().map(urgency::of).reduce(Undone.NONE, Undone::plus));
        kinds = new PieceKinds(problem, open).kinds();
        problem.reels().stream()
                .sorted(Comparator.comparing(PlanPrice::lotOf).thenComparing(Reel::id))
                .forEach(reel -> reels.computeIfAbsent(key(reel), key -> new ArrayList<>())
                        .add(reel));
    }

    /** The pieces of each item, in the order of the items. */
    List<List<Piece>> kinds() {
        return kinds;
    }

    /** The reels of each kind, in the order of the kinds. */
    List<List<Reel>> reels() {
        return List.copyOf(reels.values());
    }

    /** The problem of the pieces that are not fixed. */
    PatternProblem patterns() {
        List<Item> items = kinds.stream()
                .map(kind -> new Item(kind.size(), scale.numberOf(urgency.of(kind.get(0)))))
                .toList();
        List<ReelKind> reelKinds = reels.entrySet().stream()
                .map(entry -> reelKind(entry.getKey(), entry.getValue().size()))
                .toList();
        return new PatternProblem(items, reelKinds);
    }

    /** What leaving a piece undone adds to the work left undone. */
    Undone undoneOf(Piece piece) {
        return urgency.of(piece);
    }

    /** How work left undone becomes the weights of the items. */
    ClassScale scale() {
        return scale;
    }

    /** What was fixed beforehand. */
    Packing fixed() {
        return fixed;
    }

    private static ReelKind reelKind(ReelKey key, int supply) {
        return new ReelKind(key.runs(), supply, key.opening(), key.loss(), key.lengths(), key.value());
    }

    private ReelKey key(Reel reel) {
        DrawPrice draw = prices.draw(reel.id());
        RunLoad[] load = fixedLoads.getOrDefault(reel.id(), UNTOUCHED);
        long opening = load.length == 0 ? DrawPrice.fixedCost(problem, reel).millis() : 0;
        List<Long> lengths =
                kinds.stream().map(kind -> lengthOn(kind.get(0), reel)).toList();
        LongUnaryOperator value = values.computeIfAbsent(problem.valueOn(reel), PatternBridge::inMillis);
        return new ReelKey(runs(draw, load), opening, draw.loss().mm(), lengths, value);
    }

    private List<Run> runs(DrawPrice draw, RunLoad[] load) {
        List<Run> runs = new ArrayList<>();
        long handling = problem.prices().handling().millis();
        int paid = deepest(load);
        for (int i = 0; i < draw.runs().size(); i++) {
            RunLoad there = load.length == 0 ? RunLoad.NONE : load[i];
            runs.add(new Run(
                    there.leftOf(draw.runs().get(i).length(), draw.loss()).mm(), i < paid ? 0 : handling));
        }
        return List.copyOf(runs);
    }

    private static int deepest(RunLoad[] load) {
        int deepest = 0;
        for (int i = 0; i < load.length; i++) {
            deepest = load[i].isEmpty() ? deepest : i + 1;
        }
        return deepest;
    }

    private long lengthOn(Piece piece, Reel reel) {
        return rules.allows(piece, reel)
                ? piece.lengthOn(reel.rope()).orElseThrow().mm()
                : ReelKind.NOT_ALLOWED;
    }

    private static LongUnaryOperator inMillis(StockValue value) {
        return length -> value.of(new bitterend.measure.Length(length)).millis();
    }
}
