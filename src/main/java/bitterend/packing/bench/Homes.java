package bitterend.packing.bench;

import bitterend.packing.PlanPrice;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The runs that would take a piece if nothing else were cut there, in the order in which they are asked. */
public final class Homes {
    private final Workbench bench;
    private final int[] runs;
    private final boolean byName;
    private final Map<Integer, int[]> ofKind = new HashMap<>();
    private final Map<Integer, List<int[]>> holders = new HashMap<>();

    private Homes(Workbench bench, int[] runs, boolean byName) {
        this.bench = bench;
        this.runs = runs;
        this.byName = byName;
    }

    /** Runs and the lots (or reels) of sets as the problem lists them. */
    static Homes asListed(Workbench bench) {
        return new Homes(bench, IntStream.range(0, bench.runs).toArray(), false);
    }

    /** Runs by the ids of their reels, the lots (or reels) of sets by name. */
    static Homes byId(Workbench bench) {
        int[] runs = IntStream.range(0, bench.runs)
                .boxed()
                .sorted(Comparator.comparing(run -> bench.runTable.runId[run]))
                .mapToInt(Integer::intValue)
                .toArray();
        return new Homes(bench, runs, true);
    }

    /** Every run. */
    public IntStream runs() {
        return Arrays.stream(runs);
    }

    /** The runs that would take a piece; not to be changed. */
    public int[] of(int piece) {
        return ofKind.computeIfAbsent(
                bench.pieceTable.kindOf[piece],
                kind -> runs().filter(run -> bench.isHome(piece, run)).toArray());
    }

    /** The runs of each lot (or reel) that might hold a set, as far as any of its pieces goes; those of a single piece. */
    List<int[]> holders(int job) {
        return holders.computeIfAbsent(job, any -> bench.isSet(job) ? ofSet(job) : List.of(of(bench.jobs[job][0])));
    }

    private List<int[]> ofSet(int job) {
        Map<Integer, List<Integer>> byHolder = new LinkedHashMap<>();
        for (int run : runs) {
            if (Arrays.stream(bench.jobs[job]).anyMatch(piece -> bench.isHome(piece, run))) {
                byHolder.computeIfAbsent(bench.holderOf(job, run), holder -> new ArrayList<>())
                        .add(run);
            }
        }
        Collection<List<Integer>> all = byHolder.values();
        return (byName ? all.stream().sorted(Comparator.comparing(holder -> nameOf(job, holder))) : all.stream())
                .map(holder -> holder.stream().mapToInt(Integer::intValue).toArray())
                .toList();
    }

    private String nameOf(int job, List<Integer> holder) {
        return PlanPrice.holderOf(bench.bondOf[job], bench.problem.reels().get(bench.runTable.reelOf[holder.get(0)]));
    }
}
