package bitterend.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/**
 * How lengths are read and printed: {@code 12.5 m}, {@code 12500 mm}, {@code 41 ft 6 1/2 in}, {@code 41'6"},
 * {@code 3 fathoms}. A number without a unit is refused, zero excepted; so is a comma. Reading is exact and knows no
 * locale; what is finer than a millimetre is rounded as each method says.
 */
public final class LengthText {
    private static final String EXPECTED = "a length with its unit, such as 12.5 m, 12500 mm, 41 ft 6 in or 3 fathoms";
    private static final BigDecimal LONGEST_MM = new BigDecimal("1000000000");
    private static final BigDecimal FINE = BigDecimal.valueOf(FineLength.UNITS_PER_MM);

    private LengthText() {}

    /** Rounded up to whole millimetres: for what is to be cut. */
    public static Parsed<Length> parse(String text) {
        return millimetres(text, EXPECTED).map(mm -> new Length(whole(mm, RoundingMode.CEILING)));
    }

    /** Rounded down to whole millimetres: for rope that is there. */
    public static Parsed<Length> parseRoundedDown(String text) {
        return millimetres(text, EXPECTED).map(mm -> new Length(whole(mm, RoundingMode.FLOOR)));
    }

    /** Rounded up to 0.0001 mm, so that thousandths and sixteenths of an inch are exact: for allowances. */
    public static Parsed<FineLength> parseFine(String text) {
        return millimetres(text, EXPECTED).map(mm -> new FineLength(whole(mm.multiply(FINE), RoundingMode.CEILING)));
    }

    /** Rounded down to 0.0001 mm: for rope that is there. */
    static Parsed<FineLength> parseFineRoundedDown(String text) {
        return millimetres(text, EXPECTED).map(mm -> new FineLength(whole(mm.multiply(FINE), RoundingMode.FLOOR)));
    }

    /** The form for files: {@code 12345 mm}. */
    public static String exact(Length length) {
        return length.mm() + " mm";
    }

    /** The form for files and derivations: {@code 618.97 mm}. */
    public static String exact(FineLength length) {
        return plain(BigDecimal.valueOf(length.units()).divide(FINE)) + " mm";
    }

    /** For people: {@code 12.345 m}, exact, or {@code 41 ft 6 1/16 in}, to the nearest sixteenth. */
    public static String print(Length length, Units units) {
        return units == Units.METRIC
                ? BigDecimal.valueOf(length.mm(), 3).toPlainString() + " m"
                : FeetAndInches.nearest(length.fine()).words();
    }

    /** For people, finely: {@code 618.97 mm}, exact, or {@code 2 ft 3/8 in}, to the nearest sixteenth. */
    public static String print(FineLength length, Units units) {
        return units == Units.METRIC
                ? exact(length)
                : FeetAndInches.nearest(length).words();
    }

    /** As a tape finds it: {@code 619 mm}, to the nearest millimetre, or {@code 2 ft 3/8 in}, to the nearest sixteenth. */
    public static String tape(FineLength length, Units units) {
        return units == Units.METRIC ? exact(length.toNearestMillimetre()) : print(length, units);
    }

    /** Whether a text that was read as a length is of this system; nothing is of both. */
    static boolean isIn(String text, Units units) {
        return Amount.all(unsigned(text), EXPECTED).value().orElse(List.of()).stream()
                .flatMap(amount -> LengthUnit.of(amount.unit()).stream())
                .allMatch(unit -> unit.system() == units);
    }

    private static String unsigned(String text) {
        return isNegative(text) ? text.substring(1) : text;
    }

    private static boolean isNegative(String text) {
        return text.startsWith("-") || text.startsWith("\u2212");
    }

    /** A text as millimetres, exact, with its sign; {@code expected} tells what was wanted. */
    static Parsed<BigDecimal> millimetres(String text, String expected) {
        String stripped = text.strip();
        boolean negative = isNegative(stripped);
        return Amount.all(unsigned(stripped), expected)
                .then(amounts -> sum(amounts, expected))
                .then(mm ->
                        mm.compareTo(LONGEST_MM) > 0 ? Parsed.refused("a length of at most 1000 km") : Parsed.of(mm))
                .map(mm -> negative ? mm.negate() : mm);
    }

    private static Parsed<BigDecimal> sum(List<Amount> amounts, String expected) {
        if (amounts.size() == 1
                && amounts.get(0).unit().isEmpty()
                && amounts.get(0).number().signum() == 0) {
            return Parsed.of(BigDecimal.ZERO);
        }
        BigDecimal sum = BigDecimal.ZERO;
        Optional<LengthUnit> coarser = Optional.empty();
        for (int i = 0; i < amounts.size(); i++) {
            Amount amount = amounts.get(i);
            Optional<LengthUnit> unit = LengthUnit.of(amount.unit());
            boolean last = i == amounts.size() - 1;
            if (unit.isEmpty() || (!last && amount.number().stripTrailingZeros().scale() > 0)) {
                return Parsed.refused(expected);
            }
            BigDecimal part = unit.get().times(amount.number());
            if (coarser.isPresent() && !continues(coarser.get(), unit.get(), part)) {
                return Parsed.refused(expected + ", with less than one foot in the inches behind feet");
            }
            sum = sum.add(part);
            coarser = unit;
        }
        return Parsed.of(sum);
    }

    private static boolean continues(LengthUnit coarser, LengthUnit finer, BigDecimal part) {
        return coarser.system() == finer.system() && part.compareTo(coarser.millimetres()) < 0 && finer != coarser;
    }

    /** To the nearest whole number of steps; halves go up. */
    static long nearest(long units, long step) {
        return Math.floorDiv(Math.addExact(Math.multiplyExact(2, units), step), Math.multiplyExact(2, step));
    }

    static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private static long whole(BigDecimal number, RoundingMode rounding) {
        return number.setScale(0, rounding).longValueExact();
    }
}
