package bitterend.packing.bench;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Undone;
import bitterend.packing.Urgency;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Who took the rope that a piece left undone might have come off, and whose waiting would free it. */
public final class Takers {
    private static final int NAMED = 3;

    private final Workbench bench;
    private final RackState rack;
    private final Urgency urgency;
    private final Map<Integer, List<Piece>> onRun = new HashMap<>();
    private final Map<List<Integer>, Sentence> told = new HashMap<>();

    public Takers(Workbench bench, RackState rack) {
        this.bench = bench;
        this.rack = rack;
        urgency = new Urgency(bench.problem());
    }

    /** The pieces on a run, the most urgent first. */
    private List<Piece> on(int run) {
        return onRun.computeIfAbsent(run, any -> rack.onRun(run).stream()
                .map(bench::piece)
                .sorted(urgentFirst().thenComparing(Piece::id))
                .toList());
    }

    private Comparator<Piece> urgentFirst() {
        return Comparator.comparingInt(urgency::classOf).thenComparing(piece -> -urgency.weightOf(piece));
    }

    /** {@code : 48.060 m of it went to FRI/1 (6 pieces)}, the most urgent named; empty where nothing was taken. */
    public Sentence whoTook(int[] runs) {
        return told.computeIfAbsent(Arrays.stream(runs).boxed().toList(), this::tell);
    }

    private Sentence tell(List<Integer> runs) {
        Map<String, List<Piece>> lines = new LinkedHashMap<>();
        Length taken = Length.ZERO;
        List<Piece> all = new ArrayList<>();
        for (int run : runs) {
            for (Piece piece : on(run)) {
                all.add(piece);
                taken = taken.plus(cut(piece, run));
            }
        }
        all.sort(urgentFirst());
        all.forEach(piece -> lines.computeIfAbsent(
                        piece.order() + "/" + piece.source().line(), line -> new ArrayList<>())
                .add(piece));
        if (lines.isEmpty()) {
            return Sentence.NONE;
        }
        String named = lines.entrySet().stream()
                .limit(NAMED)
                .map(line -> line.getValue().size() == 1
                        ? line.getValue().get(0).id()
                        : line.getKey() + " (" + line.getValue().size() + " pieces)")
                .collect(Collectors.joining(", "));
        int more = lines.size() - NAMED;
        String others = more == 1 ? " and 1 more order line" : " and " + more + " more order lines";
        return Sentence.of("; ").and(taken).and(" of that rope went to " + named + (more > 0 ? others : ""));
    }

    /**
     * The pieces whose waiting would make room for one more on a run, those on which least is lost; a set waits whole, and
     * pieces of the same order line do not count: with them only the names would change. Where one of them is of a more urgent
     * class that is said. None where no run would do.
     */
    public Optional<String> whoMightWait(Piece piece, int[] runs) {
        Optional<List<Piece>> best = Optional.empty();
        Undone least = Undone.NONE;
        for (int run : runs) {
            List<Piece> waiting = waitingOn(piece, run);
            Undone lost = waiting.stream().map(urgency::of).reduce(Undone.NONE, Undone::plus);
            if (!waiting.isEmpty() && (best.isEmpty() || lost.isLessThan(least))) {
                best = Optional.of(waiting);
                least = lost;
            }
        }
        return best.map(waiting -> waiting.stream()
                        .sorted(urgentFirst())
                        .limit(NAMED)
                        .map(other -> other.id() + (isMoreUrgent(other, piece) ? " (more urgent)" : ""))
                        .collect(Collectors.joining(", "))
                + (waiting.size() > NAMED ? " and " + (waiting.size() - NAMED) + " more pieces" : ""));
    }

    private boolean isMoreUrgent(Piece other, Piece piece) {
        return urgency.classOf(other) < urgency.classOf(piece);
    }

    /** The least urgent pieces of a run that make room together, and the rest of their sets. */
    private List<Piece> waitingOn(Piece piece, int run) {
        List<Piece> there = on(run);
        long missing = bench.sizeOn(bench.numberOf(piece.id()), run) - rack.free(run);
        Set<Piece> waiting = new LinkedHashSet<>();
        for (int i = there.size() - 1; i >= 0 && missing > 0; i--) {
            Piece other = there.get(i);
            if (!isOfOneLine(piece, other) && !waiting.contains(other)) {
                for (int mate : bench.piecesOf(bench.jobOf(bench.numberOf(other.id())))) {
                    waiting.add(bench.piece(mate));
                    missing -= rack.runOf(mate) == run
                            ? cut(bench.piece(mate), run).mm() + bench.loss(run)
                            : 0;
                }
            }
        }
        return missing > 0 ? List.of() : List.copyOf(waiting);
    }

    private static boolean isOfOneLine(Piece one, Piece other) {
        return one.order().equals(other.order())
                && one.source().line().equals(other.source().line());
    }

    private Length cut(Piece piece, int run) {
        return new Length(bench.sizeOn(bench.numberOf(piece.id()), run));
    }
}
