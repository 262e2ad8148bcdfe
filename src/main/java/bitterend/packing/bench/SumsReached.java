package bitterend.packing.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Which sums some of the portions can come to, portion after portion, and with how many lots to pay for: a set of bits for
 * each number of lots. Any way to a sum is found again by going back.
 */
final class SumsReached {
    private final List<long[]> stages = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    /** After all steps: the sums of each level that no lower level comes to. */
    private long[] fresh = new long[0];

    private int words;
    private int levels;
    private long spent;

    /**
     * What made a stage of earlier ones.
     *
     * @param first number of a portion, that of the first of an order
     * @param end number of the portion after the last
     * @param cells of all of them
     * @param from the stage before all of them
     * @param charge of an order, {@link LotCharge#NOTHING} for a portion by itself
     */
    private record Step(int first, int end, int cells, int from, LotCharge charge) {}

    /**
     * Begins with a sum of nothing.
     *
     * @param most larger sums are of no use
     * @param levels lots to pay for are from none to one less than that
     */
    void begin(int most, int levels) {
        words = (most >> 6) + 1;
        this.levels = levels;
        steps.clear();
        stage(0)[0] = 1;
    }

    private long[] stage(int index) {
        int size = words * levels;
        spent += size;
        if (index == stages.size()) {
            stages.add(new long[size]);
        } else if (stages.get(index).length < size) {
            stages.set(index, new long[size]);
        } else {
            Arrays.fill(stages.get(index), 0, size, 0);
        }
        return stages.get(index);
    }

    /** Words of 64 sums that were worked out since this was made. */
    long spent() {
        return spent;
    }

    /** The stage after all steps so far. */
    int last() {
        return steps.size();
    }

    int levels() {
        return levels;
    }

    /** One more portion may be added. */
    void add(int portion, int cells) {
        long[] before = stages.get(last());
        steps.add(new Step(portion, portion + 1, cells, last(), LotCharge.NOTHING));
        long[] after = stage(last());
        for (int level = 0; level < levels; level++) {
            or(before, level, after, level, 0);
            or(before, level, after, level, cells);
        }
    }

    /** An order pays for its lots, when all of its portions have been added. */
    void charge(int first, int end, int cells, int from, LotCharge charge) {
        long[] before = stages.get(from);
        long[] some = stages.get(last());
        steps.add(new Step(first, end, cells, from, charge));
        long[] after = stage(last());
        for (int level = 0; level < levels; level++) {
            or(before, level - charge.none(), after, level, 0);
            or(before, level - charge.all(), after, level, cells);
            or(some, level - charge.some(), after, level, 0);
        }
    }

    private void or(long[] from, int fromLevel, long[] to, int toLevel, int shift) {
        int whole = shift >> 6;
        int bits = shift & 63;
        if (fromLevel < 0 || whole >= words) {
            return;
        }
        int source = fromLevel * words - whole;
        int target = toLevel * words;
        if (bits == 0) {
            for (int w = whole; w < words; w++) {
                to[target + w] |= from[source + w];
            }
            return;
        }
        to[target + whole] |= from[source + whole] << bits;
        for (int w = whole + 1; w < words; w++) {
            to[target + w] |= from[source + w] << bits | from[source + w - 1] >>> (Long.SIZE - bits);
        }
    }

    /** Nothing more is added. */
    void end() {
        long[] all = stages.get(last());
        fresh = fresh.length < words * levels ? new long[words * levels] : fresh;
        for (int word = 0; word < words; word++) {
            long lower = 0;
            for (int at = word; at < words * levels; at += words) {
                fresh[at] = all[at] & ~lower;
                lower |= all[at];
            }
        }
    }

    /** The next sum that can be come to, with so many lots but not with fewer, from one on; -1 for none. */
    int next(int level, int from) {
        long[] all = fresh;
        int word = from >> 6;
        if (word >= words) {
            return -1;
        }
        long bits = all[level * words + word] & (-1L << from);
        while (bits == 0) {
            word++;
            if (word == words) {
                return -1;
            }
            bits = all[level * words + word];
        }
        return (word << 6) + Long.numberOfTrailingZeros(bits);
    }

    /** Which portions come to a sum; of several ways one by chance. */
    boolean[] back(int sum, int level, int portions, SplittableRandom random) {
        boolean[] in = new boolean[portions];
        int restSum = sum;
        int restLevel = level;
        int at = last();
        while (at > 0) {
            Step step = steps.get(at - 1);
            boolean some = step.charge().differs()
                    && has(at - 1, restLevel - step.charge().some(), restSum);
            boolean all = has(step.from(), restLevel - step.charge().all(), restSum - step.cells());
            boolean none = has(step.from(), restLevel - step.charge().none(), restSum);
            int way = choose(some, all, none, random);
            if (way == 0) {
                restLevel -= step.charge().some();
                at--;
                continue;
            }
            if (way == 1) {
                Arrays.fill(in, step.first(), step.end(), true);
                restSum -= step.cells();
            }
            restLevel -= way == 1 ? step.charge().all() : step.charge().none();
            at = step.from();
        }
        return in;
    }

    private static int choose(boolean some, boolean all, boolean none, SplittableRandom random) {
        int ways = (some ? 1 : 0) + (all ? 1 : 0) + (none ? 1 : 0);
        int way = ways > 1 ? random.nextInt(ways) : 0;
        if (some && way-- == 0) {
            return 0;
        }
        return all && way == 0 ? 1 : 2;
    }

    private boolean has(int stage, int level, int sum) {
        return level >= 0 && sum >= 0 && (stages.get(stage)[level * words + (sum >> 6)] >>> sum & 1) != 0;
    }
}
