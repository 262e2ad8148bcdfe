package bitterend.packing.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/** Finds places for jobs: on the tightest run, or where it costs least. A set finds one holder for all its pieces or none. */
public final class Insertion {
    /** One in so many places that would do is passed over, where chance is asked for. */
    private static final int BLINK = 50;

    private final Workbench bench;
    private final RackState rack;
    private final Homes homes;
    private final RandomGenerator random;
    private final int[] hopeless;
    private int round;
    /** The question in which runs that are alike were last asked. */
    private final int[] seen;

    private int asked;

    /** Nothing is left to chance; of runs that are equally good the first is taken. */
    public Insertion(RackState rack, Homes homes) {
        this(rack, homes, new SplittableRandom(0));
    }

    Insertion(RackState rack, Homes homes, RandomGenerator random) {
        this.bench = rack.bench;
        this.rack = rack;
        this.homes = homes;
        this.random = random;
        hopeless = new int[bench.kinds()];
        seen = new int[bench.runs];
    }

    /** How a run is chosen among those with room. */
    public enum Choice {
        FIRST,
        TIGHTEST,
        TIGHTEST_BY_CHANCE,
        /** Where it costs least; the pieces of a set on the tightest runs of the lot or reel that is cheapest so. */
        CHEAPEST,
        /** Where it costs least, every piece of a set by itself. */
        CHEAPEST_EACH;

        private boolean isByPrice() {
            return this == CHEAPEST || this == CHEAPEST_EACH;
        }
    }

    /** Finds places for jobs in this order as long as nothing is taken away; returns those that found none. */
    List<Integer> insertAll(List<Integer> jobs, Choice choice) {
        round++;
        List<Integer> left = new ArrayList<>();
        for (int job : jobs) {
            int kind = bench.pieceTable.kindOf[bench.jobs[job][0]];
            if (hopeless[kind] == round) {
                left.add(job);
            } else if (!insert(job, choice)) {
                left.add(job);
                hopeless[kind] = bench.isSet(job) || choice == Choice.TIGHTEST_BY_CHANCE ? 0 : round;
            }
        }
        return left;
    }

    /** Finds a place for one job; says whether there was one. */
    public boolean insert(int job, Choice choice) {
        return bench.isSet(job) ? insertSet(job, choice) : insertOn(job, homes.of(bench.jobs[job][0]), choice);
    }

    private boolean insertSet(int job, Choice choice) {
        List<int[]> holders = homes.holders(job);
        if (choice == Choice.TIGHTEST_BY_CHANCE) {
            holders = new ArrayList<>(holders);
            shuffle(holders, random);
        }
        Choice within = choice == Choice.CHEAPEST ? Choice.TIGHTEST : choice;
        int[] best = new int[0];
        long least = Long.MAX_VALUE;
        for (int[] holder : holders) {
            if (insertOn(job, holder, within)) {
                if (!choice.isByPrice()) {
                    return true;
                }
                long millis = rack.millis();
                if (millis < least) {
                    least = millis;
                    best = Arrays.stream(bench.jobs[job]).map(rack::runOf).toArray();
                }
                rack.removeJob(job);
            }
        }
        for (int i = 0; i < best.length; i++) {
            rack.place(bench.jobs[job][i], best[i]);
        }
        return best.length > 0;
    }

    /** The longest piece first on the best of some runs; leaves all as it was unless every piece finds one. */
    boolean insertOn(int job, int[] runs, Choice choice) {
        int[] set = bench.jobs[job];
        for (int i = 0; i < set.length; i++) {
            int run = choose(set[i], runs, choice);
            if (run == Workbench.NONE) {
                for (int done = 0; done < i; done++) {
                    rack.remove(set[done]);
                }
                return false;
            }
            rack.place(set[i], run);
        }
        return true;
    }

    private int choose(int piece, int[] runs, Choice choice) {
        return switch (choice) {
            case FIRST -> first(piece, runs);
            case TIGHTEST, TIGHTEST_BY_CHANCE -> tightest(piece, runs, choice);
            case CHEAPEST, CHEAPEST_EACH -> cheapest(piece, runs);
        };
    }

    private int first(int piece, int[] runs) {
        return Arrays.stream(runs)
                .filter(run -> rack.fits(piece, run))
                .findFirst()
                .orElse(Workbench.NONE);
    }

    private int tightest(int piece, int[] runs, Choice choice) {
        int best = Workbench.NONE;
        long least = Long.MAX_VALUE;
        for (int run : runs) {
            if (bench.isHome(piece, run)) {
                long left = rack.free(run) - bench.sizeOn(piece, run);
                boolean looked = choice == Choice.TIGHTEST || random.nextInt(BLINK) > 0;
                if (left >= 0 && left < least && looked) {
                    least = left;
                    best = run;
                }
            }
        }
        return best;
    }

    /** Of runs that cost the same the one that is filled best. */
    private int cheapest(int piece, int[] runs) {
        int best = Workbench.NONE;
        long least = Long.MAX_VALUE;
        long leastLeft = Long.MAX_VALUE;
        asked++;
        for (int run : runs) {
            if (rack.fits(piece, run) && !isKnown(piece, run)) {
                long left = rack.free(run) - bench.sizeOn(piece, run);
                long millis = rack.addedMillis(piece, run);
                if (millis < least || (millis == least && left < leastLeft)) {
                    least = millis;
                    leastLeft = left;
                    best = run;
                }
            }
        }
        return best;
    }

    /** Whether nothing is cut from the reel and this question has come by another that is alike. */
    private boolean isKnown(int piece, int run) {
        if (bench.pieceTable.earlier[piece] != Workbench.NONE || !rack.draws.isUntouched(bench.runTable.reelOf[run])) {
            return false;
        }
        boolean known = seen[bench.runTable.alike[run]] == asked;
        seen[bench.runTable.alike[run]] = asked;
        return known;
    }

    static void shuffle(List<?> list, RandomGenerator random) {
        for (int i = list.size() - 1; i > 0; i--) {
            Collections.swap(list, i, random.nextInt(i + 1));
        }
    }
}
