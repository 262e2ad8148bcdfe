package bitterend.measure.formula;

import bitterend.measure.Parsed;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Arithmetic on lengths and numbers as a shop writes it: {@code length - 2 m}, {@code 0.75 * height},
 * {@code max(2 * eye, 600 mm)}, {@code roundUp(length / 3, 50 mm)}. Multiplication and division bind closer than addition
 * and subtraction, all from left to right; units go together or the formula is refused when it is read.
 */
public final class Formula {
    private final Expression whole;

    private Formula(Expression whole) {
        this.whole = whole;
    }

    /** Reads a formula over names of these kinds; a refusal says where what would have been right. */
    public static Parsed<Formula> parse(String text, Map<String, Kind> names) {
        return new FormulaReader(text, names).read().map(Formula::new);
    }

    /** The names that it rests on. */
    public Set<String> names() {
        Set<String> met = new TreeSet<>();
        whole.names(met);
        return met;
    }

    /** What comes out for these values, each of the kind its name has; a refusal says what would have been right. */
    public Parsed<Quantity> of(Map<String, Quantity> values) {
        return whole.of(values);
    }
}
