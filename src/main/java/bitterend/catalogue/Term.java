package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.Units;
import java.util.List;
import java.util.Optional;

/** One summand of an allowance, as the trade states it: so many fids, diameters, tucks, or a length. */
public sealed interface Term {

    /** Whether it is known for a rope of this diameter. */
    boolean covers(Diameter rope);

    /** As files state it. */
    String text();

    /** The length; rounded up once to 0.0001 mm. The diameter must be covered. */
    FineLength length(Yardsticks yardsticks);

    /** How it was worked out, with its numbers. The diameter must be covered. */
    String words(Yardsticks yardsticks, Units units);

    /**
     * So many of something.
     *
     * @param count how many; may be negative
     * @param of of what
     */
    record Multiple(Ratio count, Yardstick of) implements Term {
        @Override
        public boolean covers(Diameter rope) {
            return true;
        }

        @Override
        public FineLength length(Yardsticks yardsticks) {
            return yardsticks.length(of).times(count);
        }

        @Override
        public String text() {
            return RatioText.exact(count) + " " + of.words(count);
        }

        @Override
        public String words(Yardsticks yardsticks, Units units) {
            return RatioText.exact(count) + " " + of.words(count) + " of " + one(yardsticks, units);
        }

        /** A rope is told as it is known: 8 mm are no 5/16 in. */
        private String one(Yardsticks yardsticks, Units units) {
            return of == Yardstick.DIAMETER && units == Units.IMPERIAL
                    ? DiameterText.print(yardsticks.rope(), units)
                    : LengthText.print(yardsticks.length(of), units);
        }
    }

    /**
     * A fixed length.
     *
     * @param length that length; may be negative
     */
    record Fixed(FineLength length) implements Term {
        @Override
        public boolean covers(Diameter rope) {
            return true;
        }

        @Override
        public FineLength length(Yardsticks yardsticks) {
            return length;
        }

        @Override
        public String text() {
            return LengthText.exact(length);
        }

        @Override
        public String words(Yardsticks yardsticks, Units units) {
            return LengthText.print(length, units);
        }
    }

    /**
     * A table by diameter: the first step that reaches the rope counts, never a value between two.
     *
     * @param steps thinnest first; a rope beyond the last is not covered
     */
    record ByDiameter(List<Step> steps) implements Term {
        public ByDiameter {
            steps = List.copyOf(steps);
        }

        @Override
        public boolean covers(Diameter rope) {
            return find(rope).isPresent();
        }

        @Override
        public FineLength length(Yardsticks yardsticks) {
            return step(yardsticks.rope()).term().length(yardsticks);
        }

        @Override
        public String text() {
            return "a table by diameter";
        }

        @Override
        public String words(Yardsticks yardsticks, Units units) {
            Step step = step(yardsticks.rope());
            return step.term().words(yardsticks, units) + step.limit().words(units);
        }

        private Optional<Step> find(Diameter rope) {
            return steps.stream().filter(step -> step.limit().admits(rope)).findFirst();
        }

        private Step step(Diameter rope) {
            return find(rope).orElseThrow(() -> new IllegalArgumentException("no row for " + rope));
        }
    }

    /**
     * One row of a table by diameter.
     *
     * @param limit the ropes it is for
     * @param term what holds for them; not a table itself
     */
    record Step(DiameterLimit limit, Term term) {}
}
