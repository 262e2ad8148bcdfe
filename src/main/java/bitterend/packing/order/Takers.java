package bitterend.packing.order;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.packing.Undone;
import bitterend.packing.Urgency;
import bitterend.packing.Words;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Who took the rope that a piece left undone might have come off, and whose waiting would free it. */
final class Takers {
    private static final int NAMED = 3;

    private final Urgency urgency;
    private final Map<String, Reel> reels = new HashMap<>();
    private final Map<String, List<Run>> runs = new HashMap<>();
    private final Map<RunId, List<Piece>> onRun = new HashMap<>();
    private final Map<String, Length> loss = new HashMap<>();
    private final Map<List<RunId>, String> told = new HashMap<>();

    Takers(PackingProblem problem, Packing packing) {
        urgency = new Urgency(problem);
        problem.reels().forEach(reel -> {
            reels.put(reel.id(), reel);
            loss.put(reel.id(), problem.ropeOn(reel).cutting().loss());
        });
        for (Piece piece : problem.pieces()) {
            packing.placeOf(piece.id()).ifPresent(run -> onRun.computeIfAbsent(run, any -> new ArrayList<>())
                    .add(piece));
        }
        Comparator<Piece> urgentFirst = Comparator.comparingInt(urgency::classOf)
                .thenComparing(piece -> -Urgency.weight(piece))
                .thenComparing(Piece::id);
        onRun.values().forEach(pieces -> pieces.sort(urgentFirst));
    }

    /** {@code : 48.060 m of it went to FRI/1 (6 pieces)}, the most urgent named; empty where nothing was taken. */
    String whoTook(List<RunId> runs) {
        return told.computeIfAbsent(runs, this::tell);
    }

    private String tell(List<RunId> runs) {
        Map<String, List<Piece>> lines = new LinkedHashMap<>();
        Length taken = Length.ZERO;
        List<Piece> all = new ArrayList<>();
        for (RunId run : runs) {
            for (Piece piece : onRun.getOrDefault(run, List.of())) {
                all.add(piece);
                taken = taken.plus(cut(piece, run));
            }
        }
        all.sort(Comparator.comparingInt(urgency::classOf).thenComparing(piece -> -Urgency.weight(piece)));
        all.forEach(piece -> lines.computeIfAbsent(
                        piece.order() + "/" + piece.source().line(), line -> new ArrayList<>())
                .add(piece));
        if (lines.isEmpty()) {
            return "";
        }
        String named = lines.entrySet().stream()
                .limit(NAMED)
                .map(line -> line.getValue().size() == 1
                        ? line.getValue().get(0).id()
                        : line.getKey() + " (" + line.getValue().size() + " pieces)")
                .collect(Collectors.joining(", "));
        int more = lines.size() - NAMED;
        return "; " + Words.of(taken) + " of that rope went to " + named
                + (more > 0 ? " and " + more + " more order lines" : "");
    }

    /**
     * The pieces whose waiting would make room for one more on a run, those on which least is lost; none where no run
     * would do.
     */
    Optional<String> whoMightWait(Piece piece, List<RunId> runs) {
        Optional<List<Piece>> best = Optional.empty();
        Undone least = Undone.NONE;
        for (RunId run : runs) {
            List<Piece> waiting = waitingOn(piece, run);
            Undone lost = waiting.stream().map(urgency::of).reduce(Undone.NONE, Undone::plus);
            if (!waiting.isEmpty() && (best.isEmpty() || lost.isLessThan(least))) {
                best = Optional.of(waiting);
                least = lost;
            }
        }
        return best.map(waiting -> waiting.stream().limit(NAMED).map(Piece::id).collect(Collectors.joining(", "))
                + (waiting.size() > NAMED ? " and " + (waiting.size() - NAMED) + " more pieces" : ""));
    }

    /** The least urgent pieces of a run that make room together. */
    private List<Piece> waitingOn(Piece piece, RunId run) {
        Reel reel = reel(run.reel());
        List<Piece> there = onRun.getOrDefault(run, List.of());
        Length room = runs.computeIfAbsent(reel.id(), id -> reel.runs())
                .get(run.run() - 1)
                .length();
        for (Piece other : there) {
            room = room.minus(cut(other, run)).minus(lossOn(run));
        }
        List<Piece> waiting = new ArrayList<>();
        for (int i = there.size() - 1;
                i >= 0 && piece.lengthOn(reel.rope()).orElseThrow().isLongerThan(room);
                i--) {
            waiting.add(there.get(i));
            room = room.plus(cut(there.get(i), run)).plus(lossOn(run));
        }
        return waiting;
    }

    private Length cut(Piece piece, RunId run) {
        return piece.lengthOn(reel(run.reel()).rope()).orElseThrow();
    }

    private Length lossOn(RunId run) {
        return loss.getOrDefault(run.reel(), Length.ZERO);
    }

    private Reel reel(String id) {
        Reel reel = reels.get(id);
        if (reel == null) {
            throw new IllegalArgumentException("no reel " + id);
        }
        return reel;
    }
}
