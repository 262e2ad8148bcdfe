package bitterend.packing;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Work left undone, by class of urgency: a weight for each class, the first the most urgent. Compared class by class: no
 * weight of a later class outweighs any of an earlier one. {@link Urgency} says which class a piece is in and what it
 * weighs there. Sums over pieces, sets and ropes; differences and lower bounds may hold negative weights.
 */
public final class Undone implements Comparable<Undone> {
    /** How many classes there are. */
    public static final int CLASSES = 5;

    /** Nothing. */
    public static final Undone NONE = new Undone(new long[CLASSES]);

    private final long[] weights;

    private Undone(long[] weights) {
        this.weights = weights;
    }

    /**
     * One weight in one class.
     *
     * @param urgency the class, from 1 to {@link #CLASSES}
     */
    public static Undone of(int urgency, long weight) {
        long[] weights = new long[CLASSES];
        weights[index(urgency)] = weight;
        return new Undone(weights);
    }

    /** The weights of all classes, the most urgent first. */
    public static Undone of(List<Long> weights) {
        if (weights.size() != CLASSES) {
            throw new IllegalArgumentException("a weight for each of " + CLASSES + " classes: " + weights);
        }
        return new Undone(weights.stream().mapToLong(Long::longValue).toArray());
    }

    /** Weight in a class, from 1 to {@link #CLASSES}. */
    public long in(int urgency) {
        return weights[index(urgency)];
    }

    /** The weights of all classes, the most urgent first. */
    public List<Long> weights() {
        return LongStream.of(weights).boxed().toList();
    }

    public Undone plus(Undone other) {
        return combined(other, 1);
    }

    public Undone minus(Undone other) {
        return combined(other, -1);
    }

    private Undone combined(Undone other, int sign) {
        long[] sum = weights.clone();
        for (int k = 0; k < CLASSES; k++) {
            sum[k] = Math.addExact(sum[k], sign * other.weights[k]);
        }
        return new Undone(sum);
    }

    public boolean isNone() {
        return equals(NONE);
    }

    /** Whether it is less: less in the first class in which the two differ. */
    public boolean isLessThan(Undone other) {
        return compareTo(other) < 0;
    }

    /** Whether there is no more of it in any class. */
    public boolean isWithin(Undone other) {
        return IntStream.range(0, CLASSES).allMatch(k -> weights[k] <= other.weights[k]);
    }

    @Override
    public int compareTo(Undone other) {
        return Arrays.compare(weights, other.weights);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Undone undone && Arrays.equals(weights, undone.weights);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(weights);
    }

    /** For messages: {@code 0-36-0-0-5}. */
    @Override
    public String toString() {
        return IntStream.range(0, CLASSES)
                .mapToObj(k -> Long.toString(weights[k]))
                .collect(Collectors.joining("-"));
    }

    private static int index(int urgency) {
        if (urgency < 1 || urgency > CLASSES) {
            throw new IllegalArgumentException("a class from 1 to " + CLASSES + ": " + urgency);
        }
        return urgency - 1;
    }
}
