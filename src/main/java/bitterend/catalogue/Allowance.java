package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Sentence;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A length that a termination asks for: a sum of terms, or the largest of several.
 *
 * @param terms the summands; none for nothing
 * @param floors further sums; where one of them is longer, it counts
 * @param provenance where it comes from
 */
public record Allowance(List<Term> terms, List<List<Term>> floors, Provenance provenance) {
    public static final Allowance NOTHING = new Allowance(List.of(), Provenance.ARITHMETIC);

    public Allowance {
        terms = List.copyOf(terms);
        floors = floors.stream().map(List::copyOf).toList();
        if (terms.isEmpty() && !floors.isEmpty()) {
            throw new IllegalArgumentException("nothing, but at least " + floors);
        }
    }

    /** One sum. */
    public Allowance(List<Term> terms, Provenance provenance) {
        this(terms, List.of(), provenance);
    }

    /** This and another on top of it, whichever sum counts. */
    public Allowance plus(List<Term> more) {
        return new Allowance(
                joined(terms, more),
                floors.stream().map(floor -> joined(floor, more)).toList(),
                provenance);
    }

    private static List<Term> joined(List<Term> first, List<Term> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }

    public boolean isNothing() {
        return terms.isEmpty();
    }

    /** As files state it, tables left out: {@code 1 fid + 10 mm}, {@code 6 diameters, at least 150 mm}; empty for nothing. */
    public String text() {
        String most = summed(terms.stream().map(Term::text).toList());
        return floors.isEmpty()
                ? most
                : most + ", at least "
                        + floors.stream()
                                .map(floor ->
                                        summed(floor.stream().map(Term::text).toList()))
                                .collect(Collectors.joining(" and "));
    }

    /** Whether the row leaves it to the shop: a table without a row. */
    public boolean isUnknown() {
        return terms.stream()
                .anyMatch(term ->
                        term instanceof Term.ByDiameter table && table.steps().isEmpty());
    }

    /** Whether every term is known for a rope of this diameter. */
    public boolean covers(Diameter rope) {
        return Stream.concat(Stream.of(terms), floors.stream())
                .flatMap(List::stream)
                .allMatch(term -> term.covers(rope));
    }

    /** The thickest rope that its tables reach, with a space in front: {@code  (rope up to 8 mm)}; empty without a limit. */
    public Sentence limit() {
        return Stream.concat(Stream.of(terms), floors.stream())
                .flatMap(List::stream)
                .flatMap(term -> term instanceof Term.ByDiameter table ? table.steps().stream() : Stream.empty())
                .map(Term.Step::limit)
                .reduce((thinner, thicker) -> thicker)
                .map(DiameterLimit::words)
                .orElse(Sentence.NONE);
    }

    /** The sum, or the longest of several; each term rounded up to 0.0001 mm. */
    public FineLength length(Yardsticks yardsticks) {
        return sum(longest(yardsticks), yardsticks);
    }

    /** How it was worked out, with its numbers: {@code 1 fid of 252 mm + 10 mm}. */
    public Sentence words(Yardsticks yardsticks) {
        Sentence sum = Sentence.NONE;
        for (Term term : longest(yardsticks)) {
            boolean minus = term.isTakenAway(yardsticks);
            String sign = sum.isEmpty() ? (minus ? "-" : "") : minus ? " - " : " + ";
            sum = sum.and(sign).and(term.words(yardsticks));
        }
        return sum;
    }

    /** The sum that counts; the first of equal ones. */
    private List<Term> longest(Yardsticks yardsticks) {
        List<Term> longest = terms;
        for (List<Term> floor : floors) {
            if (sum(floor, yardsticks).compareTo(sum(longest, yardsticks)) > 0) {
                longest = floor;
            }
        }
        return longest;
    }

    private static FineLength sum(List<Term> terms, Yardsticks yardsticks) {
        return terms.stream().map(term -> term.length(yardsticks)).reduce(FineLength.ZERO, FineLength::plus);
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
