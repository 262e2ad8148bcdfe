package bitterend.packing.bench;

import bitterend.packing.Effort;
import bitterend.packing.Packing;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Makes a plan cheaper by one move: the pieces of two runs are divided between them anew, exactly, in one of the cheapest
 * ways, or now and then in one that costs a little more; how little falls with the time that is over (threshold accepting:
 * Dueck and Scheuer, Journal of Computational Physics 90, 1990).
 */
public final class Dividing {
    private static final int LENIENT_EVERY = 4;
    private static final int ANYWHERE_EVERY = 4;
    private static final int CLOCK_EVERY = 64;
    private static final int WORDS_PER_STEP = 4_096;
    private static final int THOUSAND = 1_000;
    /** Lenience at first, as a part of what a run that is cut costs, and how often it is halved. */
    private static final long FIRST_PART = 250;

    private static final int HALVINGS = 6;

    private final Workbench bench;
    private final Effort effort;
    private final long from = System.nanoTime();
    private final SplittableRandom random;
    private final CellRack rack;
    private final TwoRuns two;
    private final int[] planned;
    private long moves;

    private Dividing(Workbench bench, RunDrops prices, Packing start, Effort effort) {
        this.bench = bench;
        this.effort = effort;
        random = new SplittableRandom(effort.seed());
        rack = new CellRack(bench, prices, start);
        two = new TwoRuns(rack, random);
        planned = IntStream.range(0, bench.pieces)
                .filter(piece -> rack.runOf[piece] != Workbench.NONE)
                .toArray();
    }

    /**
     * A packing that costs no more than the start, with the same pieces planned; the start where loads are too many to be
     * priced.
     *
     * @param effort its work is counted in divisions and in what they take: 4,096 words of sums are as much as another one
     */
    public static Packing improve(Workbench bench, Packing start, Effort effort) {
        return start.places().isEmpty()
                ? start
                : RunDrops.of(bench)
                        .map(prices -> new Dividing(bench, prices, start, effort).run())
                        .orElse(start);
    }

    private Packing run() {
        long first = costPerRun() / FIRST_PART;
        long now = 0;
        long least = 0;
        int[] best = rack.runOf.clone();
        for (int over = over(); over < THOUSAND; over = moves % CLOCK_EVERY == 0 ? over() : over) {
            long lenience = first >> (over * HALVINGS / THOUSAND);
            now += move(random.nextInt(LENIENT_EVERY) == 0 ? lenience : 0);
            moves++;
            if (now < least) {
                least = now;
                best = rack.runOf.clone();
            }
        }
        return RackState.packing(bench, best);
    }

    private long move(long lenience) {
        int one = rack.runOf[any(planned)];
        int piece = any(planned);
        int other = random.nextInt(ANYWHERE_EVERY) == 0 ? any(bench.asListed().of(piece)) : rack.runOf[piece];
        return one == other ? 0 : two.divide(one, other, lenience);
    }

    private int any(int[] numbers) {
        return numbers[random.nextInt(numbers.length)];
    }

    /** The value that leaves a run that is cut, on an average. */
    private long costPerRun() {
        long sum = 0;
        long cut = 0;
        for (int run = 0; run < bench.runs; run++) {
            sum += rack.prices.drop(run, rack.load[run]);
            cut += rack.load[run] > 0 ? 1 : 0;
        }
        return sum / Math.max(1, cut);
    }

    /** Of time or of work, whichever is more, so many thousandths are over. */
    private int over() {
        long time = THOUSAND
                * (System.nanoTime() - from)
                / Math.max(1, effort.time().toNanos());
        long work = THOUSAND * (moves + two.spent() / WORDS_PER_STEP) / Math.max(1, effort.work());
        return effort.cancelled().getAsBoolean() ? THOUSAND : (int) Math.min(THOUSAND, Math.max(time, work));
    }
}
