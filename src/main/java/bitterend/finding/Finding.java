package bitterend.finding;

import bitterend.measure.Sentence;
import bitterend.measure.Units;
import java.util.Comparator;
import java.util.List;

/**
 * One problem at one place of the input.
 *
 * @param severity whether the input can still be used
 * @param file the file as the user named it, or its name inside the shop folder
 * @param place {@code row 12} of a CSV file (the header is row 1), or a JSON pointer such as {@code /ropes/3}; empty when the whole file is meant
 * @param field the column or member; empty when the whole row is meant
 * @param what what stands there, as typed
 * @param wanted what would have been right, or what the reader should know
 * @param typed whether a person wrote what is there, so that it can be looked for in the file; else it was worked out
 */
public record Finding(
        Severity severity, String file, String place, String field, Sentence what, Sentence wanted, boolean typed)
        implements Comparable<Finding> {

    /** Of what was found so many characters are repeated at most. */
    public static final int LONGEST_FOUND = 300;

    private static final int SHOWN_OF_LONG = 60;
    private static final String WANTED = "; wanted: ";

    /** What is wanted begins so where it is a limit. */
    private static final List<String> LIMITS = List.of("at least ", "at most ", "no tighter than ");

    private static final Comparator<Finding> READING_ORDER = Comparator.comparing(Finding::file)
            .thenComparing(Finding::place, NaturalOrder.IDS)
            .thenComparing(Finding::field)
            .thenComparing(Finding::found)
            .thenComparing(Finding::expected)
            .thenComparing(Finding::severity);

    /** Of what a person wrote. */
    public Finding(Severity severity, String file, String place, String field, Sentence what, Sentence wanted) {
        this(severity, file, place, field, what, wanted, true);
    }

    /** Of words whose figures are printed already. */
    public Finding(Severity severity, String file, String place, String field, String found, String expected) {
        this(severity, file, place, field, Sentence.of(found), Sentence.of(expected));
    }

    /** What stands there, in metric. */
    public String found() {
        return what.exact();
    }

    /** What would have been right, or what the reader should know, in metric. */
    public String expected() {
        return wanted.exact();
    }

    /** The same with its figures printed in these units. */
    public Finding in(Units units) {
        return new Finding(
                severity, file, place, field, Sentence.of(what.print(units)), Sentence.of(wanted.print(units)), typed);
    }

    public static Finding error(String file, String place, String field, String found, String expected) {
        return new Finding(Severity.ERROR, file, place, field, repeated(found), expected);
    }

    public static Finding warning(String file, String place, String field, String found, String expected) {
        return new Finding(Severity.WARNING, file, place, field, repeated(found), expected);
    }

    /** What was found as far as a reader needs it to find it again. */
    private static String repeated(String found) {
        return found.length() <= LONGEST_FOUND
                ? found
                : found.substring(0, found.offsetByCodePoints(0, SHOWN_OF_LONG)) + "... (" + found.length()
                        + " characters)";
    }

    /** The same of what nobody wrote like that: it was worked out, and no page quotes it. */
    public Finding workedOut() {
        return new Finding(severity, file, place, field, what, wanted, false);
    }

    /** What was found and what to do about it; a limit is told as what is wanted, lest it reads as what is there. */
    public static String advice(String found, String expected) {
        if (found.isEmpty()) {
            return expected;
        }
        return found + (LIMITS.stream().anyMatch(expected::startsWith) ? WANTED : ": ") + expected;
    }

    /** The same, of a line that is left out while the rest goes on. */
    public Finding leavingOut() {
        return new Finding(Severity.LEFT_OUT, file, place, field, what, wanted, typed);
    }

    /** Whether it leaves out the line it is about. */
    public boolean leavesOut() {
        return severity == Severity.LEFT_OUT;
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** Orders findings as a reader walks through the files. */
    @Override
    public int compareTo(Finding other) {
        return READING_ORDER.compare(this, other);
    }

    private String word() {
        return switch (severity) {
            case ERROR -> "error";
            case LEFT_OUT -> "left out";
            case WARNING -> "warning";
        };
    }

    /**
     * One line for a person: {@code error: orders.csv, row 12, length: found "12,5 n", expected a length such as 12.5 m};
     * {@code warning: orders.csv, row 14, length: a piece weighs 43 kg: more than 23 kg needs two people or a hoist}.
     */
    @Override
    public String toString() {
        return word() + ": " + told();
    }

    /** The same without what becomes of it: where it is, what was found there and what would have been right. */
    public String told() {
        StringBuilder line = new StringBuilder(file);
        if (!place.isEmpty()) {
            line.append(", ").append(place);
        }
        if (!field.isEmpty()) {
            line.append(", ").append(field);
        }
        if (!typed) {
            return line.append(": ")
                    .append(what.isEmpty() ? "wanted: " + expected() : advice(found(), expected()))
                    .toString();
        }
        return line.append(": found ")
                .append(what.isEmpty() ? "nothing" : '"' + found() + '"')
                .append(", expected ")
                .append(expected())
                .toString();
    }
}
