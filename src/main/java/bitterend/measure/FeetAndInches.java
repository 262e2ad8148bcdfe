package bitterend.measure;

/**
 * A length as a tape in feet and inches shows it.
 *
 * @param sixteenths whole sixteenths of an inch, 1.5875 mm each; may be negative
 */
public record FeetAndInches(long sixteenths) {
    /** A sixteenth of an inch in the unit of {@link FineLength}. */
    public static final long UNITS_PER_SIXTEENTH = 15_875;

    private static final long PER_INCH = 16;
    private static final long PER_FOOT = 12 * PER_INCH;

    /** To the nearest sixteenth; halves go away from nothing. */
    public static FeetAndInches nearest(FineLength length) {
        long size = LengthText.nearest(Math.abs(length.units()), UNITS_PER_SIXTEENTH);
        return new FeetAndInches(length.isNegative() ? -size : size);
    }

    /** To the nearest inch; halves go away from nothing. */
    public static FeetAndInches toNearestInch(FineLength length) {
        long size = LengthText.nearest(Math.abs(length.units()), PER_INCH * UNITS_PER_SIXTEENTH);
        return new FeetAndInches(PER_INCH * (length.isNegative() ? -size : size));
    }

    /** For a column: {@code 12' 0"}, {@code 3' 4 5/16"}, {@code 0' 0 1/2"}. */
    public String marks() {
        long size = Math.abs(sixteenths);
        long inches = size % PER_FOOT;
        String whole = inches > 0 && inches < PER_INCH ? "0 " : "";
        return sign() + size / PER_FOOT + "' " + whole + inches(inches) + "\"";
    }

    /** {@code 12 ft}, {@code 3 ft 4 5/16 in}, {@code 1/2 in}. */
    public String words() {
        long size = Math.abs(sixteenths);
        long feet = size / PER_FOOT;
        long rest = size % PER_FOOT;
        if (feet == 0) {
            return sign() + inches(rest) + " in";
        }
        return sign() + feet + " ft" + (rest == 0 ? "" : " " + inches(rest) + " in");
    }

    /** Inches alone: {@code 144}, {@code 40 5/16}, {@code 1/2}, {@code 0}. */
    public String inches() {
        return sign() + inches(Math.abs(sixteenths));
    }

    private String sign() {
        return sixteenths < 0 ? "-" : "";
    }

    private static String inches(long size) {
        long whole = size / PER_INCH;
        long above = size % PER_INCH;
        long below = PER_INCH;
        while (above > 0 && above % 2 == 0) {
            above /= 2;
            below /= 2;
        }
        String fraction = above == 0 ? "" : above + "/" + below;
        if (whole == 0 && above > 0) {
            return fraction;
        }
        return whole + (above == 0 ? "" : " " + fraction);
    }
}
