package bitterend.packing.loads;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/** Whole prices that prove a bound, whatever they are; none is negative. */
final class Duals {
    /** Of a piece, by item and slot. */
    final int[][] piece;
    /** Of a unit of weight left undone, by class. */
    final long[] undone;
    /** Charges; those of zero are left out. */
    final Map<Touch, Integer> touch;

    Duals(int[][] piece, long[] undone, Map<Touch, Integer> touch) {
        this.piece = piece;
        this.undone = undone;
        this.touch = touch;
    }

    /** Nothing is worth anything. */
    static Duals none(LoadModel model) {
        int[][] piece = new int[model.items.length][];
        for (Item item : model.items) {
            piece[item.index] = new int[item.slots];
        }
        return new Duals(piece, new long[LoadModel.CLASSES], Map.of());
    }

    /** Whether nothing is worth anything. */
    boolean isNone() {
        return touch.isEmpty()
                && Arrays.stream(undone).allMatch(price -> price == 0)
                && Arrays.stream(piece).flatMapToInt(Arrays::stream).allMatch(price -> price == 0);
    }

    int charge(boolean ofSet, int index, int run) {
        return touch.isEmpty() ? 0 : touch.getOrDefault(new Touch(ofSet, index, run), 0);
    }

    /** So many thousandths of these and the rest of the others. */
    Duals mixed(Duals other, int thousandths) {
        int[][] prices = new int[piece.length][];
        for (int i = 0; i < prices.length; i++) {
            prices[i] = new int[piece[i].length];
            for (int k = 0; k < prices[i].length; k++) {
                prices[i][k] = (int) mix(piece[i][k], other.piece[i][k], thousandths);
            }
        }
        long[] weights = new long[undone.length];
        for (int k = 0; k < weights.length; k++) {
            weights[k] = mix(undone[k], other.undone[k], thousandths);
        }
        Map<Touch, Integer> charges = new TreeMap<>(ORDER);
        touch.forEach(
                (key, price) -> charges.put(key, (int) mix(price, other.touch.getOrDefault(key, 0), thousandths)));
        other.touch.forEach((key, price) -> charges.putIfAbsent(key, (int) mix(0, price, thousandths)));
        charges.values().removeIf(price -> price == 0);
        return new Duals(prices, weights, charges);
    }

    private static long mix(long mine, long others, int thousandths) {
        return (mine * thousandths + others * (1000 - thousandths)) / 1000;
    }

    static final java.util.Comparator<Touch> ORDER = java.util.Comparator.comparing(Touch::ofSet)
            .thenComparingInt(Touch::index)
            .thenComparingInt(Touch::run);
}
