package bitterend.packing.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;

/** Finds places for jobs: on the tightest run, or where it costs least. A set finds one holder for all its pieces or none. */
final class Insertion {
    /** One in so many places that would do is passed over, where chance is asked for. */
    private static final int BLINK = 50;

    private final Workbench bench;
    private final Placing placing;
    private final RandomGenerator random;
    private final int[] hopeless;
    private int round;

    Insertion(Placing placing, RandomGenerator random) {
        this.bench = placing.bench;
        this.placing = placing;
        this.random = random;
        hopeless = new int[bench.kinds()];
    }

    /** How a run is chosen. */
    enum Choice {
        TIGHTEST,
        TIGHTEST_BY_CHANCE,
        CHEAPEST
    }

    /** Finds places for jobs in this order as long as nothing is taken away; returns those that found none. */
    List<Integer> insertAll(List<Integer> jobs, Choice choice) {
        round++;
        List<Integer> left = new ArrayList<>();
        for (int job : jobs) {
            int kind = bench.kindOf[bench.jobs[job][0]];
            if (hopeless[kind] == round) {
                left.add(job);
            } else if (!insert(job, choice)) {
                left.add(job);
                hopeless[kind] = choice == Choice.TIGHTEST_BY_CHANCE ? 0 : round;
            }
        }
        return left;
    }

    /** Finds a place for one job. */
    boolean insert(int job, Choice choice) {
        return bench.isSet(job)
                ? insertSet(job, choice)
                : insertPiece(bench.jobs[job][0], bench.homesOf(bench.jobs[job][0]), choice);
    }

    private boolean insertPiece(int piece, int[] runs, Choice choice) {
        int run = choice == Choice.CHEAPEST ? cheapest(piece, runs) : tightest(piece, runs, choice);
        if (run == Workbench.NONE) {
            return false;
        }
        placing.place(piece, run);
        return true;
    }

    private int tightest(int piece, int[] runs, Choice choice) {
        int best = Workbench.NONE;
        long least = Long.MAX_VALUE;
        for (int run : runs) {
            long left = placing.free(run) - bench.sizeOn(piece, run);
            boolean seen = choice == Choice.TIGHTEST || random.nextInt(BLINK) > 0;
            if (left >= 0 && left < least && seen) {
                least = left;
                best = run;
            }
        }
        return best;
    }

    private int cheapest(int piece, int[] runs) {
        int best = Workbench.NONE;
        long least = Long.MAX_VALUE;
        long leastLeft = Long.MAX_VALUE;
        for (int run : runs) {
            long left = placing.free(run) - bench.sizeOn(piece, run);
            if (left >= 0) {
                long millis = placing.addedMillis(piece, run);
                if (millis < least || (millis == least && left < leastLeft)) {
                    least = millis;
                    leastLeft = left;
                    best = run;
                }
            }
        }
        return best;
    }

    private boolean insertSet(int job, Choice choice) {
        int[] set = bench.jobs[job];
        List<int[]> holders = holders(job);
        if (choice == Choice.TIGHTEST_BY_CHANCE) {
            shuffle(holders);
        }
        int[] best = new int[0];
        long least = Long.MAX_VALUE;
        for (int[] holder : holders) {
            if (insertOn(set, holder, choice)) {
                if (choice != Choice.CHEAPEST) {
                    return true;
                }
                long millis = placing.millis();
                if (millis < least) {
                    least = millis;
                    best = Arrays.stream(set).map(placing::runOf).toArray();
                }
                placing.removeJob(job);
            }
        }
        for (int i = 0; i < best.length; i++) {
            placing.place(set[i], best[i]);
        }
        return best.length > 0;
    }

    /** The longest piece first on the tightest of some runs; leaves all as it was unless every piece finds one. */
    private boolean insertOn(int[] set, int[] holder, Choice choice) {
        Choice within = choice == Choice.CHEAPEST ? Choice.TIGHTEST : choice;
        for (int i = 0; i < set.length; i++) {
            int piece = set[i];
            int[] homes = Arrays.stream(holder)
                    .filter(run -> bench.isHome(piece, run))
                    .toArray();
            if (!insertPiece(piece, homes, within)) {
                for (int done = 0; done < i; done++) {
                    placing.remove(set[done]);
                }
                return false;
            }
        }
        return true;
    }

    /** The runs of each lot (or reel) that might hold a set, as far as its longest piece goes. */
    List<int[]> holders(int job) {
        Map<Integer, List<Integer>> runs = new LinkedHashMap<>();
        for (int run = 0; run < bench.runs; run++) {
            boolean home = false;
            for (int piece : bench.jobs[job]) {
                home |= bench.isHome(piece, run);
            }
            if (home) {
                runs.computeIfAbsent(bench.holderOf(job, run), holder -> new ArrayList<>())
                        .add(run);
            }
        }
        List<int[]> holders = new ArrayList<>();
        runs.values()
                .forEach(list ->
                        holders.add(list.stream().mapToInt(Integer::intValue).toArray()));
        return holders;
    }

    private void shuffle(List<int[]> holders) {
        for (int i = holders.size() - 1; i > 0; i--) {
            java.util.Collections.swap(holders, i, random.nextInt(i + 1));
        }
    }
}
