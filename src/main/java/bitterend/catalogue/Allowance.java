package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Units;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A length that a termination asks for, as a sum of terms.
 *
 * @param terms the summands; none for nothing
 * @param provenance where it comes from
 */
public record Allowance(List<Term> terms, Provenance provenance) {
    public static final Allowance NOTHING = new Allowance(List.of(), Provenance.ARITHMETIC);

    public Allowance {
        terms = List.copyOf(terms);
    }

    public boolean isNothing() {
        return terms.isEmpty();
    }

    /** Whether the row leaves it to the shop: a table without a row. */
    public boolean isUnknown() {
        return terms.stream()
                .anyMatch(term ->
                        term instanceof Term.ByDiameter table && table.steps().isEmpty());
    }

    /** Whether every term is known for a rope of this diameter. */
    public boolean covers(Diameter rope) {
        return terms.stream().allMatch(term -> term.covers(rope));
    }

    /** The sum; each term rounded up to 0.0001 mm. */
    public FineLength length(Yardsticks yardsticks) {
        return terms.stream().map(term -> term.length(yardsticks)).reduce(FineLength.ZERO, FineLength::plus);
    }

    /** How it was worked out, with its numbers: {@code 1 fid of 252 mm + 10 mm}. */
    public String words(Yardsticks yardsticks, Units units) {
        return terms.stream().map(term -> term.words(yardsticks, units)).collect(Collectors.joining(" + "));
    }
}
