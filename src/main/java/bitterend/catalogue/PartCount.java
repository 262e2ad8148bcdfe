package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.Ratio;
import java.util.List;
import java.util.Optional;

/**
 * How many parts a diameter asks for: by a rule per inch, by a table, or the larger of both.
 *
 * @param perInch parts for each inch of diameter, rounded up after {@code plus}; zero for no rule
 * @param plus parts on top
 * @param steps table by diameter, thinnest first; empty for no table
 */
public record PartCount(Ratio perInch, int plus, List<Step> steps) {
    private static final Ratio UNITS_PER_INCH = Ratio.of(254_000);

    public PartCount {
        steps = List.copyOf(steps);
        if (perInch.isNegative() || plus < 0) {
            throw new IllegalArgumentException("parts per inch " + perInch + " plus " + plus);
        }
    }

    /** Always so many. */
    public static PartCount of(int count) {
        return new PartCount(Ratio.ZERO, count, List.of());
    }

    /**
     * One row of a table of parts.
     *
     * @param limit the ropes it is for
     * @param count how many parts
     */
    public record Step(DiameterLimit limit, int count) {}

    /** How many for a rope; a rope beyond the table counts by the rule. */
    public int of(Diameter rope) {
        long byRule = perInch.times(UNITS_PER_INCH.inverse()).timesRoundedUp(rope.units()) + plus;
        Optional<Step> step =
                steps.stream().filter(row -> row.limit().admits(rope)).findFirst();
        return (int) Math.max(byRule, step.map(Step::count).orElse(0));
    }
}
