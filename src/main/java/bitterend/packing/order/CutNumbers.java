package bitterend.packing.order;

import bitterend.demand.Piece;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunId;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Numbers equal pieces, and equal sets, in the order in which they are cut: whoever works from the top of the sheet meets
 * them counted. A piece that an earlier plan had on a reel stays there as long as any piece like it does, and a pinned one
 * keeps its place. What is cut and where does not change; where moving pieces of an earlier plan made it dearer, {@link
 * CuttingOrder} leaves the numbers as they were.
 */
final class CutNumbers {
    private final PackingProblem problem;
    private final EqualPieces equals;
    private final OrderOfWork order;

    CutNumbers(PackingProblem problem) {
        this.problem = problem;
        equals = new EqualPieces(problem);
        order = new OrderOfWork(problem);
    }

    /**
     * A place on the rack.
     *
     * @param turn which cut of the day it is
     */
    private record Slot(RunId run, int turn) {}

    /** The packing with its places handed out anew among equals, after the cutting order of its plan. */
    Packing inOrder(Packing packing, CutPlan plan) {
        Map<String, Slot> slots = slots(packing, plan);
        equals.sets().forEach(sets -> handOutSets(sets, slots));
        equals.groups().forEach(group -> handOut(group, slots));
        return new Packing(slots.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey, slot -> slot.getValue()
                .run())));
    }

    private Map<String, Slot> slots(Packing packing, CutPlan plan) {
        Map<String, Slot> slots = new HashMap<>();
        for (ReelDraw draw : order.of(plan.draws())) {
            for (Cut cut : draw.cuts()) {
                slots.put(cut.piece(), new Slot(packing.placeOf(cut.piece()).orElseThrow(), slots.size()));
            }
        }
        return slots;
    }

    private static void handOutSets(List<List<Piece>> sets, Map<String, Slot> slots) {
        List<List<Optional<Slot>>> inTurn = sets.stream()
                .map(set -> set.stream()
                        .map(piece -> Optional.ofNullable(slots.get(piece.id())))
                        .toList())
                .sorted(Comparator.comparingInt(CutNumbers::firstTurn))
                .toList();
        for (int i = 0; i < sets.size(); i++) {
            for (int leg = 0; leg < sets.get(i).size(); leg++) {
                put(slots, sets.get(i).get(leg), inTurn.get(i).get(leg).orElse(null));
            }
        }
    }

    private static int firstTurn(List<Optional<Slot>> set) {
        return set.stream().flatMap(Optional::stream).mapToInt(Slot::turn).min().orElse(Integer.MAX_VALUE);
    }

    /** First every place to one who was on its reel before, as long as there is one; the rest by number. */
    private void handOut(List<Piece> group, Map<String, Slot> slots) {
        List<Slot> places = group.stream()
                .flatMap(piece -> Optional.ofNullable(slots.remove(piece.id())).stream())
                .sorted(Comparator.comparingInt(Slot::turn))
                .toList();
        Map<String, Queue<Piece>> wereOn = new HashMap<>();
        for (Piece piece : group) {
            Optional.ofNullable(problem.earlier().get(piece.id()))
                    .ifPresent(reel -> wereOn.computeIfAbsent(reel, key -> new ArrayDeque<>())
                            .add(piece));
        }
        List<Slot> left = new ArrayList<>();
        for (Slot slot : places) {
            Queue<Piece> waiting = wereOn.get(slot.run().reel());
            Piece stays = waiting == null ? null : waiting.poll();
            if (stays == null) {
                left.add(slot);
            } else {
                slots.put(stays.id(), slot);
            }
        }
        Iterator<Slot> next = left.iterator();
        for (Piece piece : group) {
            if (next.hasNext() && !slots.containsKey(piece.id())) {
                slots.put(piece.id(), next.next());
            }
        }
    }

    private static void put(Map<String, Slot> slots, Piece piece, @Nullable Slot slot) {
        if (slot == null) {
            slots.remove(piece.id());
        } else {
            slots.put(piece.id(), slot);
        }
    }
}
