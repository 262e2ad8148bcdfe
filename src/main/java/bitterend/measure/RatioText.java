package bitterend.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How shares and factors are read and printed: {@code 15 %}, {@code 0.15}, {@code 4/3}. */
public final class RatioText {
    private static final String EXPECTED = "a number such as 0.15, 15 % or 4/3";
    private static final Pattern FRACTION = Pattern.compile("(?<above>[0-9]{1,18}) ?/ ?(?<below>[0-9]{1,18})");
    private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.HALF_UP);
    private static final BigDecimal MOST = new BigDecimal("1000000");

    private RatioText() {}

    /** Exact; negative with a leading minus. */
    public static Parsed<Ratio> parse(String text) {
        String stripped = text.strip();
        boolean negative = stripped.startsWith("-");
        String unsigned = (negative ? stripped.substring(1) : stripped).strip();
        Matcher fraction = FRACTION.matcher(unsigned);
        Parsed<Ratio> ratio = fraction.matches()
                ? fraction(fraction.group("above"), fraction.group("below"))
                : Amount.one(unsigned, EXPECTED).then(RatioText::decimal);
        return ratio.map(size -> negative ? new Ratio(-size.numerator(), size.denominator()) : size);
    }

    /** The form for files: a decimal number where it is exact with at most nine digits, otherwise {@code 4/3}. */
    public static String exact(Ratio ratio) {
        BigDecimal shown = decimal(ratio, 9);
        boolean same =
                shown.multiply(BigDecimal.valueOf(ratio.denominator())).compareTo(BigDecimal.valueOf(ratio.numerator()))
                        == 0;
        return same ? LengthText.plain(shown) : ratio.numerator() + "/" + ratio.denominator();
    }

    /** For people: {@code 15 %}, to the nearest hundredth of a per cent, what is less than that to two digits. */
    public static String percent(Ratio ratio) {
        BigDecimal near = decimal(ratio, 4);
        BigDecimal shown = near.signum() == 0
                ? BigDecimal.valueOf(ratio.numerator()).divide(BigDecimal.valueOf(ratio.denominator()), TWO_DIGITS)
                : near;
        return LengthText.plain(shown.movePointRight(2)) + " %";
    }

    private static Parsed<Ratio> fraction(String above, String below) {
        return new BigDecimal(below).signum() == 0
                ? Parsed.refused(EXPECTED)
                : Parsed.of(new Ratio(Long.parseLong(above), Long.parseLong(below)));
    }

    private static Parsed<Ratio> decimal(Amount amount) {
        if (amount.number().compareTo(MOST) > 0) {
            return Parsed.refused("a number of at most " + MOST.toPlainString());
        }
        return switch (amount.unit()) {
            case "" -> Parsed.of(Ratio.of(amount.number()));
            case "%" -> Parsed.of(Ratio.of(amount.number().movePointLeft(2)));
            default -> Parsed.refused(EXPECTED);
        };
    }

    private static BigDecimal decimal(Ratio ratio, int digits) {
        return BigDecimal.valueOf(ratio.numerator())
                .divide(BigDecimal.valueOf(ratio.denominator()), digits, RoundingMode.HALF_UP);
    }
}
