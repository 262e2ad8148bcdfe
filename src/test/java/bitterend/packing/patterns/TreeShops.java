package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.LongUnaryOperator;

/**
 * Problems of eight to fourteen pieces on which a linear program leaves a gap: long pieces near a third and a half of the
 * reel, two and three reel sizes, reels in runs, fixed charges, prices of leaving out.
 */
final class TreeShops {
    private final Random random;
    private final int capacity;

    private TreeShops(Random random) {
        this.random = random;
        capacity = 40 + random.nextInt(80);
    }

    /** A problem of so many pieces; everything must be planned, or may be left out at a price. */
    static PatternProblem problem(Random random, int fewest, int most) {
        return new TreeShops(random).problem(fewest + random.nextInt(most - fewest + 1), random.nextInt(4) == 0);
    }

    /** The same where everything must be planned and there are reels enough. */
    static PatternProblem all(Random random, int fewest, int most) {
        return new TreeShops(random).problem(fewest + random.nextInt(most - fewest + 1), false);
    }

    private PatternProblem problem(int pieces, boolean rejecting) {
        List<Item> items = new ArrayList<>();
        List<Long> lengths = new ArrayList<>();
        for (int left = pieces; left > 0; ) {
            int count = Math.min(left, 1 + random.nextInt(3));
            left -= count;
            items.add(new Item(count, rejecting ? 1 + random.nextInt(9) : Item.MUST));
            lengths.add(length());
        }
        List<Long> shared = List.copyOf(lengths);
        LongUnaryOperator value = random.nextInt(3) > 0 ? ReelKind.WORTHLESS : curve();
        List<ReelKind> reels = new ArrayList<>();
        int types = 1 + random.nextInt(3);
        for (int k = 0; k < types; k++) {
            reels.add(reel(shared, value, rejecting));
        }
        return new PatternProblem(items, reels);
    }

    /** Near a half or a third of the reel, or anything. */
    private long length() {
        int shape = random.nextInt(5);
        long about = shape < 2 ? capacity / 2 : shape < 4 ? capacity / 3 : 3 + random.nextInt(capacity - 3);
        return Math.max(1, Math.min(capacity, about + random.nextInt(1 + capacity / 6) - capacity / 9));
    }

    private ReelKind reel(List<Long> lengths, LongUnaryOperator value, boolean scarce) {
        List<Run> runs = new ArrayList<>();
        long handling = random.nextInt(3) == 0 ? 1L + random.nextInt(6) : 0;
        long length = (long) capacity + random.nextInt(1 + capacity / 2);
        runs.add(new Run(length, handling));
        if (random.nextInt(4) == 0) {
            runs.add(new Run(capacity / 2 + random.nextInt(capacity), handling));
        }
        long opening = 1 + (random.nextBoolean() ? random.nextInt(10) : length / 3);
        int supply = scarce ? 1 + random.nextInt(3) : ReelKind.UNLIMITED;
        long loss = random.nextInt(3) == 0 ? random.nextInt(3) : 0;
        return new ReelKind(runs, supply, opening, loss, lengths, value);
    }

    private LongUnaryOperator curve() {
        long keep = 1L + random.nextInt(capacity / 2);
        long price = 1L + random.nextInt(3);
        return random.nextBoolean() ? left -> price * left : left -> left < keep ? 0 : price * left;
    }
}
