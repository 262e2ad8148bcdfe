package bitterend.history;

import java.util.SplittableRandom;

/**
 * Draws scenarios of the future from the past: so many weeks, each any week of the history, whole, with the same
 * chance. The scenario of a
 * number depends on the seed and that number alone, so that parts of a study can be worked out anywhere.
 *
 * @param seed of every draw
 * @param pastWeeks how many weeks there are to draw from; at least 1
 * @param futureWeeks how many weeks a scenario has; at least 1
 */
public record Resampling(long seed, int pastWeeks, int futureWeeks) {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    public Resampling {
        if (pastWeeks < 1 || futureWeeks < 1) {
            throw new IllegalArgumentException("past weeks " + pastWeeks + ", future weeks " + futureWeeks);
        }
    }

    /** The places in the history, from 0, of the weeks of one scenario. */
    public int[] weeksOf(int scenario) {
        SplittableRandom dice = new SplittableRandom(seed * GOLDEN + scenario).split();
        int[] weeks = new int[futureWeeks];
        for (int i = 0; i < futureWeeks; i++) {
            weeks[i] = dice.nextInt(pastWeeks);
        }
        return weeks;
    }
}
