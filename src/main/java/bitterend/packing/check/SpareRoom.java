package bitterend.packing.check;

import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.packing.CutPlan;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** How long a piece each run would still take beside what a plan cuts from it. */
final class SpareRoom {
    private final Facts facts;
    private final Map<String, long[]> byReel = new HashMap<>();
    private final Map<String, long[]> byReelSorted = new HashMap<>();
    private final Set<String> ordersWithReels = new HashSet<>();
    private final Map<Kind, Map<String, long[]>> byKind = new HashMap<>();

    /** Pieces that the same reels are open to, lengths apart. */
    private record Kind(
            List<String> ropes,
            String certificate,
            boolean ownRope,
            String order,
            List<CutMate> begun,
            String pin,
            List<String> waitsFor) {}

    SpareRoom(Facts facts, CutPlan plan) {
        this.facts = facts;
        for (Reel reel : facts.problem().reels()) {
            ordersWithReels.add(reel.custody().order());
            byReel.put(
                    reel.id(),
                    facts.runs(reel).stream()
                            .mapToLong(run -> run.length().mm())
                            .toArray());
        }
        plan.draws().forEach(this::take);
    }

    /** Each piece takes its length and one cut loss: the loss between it and the piece that might follow. */
    private void take(ReelDraw draw) {
        Reel reel = facts.findReel(draw.reel()).orElseThrow();
        long loss = facts.problem().ropeOn(reel).cutting().loss().mm();
        long[] room = byReel.getOrDefault(reel.id(), new long[0]);
        for (RunDraw run : draw.runs()) {
            run.cuts().forEach(cut -> room[run.run() - 1] -= cut.length().mm() + loss);
        }
    }

    /** Runs of other reels that would take the piece, too. */
    int homes(Piece piece, String ownReel) {
        Map<String, long[]> open = byKind.computeIfAbsent(kind(piece), any -> open(piece));
        String ownRope = facts.findReel(ownReel).orElseThrow().rope();
        int homes = 0;
        for (Piece.RopeChoice choice : piece.choices()) {
            long cut = choice.cut().mm();
            homes += atLeast(cut, open.getOrDefault(choice.rope(), new long[0]));
            if (choice.rope().equals(ownRope)) {
                homes -= atLeast(cut, byReelSorted.computeIfAbsent(ownReel, this::sorted));
            }
        }
        return homes;
    }

    private long[] sorted(String reel) {
        long[] rooms = byReel.getOrDefault(reel, new long[0]).clone();
        Arrays.sort(rooms);
        return rooms;
    }

    private Kind kind(Piece piece) {
        List<String> ropes =
                piece.choices().stream().map(Piece.RopeChoice::rope).toList();
        return new Kind(
                ropes,
                piece.certificate(),
                piece.ownRope(),
                ordersWithReels.contains(piece.order()) ? piece.order() : "",
                piece.matching().begun(),
                facts.pin(piece),
                facts.waitsFor(piece));
    }

    /** The room of every run that is open to the piece, by rope, least first. */
    private Map<String, long[]> open(Piece piece) {
        Map<String, List<long[]>> rooms = new HashMap<>();
        for (Reel reel : facts.problem().reels()) {
            if (facts.broken(piece, reel).isEmpty()) {
                rooms.computeIfAbsent(reel.rope(), rope -> new ArrayList<>())
                        .add(byReel.getOrDefault(reel.id(), new long[0]));
            }
        }
        Map<String, long[]> sorted = new HashMap<>();
        rooms.forEach((rope, all) -> sorted.put(
                rope, all.stream().flatMapToLong(Arrays::stream).sorted().toArray()));
        return sorted;
    }

    private static int atLeast(long wanted, long[] sorted) {
        int from = 0;
        int to = sorted.length;
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (sorted[middle] < wanted) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return sorted.length - from;
    }
}
