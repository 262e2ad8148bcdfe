package bitterend.shops;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import java.util.List;
import java.util.SplittableRandom;

/** The random choices of one shop. The same seed gives the same shop on every JDK. */
final class Dice {
    private final SplittableRandom random;
    private final long gridMm;

    Dice(long seed) {
        random = new SplittableRandom(seed);
        gridMm = pick(List.of(1L, 10L, 10L, 50L, 250L));
    }

    boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    /** How often a feature shows in this shop: in some shops never, in some nearly always. */
    int mood() {
        return pick(List.of(0, 0, 10, 30, 80));
    }

    /** Both ends included. */
    int between(int low, int high) {
        return random.nextInt(low, high + 1);
    }

    <T> T pick(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    /** A length on this shop's grid, from low to high, at least one step of the grid. */
    Length length(long lowMm, long highMm) {
        long mm = random.nextLong(lowMm, Math.max(lowMm, highMm) + 1);
        return new Length(Math.max(gridMm, mm / gridMm * gridMm));
    }

    /** None in {@code noneIn} of 100 cases, else a length up to {@code highMm}, not on the grid. */
    Length lengthOrNone(int noneIn, long highMm) {
        return chance(noneIn) ? Length.ZERO : new Length(random.nextLong(1, Math.max(2, highMm + 1)));
    }

    /** Nothing in one of four cases, else up to so many 1/1000 minor units. */
    Cost cost(long high) {
        return chance(25) ? Cost.ZERO : new Cost(random.nextLong(0, high + 1));
    }
}
