package bitterend.packing.strategy;

import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.PackingProblem;
import bitterend.packing.Undone;
import bitterend.packing.Urgency;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongUnaryOperator;

/**
 * The bound that rope alone gives on plans that leave no more undone: a price for a millimetre of each rope, and one for a
 * unit of weight left undone in each class. Known at once however large the day; it may be far below the best plan.
 */
final class RopeAlone {
    private static final long FINE = DrawsOfRope.FINE;

    /** No millimetre is priced at more than so many times what it is worth at most. */
    private static final long DEAREST = 4;

    private static final long SHARES = 1_000;

    private static final int ROUNDS = 2;

    private final PackingProblem problem;
    private final Map<Kind, List<Piece>> kinds = new LinkedHashMap<>();
    private final Map<String, Long> loss = new HashMap<>();
    private final DrawsOfRope draws;

    private record Kind(List<Piece.RopeChoice> choices, int urgency, long weight) {}

    RopeAlone(PackingProblem problem) {
        this.problem = problem;
        Urgency urgency = new Urgency(problem);
        for (Piece piece : problem.pieces()) {
            Kind kind = new Kind(piece.choices(), urgency.classOf(piece), urgency.weightOf(piece));
            kinds.computeIfAbsent(kind, any -> new ArrayList<>()).add(piece);
        }
        problem.ropes().forEach((id, rope) -> loss.put(id, rope.cutting().loss().mm()));
        draws = new DrawsOfRope(problem, this::shortest);
    }

    /** The shortest load that any piece puts on a rope; one millimetre where none may. */
    private long shortest(String rope) {
        return kinds.keySet().stream()
                .flatMap(kind -> kind.choices().stream())
                .filter(choice -> choice.rope().equals(rope))
                .mapToLong(choice -> load(choice))
                .min()
                .orElse(1);
    }

    private long load(Piece.RopeChoice choice) {
        return choice.cut().mm() + loss.getOrDefault(choice.rope(), 0L);
    }

    /** The bound on plans that leave no more undone in any class; empty where its numbers are too large. */
    Optional<Bound> of(Undone undone) {
        try {
            Map<String, Long> dearest = dearest();
            Map<String, Long> prices = shares(dearest, top(SHARES, share -> proven(shares(dearest, share), undone)));
            for (int round = 0; round < ROUNDS; round++) {
                dearest.forEach((rope, most) -> prices.put(rope, best(rope, most, prices, undone)));
            }
            return Optional.of(bound(prices, undone));
        } catch (ArithmeticException tooLarge) {
            return Optional.empty();
        }
    }

    /** So many thousandths of the dearest price on every rope: pieces that may come off several pay the least of them. */
    private static Map<String, Long> shares(Map<String, Long> dearest, long share) {
        Map<String, Long> prices = new LinkedHashMap<>();
        dearest.forEach((rope, most) -> prices.put(rope, Math.multiplyExact(most, share) / SHARES));
        return prices;
    }

    private Map<String, Long> dearest() {
        Map<String, Long> dearest = new LinkedHashMap<>();
        for (Map.Entry<String, Rope> rope : problem.ropes().entrySet()) {
            dearest.put(
                    rope.getKey(),
                    Math.multiplyExact(DEAREST, rope.getValue().price().millisPerMetre() * FINE / 1_000 + 1));
        }
        return dearest;
    }

    /** The price of a millimetre of one rope that proves most beside those of the others: what is proven has one top. */
    private long best(String rope, long most, Map<String, Long> prices, Undone undone) {
        Map<String, Long> with = new HashMap<>(prices);
        return top(most, price -> {
            with.put(rope, price);
            return proven(with, undone);
        });
    }

    /** Where a function that first rises and then falls is highest, from zero to {@code most}. */
    private static long top(long most, LongUnaryOperator function) {
        long low = 0;
        long high = most;
        while (high - low > 2) {
            long left = low + (high - low) / 3;
            long right = high - (high - low) / 3;
            if (function.applyAsLong(left) < function.applyAsLong(right)) {
                low = left + 1;
            } else {
                high = right;
            }
        }
        long best = low;
        for (long at = low; at <= high; at++) {
            best = function.applyAsLong(at) > function.applyAsLong(best) ? at : best;
        }
        return best;
    }

    private long proven(Map<String, Long> prices, Undone undone) {
        long sum = -draws.earn(prices);
        for (int urgency = 1; urgency <= Undone.CLASSES; urgency++) {
            sum = Math.addExact(sum, proven(urgency, leaving(urgency, prices, undone), prices, undone));
        }
        return sum;
    }

    /** What the pieces of a class pay, each no more than leaving it out, less what is left out. */
    private long proven(int urgency, long leaving, Map<String, Long> prices, Undone undone) {
        long sum = -Math.multiplyExact(leaving, undone.in(urgency));
        for (Map.Entry<Kind, List<Piece>> kind : kinds.entrySet()) {
            if (kind.getKey().urgency() == urgency) {
                long pays = Math.min(
                        price(kind.getKey(), prices),
                        Math.multiplyExact(leaving, kind.getKey().weight()));
                sum = Math.addExact(
                        sum, Math.multiplyExact(pays, kind.getValue().size()));
            }
        }
        return sum;
    }

    /** The price of a unit of weight left undone that proves most. */
    private long leaving(int urgency, Map<String, Long> prices, Undone undone) {
        List<Long> candidates = kinds.keySet().stream()
                .filter(kind -> kind.urgency() == urgency)
                .map(kind -> -Math.floorDiv(-price(kind, prices), kind.weight()))
                .distinct()
                .sorted()
                .toList();
        if (candidates.isEmpty()) {
            return 0;
        }
        if (undone.in(urgency) == 0) {
            return candidates.get(candidates.size() - 1);
        }
        int best = (int) top(candidates.size() - 1L, at -> proven(urgency, candidates.get((int) at), prices, undone));
        return proven(urgency, candidates.get(best), prices, undone) > 0 ? candidates.get(best) : 0;
    }

    /** By the rope on which a piece is cheapest. */
    private long price(Kind kind, Map<String, Long> prices) {
        return kind.choices().stream()
                .mapToLong(choice -> Math.multiplyExact(prices.getOrDefault(choice.rope(), 0L), load(choice)) / FINE)
                .min()
                .orElse(0);
    }

    private Bound bound(Map<String, Long> prices, Undone undone) {
        Cost proven = new Cost(Math.max(0, proven(prices, undone)));
        List<Bound.Dual> duals = new ArrayList<>();
        kinds.forEach((kind, pieces) ->
                duals.add(new Bound.Dual(pieces.stream().map(Piece::id).toList(), price(kind, prices))));
        List<Long> leaving = new ArrayList<>(Collections.nCopies(Undone.CLASSES, 0L));
        for (int urgency = 1; urgency <= Undone.CLASSES; urgency++) {
            leaving.set(urgency - 1, leaving(urgency, prices, undone));
        }
        return new Bound(List.copyOf(problem.ropes().keySet()), proven, proven, 1, undone, leaving, duals);
    }
}
