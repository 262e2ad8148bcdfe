package bitterend.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How masses are read and printed: {@code 12 kg}, {@code 432 lb}; by length {@code 0.179 kg/m}, {@code 36.0 lb/100 ft}.
 */
public final class MassText {
    private static final String EXPECTED = "a mass with its unit, such as 12 kg, 900 g or 432 lb";
    private static final String EXPECTED_BY_LENGTH = "a mass by length, such as 0.179 kg/m or 36.0 lb/100 ft";
    private static final Map<String, BigDecimal> GRAMS = Map.of(
            "g", new BigDecimal("1"),
            "kg", new BigDecimal("1000"),
            "t", new BigDecimal("1000000"),
            "oz", new BigDecimal("28.349523125"),
            "lb", new BigDecimal("453.59237"));
    private static final BigDecimal GRAMS_PER_POUND = new BigDecimal("453.59237");
    private static final BigDecimal GRAMS_PER_KILOGRAM = new BigDecimal("1000");
    private static final BigDecimal HALF_A_GRAM = new BigDecimal("0.5");
    private static final BigDecimal MOST_GRAMS = new BigDecimal("1000000000");
    /** In milligrams. */
    private static final BigDecimal MOST_A_METRE = new BigDecimal("1000000000");

    private static final Pattern BY_LENGTH =
            Pattern.compile("(?<mass>[^/ ]*) ?/ ?(?<count>[0-9]{0,4}) ?(?<unit>\\p{L}+)");

    private MassText() {}

    /** To the nearest gram. */
    public static Parsed<Mass> parse(String text) {
        return Amount.one(text, EXPECTED)
                .then(amount -> grams(amount.number(), amount.unit(), EXPECTED))
                .map(grams -> new Mass(whole(grams)));
    }

    /** To the nearest milligram per metre. */
    public static Parsed<LinearMass> parseByLength(String text) {
        return Amount.one(text, EXPECTED_BY_LENGTH).then(MassText::byLength);
    }

    /** The form for files: {@code 12500 g}. */
    public static String exact(Mass mass) {
        return mass.grams() + " g";
    }

    /** The form for files: {@code 179000 mg/m} is written {@code 0.179 kg/m}; exact. */
    public static String exact(LinearMass mass) {
        return LengthText.plain(BigDecimal.valueOf(mass.milligramsPerMetre(), 6)) + " kg/m";
    }

    /** In full: {@code 12.525 kg}, exact, or {@code 27.6 lb}, to the nearest tenth. */
    public static String full(Mass mass, Units units) {
        BigDecimal grams = BigDecimal.valueOf(mass.grams());
        return units == Units.METRIC
                ? LengthText.plain(grams.movePointLeft(3)) + " kg"
                : grams.divide(GRAMS_PER_POUND, 1, RoundingMode.HALF_UP).toPlainString() + " lb";
    }

    /**
     * For people who lift it: {@code 13 kg}, {@code 28 lb}, {@code 6.9 kg}, {@code 0.35 kg}. Whole kilograms or pounds from
     * 10 on, tenths from 1 on, hundredths below. Rounded up, but for the half gram that reading pounds may have added.
     */
    public static String print(Mass mass, Units units) {
        BigDecimal unit = units == Units.METRIC ? GRAMS_PER_KILOGRAM : GRAMS_PER_POUND;
        BigDecimal grams = BigDecimal.valueOf(mass.grams());
        int digits = grams.compareTo(unit.movePointRight(1)) >= 0 ? 0 : grams.compareTo(unit) >= 0 ? 1 : 2;
        BigDecimal least = grams.subtract(HALF_A_GRAM).max(BigDecimal.ZERO);
        return LengthText.plain(least.divide(unit, digits, RoundingMode.CEILING))
                + (units == Units.METRIC ? " kg" : " lb");
    }

    /** For people: {@code 0.179 kg/m}, exact, or {@code 12 lb/100 ft}, to the nearest tenth. */
    public static String print(LinearMass mass, Units units) {
        if (units == Units.METRIC) {
            return exact(mass);
        }
        BigDecimal gramsPerHundredFeet =
                BigDecimal.valueOf(mass.milligramsPerMetre(), 3).multiply(new BigDecimal("30.48"));
        return gramsPerHundredFeet
                        .divide(GRAMS_PER_POUND, 1, RoundingMode.HALF_UP)
                        .toPlainString()
                + " lb/100 ft";
    }

    private static Parsed<LinearMass> byLength(Amount amount) {
        Matcher parts = BY_LENGTH.matcher(amount.unit());
        if (!parts.matches()) {
            return Parsed.refused(EXPECTED_BY_LENGTH);
        }
        Optional<LengthUnit> unit = LengthUnit.of(parts.group("unit"));
        BigDecimal count = parts.group("count").isEmpty() ? BigDecimal.ONE : new BigDecimal(parts.group("count"));
        if (unit.isEmpty() || count.signum() == 0) {
            return Parsed.refused(EXPECTED_BY_LENGTH);
        }
        BigDecimal millimetres = unit.get().times(count);
        return grams(amount.number(), parts.group("mass"), EXPECTED_BY_LENGTH)
                .map(grams -> grams.movePointRight(6).divide(millimetres, 0, RoundingMode.HALF_UP))
                .then(milligrams -> milligrams.compareTo(MOST_A_METRE) > 0
                        ? Parsed.refused("a mass by length of at most 1000 kg/m")
                        : Parsed.of(new LinearMass(milligrams.longValueExact())));
    }

    private static Parsed<BigDecimal> grams(BigDecimal number, String unit, String expected) {
        BigDecimal each = GRAMS.get(unit.equals("lbs") ? "lb" : unit);
        if (each == null) {
            return Parsed.refused(expected);
        }
        BigDecimal grams = number.multiply(each);
        return grams.compareTo(MOST_GRAMS) > 0 ? Parsed.refused("a mass of at most 1000 t") : Parsed.of(grams);
    }

    private static long whole(BigDecimal number) {
        return number.setScale(0, RoundingMode.HALF_UP).longValueExact();
    }
}
