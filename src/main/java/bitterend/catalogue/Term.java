package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.Sentence;
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

    /** How it was worked out, with its numbers, whether it is added or taken away. The diameter must be covered. */
    Sentence words(Yardsticks yardsticks);

    /** Whether it is taken away. The diameter must be covered. */
    boolean isTakenAway(Yardsticks yardsticks);

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
        public Sentence words(Yardsticks yardsticks) {
            Ratio size = count.isNegative() ? Ratio.ZERO.minus(count) : count;
            return one(Sentence.of(RatioText.exact(size) + " " + of.words(count) + " of "), yardsticks);
        }

        /** A rope is told as it is known: 8 mm are no 5/16 in. */
        private Sentence one(Sentence words, Yardsticks yardsticks) {
            return of == Yardstick.DIAMETER ? words.finely(yardsticks.rope()) : words.and(yardsticks.length(of));
        }

        @Override
        public boolean isTakenAway(Yardsticks yardsticks) {
            return count.isNegative();
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
        public Sentence words(Yardsticks yardsticks) {
            return Sentence.NONE.and(length.isNegative() ? FineLength.ZERO.minus(length) : length);
        }

        @Override
        public boolean isTakenAway(Yardsticks yardsticks) {
            return length.isNegative();
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
        public Sentence words(Yardsticks yardsticks) {
            Step step = step(yardsticks.rope());
            return step.term().words(yardsticks).and(step.limit().words());
        }

        @Override
        public boolean isTakenAway(Yardsticks yardsticks) {
            return step(yardsticks.rope()).term().isTakenAway(yardsticks);
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
