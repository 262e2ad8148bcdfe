package bitterend.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How diameters are read and printed: {@code 12 mm}, {@code 1/2 in}, {@code 5 in circ}, {@code size 5}.
 *
 * <p>A circumference is a measured one: D = C / pi. A size number is the trade's nominal size, a circumference in inches
 * with C mm = 3 x D mm, which makes it 8 mm for each: size 3 is 24 mm, size 6 is 48 mm (OCIMF, Mooring Equipment
 * Guidelines, 2nd ed., Table 6.5, note 1). The two differ by about one per cent, so neither is read as the other.
 */
public final class DiameterText {
    private static final String EXPECTED =
            "a diameter with its unit, such as 12 mm, 1/2 in, 5 in circ (a circumference) or size 5";
    private static final BigDecimal THICKEST_MM = new BigDecimal("1000");
    private static final BigDecimal PI = new BigDecimal("3.14159265358979323846264338327950288");
    private static final BigDecimal MM_PER_SIZE = new BigDecimal("8");
    private static final Pattern CIRCUMFERENCE =
            Pattern.compile("(?<length>.*[^a-z])? *circ(?:\\.|umference)?", Pattern.DOTALL);
    private static final Pattern SIZE = Pattern.compile("size *(?<number>.*)", Pattern.DOTALL);

    private DiameterText() {}

    /** Rounded up to 0.0001 mm; more than nothing and at most a metre. */
    public static Parsed<Diameter> parse(String text) {
        return millimetres(text.strip().toLowerCase(Locale.ROOT))
                .then(mm -> mm.signum() <= 0 || mm.compareTo(THICKEST_MM) > 0
                        ? Parsed.refused("a diameter above 0 and of at most 1 m")
                        : Parsed.of(new Diameter(units(mm))));
    }

    /** The form for files: {@code 12 mm}, {@code 28.2977 mm}. */
    public static String exact(Diameter diameter) {
        return LengthText.exact(diameter.asLength());
    }

    /**
     * For people: {@code 12 mm}, to the nearest 0.01 mm; {@code 1/2 in} where sixteenths say it exactly, otherwise the
     * nearest of them behind it, {@code 12 mm (1/2 in)}.
     */
    public static String print(Diameter diameter, Units units) {
        String metric = LengthText.plain(BigDecimal.valueOf(LengthText.nearest(diameter.units(), 100), 2)) + " mm";
        if (units == Units.METRIC) {
            return metric;
        }
        String inches = FeetAndInches.nearest(diameter.asLength()).inches() + " in";
        return diameter.units() % FeetAndInches.UNITS_PER_SIXTEENTH == 0 ? inches : metric + " (" + inches + ")";
    }

    private static Parsed<BigDecimal> millimetres(String text) {
        Matcher size = SIZE.matcher(text);
        if (size.matches()) {
            return Amount.one(size.group("number"), EXPECTED)
                    .then(amount -> amount.unit().isEmpty()
                            ? Parsed.of(amount.number().multiply(MM_PER_SIZE))
                            : Parsed.refused(EXPECTED));
        }
        Matcher circumference = CIRCUMFERENCE.matcher(text);
        if (circumference.matches()) {
            String length = circumference.group("length");
            return LengthText.millimetres(length == null ? "" : length, EXPECTED)
                    .map(mm -> mm.divide(PI, MathContext.DECIMAL128));
        }
        return LengthText.millimetres(text, EXPECTED);
    }

    private static long units(BigDecimal mm) {
        return mm.multiply(BigDecimal.valueOf(FineLength.UNITS_PER_MM))
                .setScale(0, RoundingMode.CEILING)
                .longValueExact();
    }
}
