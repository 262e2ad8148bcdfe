package bitterend.packing.bench;

import bitterend.packing.Packing;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The packing of an earlier plan as far as it still holds: every piece that may come off its reel of then does, the most
 * urgent and longest first; newcomers and what found no room there go where they cost least.
 */
public final class Promised {
    private final Workbench bench;
    private final RackState rack;
    private final Insertion insertion;

    private Promised(Workbench bench) {
        this.bench = bench;
        rack = new RackState(bench);
        insertion = new Insertion(rack, bench.asListed());
    }

    /** The packing of a question that has earlier places. */
    public static Packing packing(Workbench bench) {
        Promised promised = new Promised(bench);
        promised.place();
        return LeastUndone.filled(bench, promised.rack.packing());
    }

    private void place() {
        List<Integer> jobs = IntStream.range(0, bench.jobs())
                .boxed()
                .sorted(Comparator.comparing((Integer job) -> !bench.isPinned(job))
                        .thenComparing(bench::urgencyOf)
                        .thenComparing(job -> -bench.sizeOfJob(job)))
                .toList();
        for (int job : jobs) {
            int[] runs = runs(job);
            if (runs.length > 0 && isOneHolder(job, runs)) {
                insertion.insertOn(job, runs, Insertion.Choice.TIGHTEST);
            }
        }
    }

    /** The runs of the reels on which the pieces of a job were; none where one of them had no place. */
    private int[] runs(int job) {
        int[] reels = Arrays.stream(bench.jobs[job])
                .map(piece -> bench.pieceTable.earlier[piece])
                .distinct()
                .toArray();
        return Arrays.stream(reels).anyMatch(reel -> reel < 0)
                ? new int[0]
                : Arrays.stream(reels)
                        .flatMap(reel ->
                                IntStream.range(bench.runTable.firstRun[reel], bench.runTable.firstRun[reel + 1]))
                        .toArray();
    }

    private boolean isOneHolder(int job, int[] runs) {
        return !bench.isSet(job)
                || Arrays.stream(runs)
                                .map(run -> bench.holderOf(job, run))
                                .distinct()
                                .count()
                        == 1;
    }
}
