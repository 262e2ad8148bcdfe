package bitterend.measure;

import java.util.function.Function;

/**
 * A length as somebody wrote it: 31 ft 6 in stay 31 ft 6 in on every page, whatever whole millimetres they are cut as.
 * Equal when the lengths are, however they were written.
 *
 * @param exact the length, to 0.0001 mm
 * @param text as it was written, blanks tidied; empty for a length that was worked out
 */
public record Written(FineLength exact, String text) {
    public static final Written NOTHING = worked(Length.ZERO);

    private static final int LONGEST = 40;

    /** What is finer than 0.0001 mm is rounded up: for what is wanted. */
    public static Parsed<Written> parse(String text) {
        return LengthText.parseFine(text).map(exact -> new Written(exact, tidy(text)));
    }

    /**
     * Rope that is there: what is finer than 0.0001 mm is rounded down. Whole millimetres are the form in which files state
     * what was worked out, and are taken for that; so is a text too long for a cell.
     */
    public static Parsed<Written> parsePresent(String text) {
        return LengthText.parseFineRoundedDown(text).map(exact -> {
            String kept = tidy(text);
            boolean worked = kept.length() > LONGEST || kept.equals(LengthText.exact(exact.roundedDown()));
            return worked ? worked(exact.roundedDown()) : new Written(exact, kept);
        });
    }

    /** A length that nobody wrote. */
    public static Written worked(Length length) {
        return worked(length.fine());
    }

    /** A length that nobody wrote. */
    public static Written worked(FineLength length) {
        return new Written(length, "");
    }

    /** Whole millimetres that are no less: for what is to be cut. */
    public Length roundedUp() {
        return exact.roundedUp();
    }

    /** Whole millimetres that are no more: for rope that is there. */
    public Length roundedDown() {
        return exact.roundedDown();
    }

    /** The form for files that keep one text: as written, else exact. */
    public String kept() {
        return text.isEmpty() ? LengthText.exact(exact) : text;
    }

    /**
     * For people: as written, and behind it, in brackets, in the other system where the page is in that; a length that
     * was worked out as {@code other} prints it.
     */
    public String print(Units units, Function<FineLength, String> other) {
        if (text.isEmpty()) {
            return other.apply(exact);
        }
        return LengthText.isIn(text, units) ? text : text + " (" + other.apply(exact) + ")";
    }

    /** As it was written, where that is in the other system; empty otherwise. */
    public String inOtherThan(Units units) {
        return text.isEmpty() || LengthText.isIn(text, units) ? "" : text;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Written written && written.exact.equals(exact);
    }

    @Override
    public int hashCode() {
        return exact.hashCode();
    }

    private static String tidy(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }
}
