package bitterend.report;

import bitterend.measure.Length;

/**
 * A length as a tape in feet and inches shows it.
 *
 * @param sixteenths whole sixteenths of an inch; may be negative
 */
record FeetAndInches(long sixteenths) {
    private static final long PER_INCH = 16;
    private static final long PER_FOOT = 12 * PER_INCH;

    /**
     * The quarter of an inch that lies within the millimetre below, since lengths are rounded up to a millimetre when they
     * are read; where none does, to the nearest sixteenth, 1.5875 mm, halves going up.
     */
    static FeetAndInches nearest(Length length) {
        long quarters = Math.floorDiv(Math.multiplyExact(length.mm(), 20L), 127L); // 6.35 mm each
        if (length.mm() * 20L - quarters * 127L < 20L) {
            return new FeetAndInches(4 * quarters);
        }
        // 16 / 25.4 = 80 / 127
        return new FeetAndInches(Math.floorDiv(Math.addExact(Math.multiplyExact(length.mm(), 160L), 127L), 254L));
    }

    /** {@code 12' 0"}, {@code 3' 4 5/16"}, {@code 0' 0 1/2"}. */
    @Override
    public String toString() {
        long size = Math.abs(sixteenths);
        long inches = size % PER_FOOT / PER_INCH;
        long rest = size % PER_INCH;
        return (sixteenths < 0 ? "-" : "") + size / PER_FOOT + "' " + inches + (rest == 0 ? "" : " " + fraction(rest))
                + "\"";
    }

    /** {@code 12 ft}, {@code 3 ft 4 5/16 in}, {@code 1/2 in}. */
    String words() {
        long size = Math.abs(sixteenths);
        String sign = sixteenths < 0 ? "-" : "";
        long feet = size / PER_FOOT;
        String rest = new FeetAndInches(size % PER_FOOT).inches();
        if (feet == 0) {
            return sign + rest + " in";
        }
        return sign + feet + " ft" + (rest.equals("0") ? "" : " " + rest + " in");
    }

    /** Inches alone: {@code 144}, {@code 40 5/16}, {@code 1/2}, {@code 0}. */
    String inches() {
        long size = Math.abs(sixteenths);
        long whole = size / PER_INCH;
        long rest = size % PER_INCH;
        String words = rest == 0 ? Long.toString(whole) : whole == 0 ? fraction(rest) : whole + " " + fraction(rest);
        return (sixteenths < 0 ? "-" : "") + words;
    }

    private static String fraction(long sixteenths) {
        long numerator = sixteenths;
        long denominator = PER_INCH;
        while (numerator % 2 == 0) {
            numerator /= 2;
            denominator /= 2;
        }
        return numerator + "/" + denominator;
    }
}
