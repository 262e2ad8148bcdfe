package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.LongUnaryOperator;

/** Very small problems of every sort. */
final class RandomShops {
    private RandomShops() {}

    /** A problem of at most seven pieces; lengths and prices times {@code factor}. */
    static PatternProblem problem(Random random, long factor) {
        int types = 1 + random.nextInt(3);
        int size = 1 + random.nextInt(4);
        List<Item> items = new ArrayList<>();
        int pieces = 0;
        boolean rejection = random.nextInt(3) == 0;
        for (int i = 0; i < size && pieces < 7; i++) {
            int demand = Math.min(7 - pieces, 1 + random.nextInt(3));
            pieces += demand;
            items.add(new Item(demand, rejection && random.nextInt(5) > 0 ? 1 + random.nextInt(9) : 0));
        }
        int capacity = 5 + random.nextInt(35);
        List<List<Long>> ropes = new ArrayList<>();
        for (int rope = 0; rope < 2; rope++) {
            ropes.add(lengths(random, items.size(), capacity, factor));
        }
        boolean scarce = random.nextInt(3) == 0;
        boolean worthless = random.nextInt(3) == 0;
        boolean oneRope = random.nextInt(3) > 0;
        List<ReelKind> reels = new ArrayList<>();
        for (int k = 0; k < types; k++) {
            List<Run> runs = new ArrayList<>();
            int flaws = random.nextInt(3) == 0 ? 1 + random.nextInt(2) : 0;
            for (int r = 0; r <= flaws; r++) {
                long length = (long) (capacity / 2) + random.nextInt(capacity);
                runs.add(new Run(length * factor, (long) random.nextInt(2) * random.nextInt(6) * factor));
            }
            int supply = scarce ? random.nextInt(3) : random.nextBoolean() ? ReelKind.UNLIMITED : 4 + random.nextInt(4);
            long opening = random.nextInt(4) == 0 ? 0 : random.nextInt(20) * factor;
            long loss = random.nextInt(3) == 0 ? random.nextInt(3) * factor : 0;
            LongUnaryOperator value = worthless ? ReelKind.WORTHLESS : curve(random, capacity, factor);
            reels.add(new ReelKind(runs, supply, opening, loss, ropes.get(oneRope ? 0 : random.nextInt(2)), value));
        }
        return new PatternProblem(items, reels);
    }

    private static List<Long> lengths(Random random, int size, int capacity, long factor) {
        List<Long> lengths = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            long length = (1L + random.nextInt(capacity)) * factor;
            lengths.add(random.nextInt(8) == 0 ? ReelKind.NOT_ALLOWED : length);
        }
        return List.copyOf(lengths);
    }

    private static LongUnaryOperator curve(Random random, int capacity, long factor) {
        long keep = (1L + random.nextInt(capacity)) * factor;
        long price = 1L + random.nextInt(5);
        long whole = keep + (1L + random.nextInt(capacity)) * factor;
        return switch (random.nextInt(4)) {
            case 0 -> ReelKind.WORTHLESS;
            case 1 -> left -> price * left;
            case 2 -> left -> left < keep ? 0 : price * left;
            default -> left -> left < keep ? 0 : left >= whole ? price * left : price * left * left / whole;
        };
    }
}
