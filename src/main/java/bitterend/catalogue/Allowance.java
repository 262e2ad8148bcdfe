package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Units;
import java.util.List;

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

    /** The sum as files state it, tables left out: {@code 1 fid + 10 mm}; empty for nothing. */
    public String text() {
        return summed(terms.stream().map(Term::text).toList());
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
        return summed(terms.stream().map(term -> term.words(yardsticks, units)).toList());
    }

    /** Joined by plus signs, or minus signs before what is taken away. */
    private static String summed(List<String> texts) {
        StringBuilder sum = new StringBuilder();
        for (String text : texts) {
            boolean minus = text.startsWith("-") && sum.length() > 0;
            sum.append(sum.length() == 0 ? "" : minus ? " - " : " + ").append(minus ? text.substring(1) : text);
        }
        return sum.toString();
    }
}
