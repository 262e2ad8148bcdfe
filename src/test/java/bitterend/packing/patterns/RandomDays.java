package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.LongUnaryOperator;

/** Days of an invented loft: part reels, full reels, flaws, and a value curve with a keep limit. Lengths in mm. */
public final class RandomDays {
    private static final long PRICE = 4;

    private RandomDays() {}

    /** Pieces of up to a quarter of so many lengths, from some part reels and any number of full ones. */
    public static PatternProblem day(long seed, int pieces, int partReels, long shortest, long longest, long keepFrom) {
        Random random = new Random(seed);
        List<Long> lengths = new ArrayList<>();
        List<Item> items = new ArrayList<>();
        for (int left = pieces; left > 0; ) {
            int count = Math.min(left, 1 + random.nextInt(random.nextInt(4) == 0 ? 12 : 3));
            left -= count;
            lengths.add((shortest + (long) (random.nextDouble() * (longest - shortest))) / 10 * 10);
            items.add(Item.must(count));
        }
        List<Long> shared = List.copyOf(lengths);
        LongUnaryOperator value = curve(keepFrom, 100_000);
        List<ReelKind> reels = new ArrayList<>();
        for (int r = 0; r < partReels; r++) {
            reels.add(new ReelKind(runs(random), 1, 1_000, 12, shared, value));
        }
        reels.add(new ReelKind(List.of(Run.of(220_000)), ReelKind.UNLIMITED, 8_000, 12, shared, value));
        return new PatternProblem(items, reels);
    }

    private static List<Run> runs(Random random) {
        long length = 3_000L + random.nextInt(180_000);
        if (random.nextInt(5) > 0) {
            return List.of(Run.of(length));
        }
        long flaw = length / 4 + random.nextInt((int) (length / 2));
        return List.of(new Run(flaw, 500), new Run(length - flaw - 200, 500));
    }

    /** Nothing below the keep limit, then rising to the full price. */
    static LongUnaryOperator curve(long keepFrom, long asGoodAsNew) {
        return left -> {
            if (left < keepFrom) {
                return 0;
            }
            if (left >= asGoodAsNew) {
                return PRICE * left;
            }
            return PRICE * left * (150 + 850 * (left - keepFrom) / (asGoodAsNew - keepFrom)) / 1000;
        };
    }
}
