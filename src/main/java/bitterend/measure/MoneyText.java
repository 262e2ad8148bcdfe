package bitterend.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How money is read and printed in the shop's one currency: {@code 12.50 EUR}; by length {@code 1.85 EUR/m},
 * {@code 62 EUR/100 ft}. The code may be left out when reading; another code is refused.
 *
 * @param currency three capital letters
 * @param minorDigits digits behind the point: 2 for cents, 0 where there is no smaller coin
 */
public record MoneyText(String currency, int minorDigits) {
    /** Stands in where no currency is known; ISO 4217 keeps the code XXX for "no currency". */
    public static final MoneyText NO_CURRENCY = new MoneyText("XXX", 2);

    /** The most that is typed as one amount, and that a metre may cost, in minor units: 20 km of it can be added up and more. */
    private static final BigDecimal MOST_TYPED = new BigDecimal("1000000000");

    private static final BigDecimal MOST_A_METRE = new BigDecimal("3000000");
    private static final BigDecimal MOST_MINOR = new BigDecimal("1000000000000");
    private static final Pattern BY_LENGTH =
            Pattern.compile("(?<code>[^/ ]*) ?/ ?(?<count>[0-9]{0,4}) ?(?<unit>\\p{L}+)");

    private static final Map<String, Long> MICROGRAMS =
            Map.of("kg", 1_000_000_000L, "t", 1_000_000_000_000L, "lb", 453_592_370L, "lbs", 453_592_370L);

    public MoneyText {
        if (!currency.matches("[A-Z]{3}") || minorDigits < 0 || minorDigits > 4) {
            throw new IllegalArgumentException("currency " + currency + " with " + minorDigits + " minor digits");
        }
    }

    /** An amount of money; negative with a leading minus. Finer than the smallest coin is refused. */
    public Parsed<Money> parse(String text) {
        String stripped = text.strip();
        boolean negative = stripped.startsWith("-");
        return Amount.one(negative ? stripped.substring(1) : stripped, expected())
                .then(amount -> isOurs(amount.unit()) ? minor(amount.number(), MOST_TYPED) : Parsed.refused(expected()))
                .then(minor -> minor.stripTrailingZeros().scale() > 0
                        ? Parsed.refused(expected() + ", with at most " + minorDigits + " digits behind the point")
                        : Parsed.of(new Money(negative ? -minor.longValueExact() : minor.longValueExact())));
    }

    /** An amount of money down to 1/1000 of a minor unit, as {@link #exact(Cost)} writes it. */
    public Parsed<Cost> parseExact(String text) {
        String stripped = text.strip();
        boolean negative = stripped.startsWith("-");
        return Amount.one(negative ? stripped.substring(1) : stripped, expected())
                .then(amount -> isOurs(amount.unit()) ? minor(amount.number(), MOST_MINOR) : Parsed.refused(expected()))
                .map(minor -> minor.movePointRight(3))
                .then(millis -> millis.stripTrailingZeros().scale() > 0
                        ? Parsed.refused(
                                expected() + ", with at most " + (minorDigits + 3) + " digits behind the point")
                        : Parsed.of(new Cost(negative ? -millis.longValueExact() : millis.longValueExact())));
    }

    /** A price by length, to the nearest 1/1000 minor unit per metre. */
    public Parsed<UnitPrice> parseByLength(String text) {
        return Amount.one(text, expectedByLength()).then(this::byLength);
    }

    /** A price by mass, such as {@code 0.45 EUR/kg} or {@code 20 USD/100 lb}, down to 1/1000 of a minor unit. */
    public Parsed<MassPrice> parseByMass(String text) {
        return Amount.one(text, expectedByMass()).then(this::byMass);
    }

    /** {@code 12.50 EUR}, exact. */
    public String print(Money money) {
        return BigDecimal.valueOf(money.minor(), minorDigits).toPlainString() + " " + currency;
    }

    /** Rounded to the smallest coin for people. */
    public String print(Cost cost) {
        return print(cost.rounded());
    }

    /** {@code 12.50125 EUR}: every thousandth of a minor unit, without trailing zeros. */
    public String exact(Cost cost) {
        return LengthText.plain(BigDecimal.valueOf(cost.millis(), minorDigits + 3)) + " " + currency;
    }

    /** {@code 1.85 EUR/m}: exact. */
    public String exact(UnitPrice price) {
        return LengthText.plain(BigDecimal.valueOf(price.millisPerMetre(), minorDigits + 3)) + " " + currency + "/m";
    }

    private Parsed<UnitPrice> byLength(Amount amount) {
        Matcher parts = BY_LENGTH.matcher(amount.unit());
        if (!parts.matches() || !isOurs(parts.group("code"))) {
            return Parsed.refused(expectedByLength());
        }
        Optional<LengthUnit> unit = LengthUnit.of(parts.group("unit"));
        BigDecimal count = parts.group("count").isEmpty() ? BigDecimal.ONE : new BigDecimal(parts.group("count"));
        if (unit.isEmpty() || count.signum() == 0) {
            return Parsed.refused(expectedByLength());
        }
        BigDecimal metres = unit.get().times(count).movePointLeft(3);
        return minor(amount.number(), MOST_MINOR)
                .map(minor -> minor.movePointRight(3).divide(metres, 0, RoundingMode.HALF_UP))
                .then(millis -> millis.compareTo(MOST_A_METRE.movePointRight(3)) > 0
                        ? Parsed.refused("a price of at most " + most(MOST_A_METRE) + "/m")
                        : Parsed.of(new UnitPrice(millis.longValueExact())));
    }

    private Parsed<MassPrice> byMass(Amount amount) {
        Matcher parts = BY_LENGTH.matcher(amount.unit());
        Long each = parts.matches() ? MICROGRAMS.get(parts.group("unit")) : null;
        if (each == null || !isOurs(parts.group("code")) || parts.group("count").matches("0+")) {
            return Parsed.refused(expectedByMass());
        }
        long count = parts.group("count").isEmpty() ? 1 : Long.parseLong(parts.group("count"));
        return minor(amount.number(), MOST_A_METRE)
                .map(minor -> minor.movePointRight(3))
                .then(millis -> millis.stripTrailingZeros().scale() > 0
                        ? Parsed.refused(
                                expectedByMass() + ", with at most " + (minorDigits + 3) + " digits behind the point")
                        : Parsed.of(new MassPrice(millis.longValueExact(), Math.multiplyExact(each, count))));
    }

    private Parsed<BigDecimal> minor(BigDecimal number, BigDecimal most) {
        BigDecimal minor = number.movePointRight(minorDigits);
        return minor.compareTo(most) > 0 ? Parsed.refused("an amount of at most " + most(most)) : Parsed.of(minor);
    }

    /** The most that is read as one amount: {@code 10000000.00 EUR}. */
    public String most() {
        return most(MOST_TYPED);
    }

    private String most(BigDecimal minor) {
        return print(new Money(minor.longValueExact()));
    }

    private boolean isOurs(String unit) {
        return unit.isEmpty() || unit.equals(currency.toLowerCase(Locale.ROOT));
    }

    private String expected() {
        return "an amount of money such as " + print(new Money(1250));
    }

    private String expectedByMass() {
        return "a price by mass such as 0.45 " + currency + "/kg or 20 " + currency + "/100 lb";
    }

    private String expectedByLength() {
        return "a price by length such as 1.85 " + currency + "/m or 62 " + currency + "/100 ft";
    }
}
