package bitterend.measure.formula;

import bitterend.measure.Parsed;
import java.util.Map;
import java.util.Set;

/** A part of a formula that stands for one quantity. */
sealed interface Expression {
    /** What it stands for. */
    Kind kind();

    /** Its value for these of the names; a refusal says what would have been right. */
    Parsed<Quantity> of(Map<String, Quantity> values);

    /** The names that it rests on. */
    void names(Set<String> met);

    /**
     * A quantity that stands there itself.
     *
     * @param value what it says
     */
    record Constant(Quantity value) implements Expression {
        @Override
        public Kind kind() {
            return value.kind();
        }

        @Override
        public Parsed<Quantity> of(Map<String, Quantity> values) {
            return Parsed.of(value);
        }

        @Override
        public void names(Set<String> met) {}
    }

    /**
     * What somebody sets.
     *
     * @param name what it is called
     * @param kind what it stands for
     */
    record Named(String name, Kind kind) implements Expression {
        @Override
        public Parsed<Quantity> of(Map<String, Quantity> values) {
            Quantity value = values.get(name);
            return value == null ? Parsed.refused("a value for " + name) : Parsed.of(value);
        }

        @Override
        public void names(Set<String> met) {
            met.add(name);
        }
    }

    /**
     * Two of them put together.
     *
     * @param operation what is done with them
     * @param left the one that is written first
     * @param right the other
     * @param kind what comes out
     */
    record Both(Operation operation, Expression left, Expression right, Kind kind) implements Expression {
        @Override
        public Parsed<Quantity> of(Map<String, Quantity> values) {
            return left.of(values).then(first -> right.of(values).then(second -> operation.of(first, second)));
        }

        @Override
        public void names(Set<String> met) {
            left.names(met);
            right.names(met);
        }
    }
}
