package bitterend.exchange;

import bitterend.exchange.form.Readings;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.Written;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How what is typed about the rack is understood, in a file and anywhere else: by the same rules. */
public final class StockText {
    private static final int LONGEST_LOT = 60;
    private static final int MOST_WEEKS = 520;
    private static final Pattern MINUTES = Pattern.compile("([1-9][0-9]{0,3})(?: *min)?");

    private StockText() {}

    /** The id of a reel. */
    public static Parsed<String> reel(String text) {
        return Readings.id(text);
    }

    /** The number of an order. */
    public static Parsed<String> order(String text) {
        return Readings.orderId(text);
    }

    /** A production run, or a number on a certificate. */
    public static Parsed<String> lot(String text) {
        return Readings.mark(text)
                .then(lot -> lot.codePointCount(0, lot.length()) <= LONGEST_LOT
                        ? Parsed.of(lot)
                        : Parsed.refused("at most " + LONGEST_LOT + " characters on one line"));
    }

    /** Words for people, on one line. */
    public static Parsed<String> words(String text) {
        return Readings.text(text);
    }

    /** Rope that is there: above nothing, rounded down. */
    public static Parsed<Length> length(String text) {
        return Readings.presentLength(text);
    }

    /** The same as it was typed. */
    public static Parsed<Written> asTyped(String text) {
        return Readings.presentAsWritten(text);
    }

    /** A bare figure with the unit that is said beside its box, {@code 18.6} as {@code 18.6 m}; all else as it is. */
    public static String inUnit(String text, String unit) {
        String figure = text.strip();
        return figure.matches("[0-9]+([.][0-9]+)?") && !unit.isEmpty() ? figure + " " + unit : text;
    }

    /** An uncertainty, a trim, wraps that cannot be used: not negative, rounded up. */
    public static Parsed<Length> allowance(String text) {
        return Readings.allowance(text);
    }

    /** What was paid for a reel of a length: for the reel, or by length, then rounded up to the smallest coin. */
    public static Parsed<Money> paid(String text, Length length, MoneyText money) {
        return OffersCsv.price(text, length, money);
    }

    /** An amount of money that is not negative. */
    public static Parsed<Money> amount(String text, MoneyText money) {
        return OffersCsv.amount(text, money);
    }

    /** A day. */
    public static Parsed<LocalDate> day(String text) {
        return Readings.day(text);
    }

    /** Minutes that somebody worked: {@code 75}, {@code 75 min}; from 1 to 9999. */
    public static Parsed<Integer> minutes(String text) {
        Matcher found = MINUTES.matcher(text.strip());
        return found.matches()
                ? Parsed.of(Integer.parseInt(found.group(1)))
                : Parsed.refused("whole minutes from 1 to 9999, such as 75 or 75 min");
    }

    /** A share from 50 to 99.9 %, {@code 95} or {@code 95 %}. */
    public static Parsed<Ratio> service(String text) {
        String figure = text.strip();
        return RatioText.parse(figure.endsWith("%") ? figure : figure + " %")
                .then(part -> part.compareTo(new Ratio(1, 2)) < 0 || part.compareTo(new Ratio(999, 1000)) > 0
                        ? Parsed.refused("a share from 50 to 99.9 %, such as 95 or 97.5 %")
                        : Parsed.of(part));
    }

    /** Whole weeks, up to ten years. */
    public static Parsed<Integer> weeks(String text) {
        Parsed<Integer> weeks = Readings.whole(1, MOST_WEEKS).read(text);
        return weeks.value().isPresent() ? weeks : Parsed.refused("a number of weeks from 1 to " + MOST_WEEKS);
    }

    /** How much shorter a delivery may be: {@code 2}, {@code 2 %}, {@code 1.5 %}; from 0 to 50. */
    public static Parsed<Ratio> tolerance(String text) {
        String figure = text.strip();
        boolean share = figure.endsWith("%");
        return RatioText.parse(share ? figure : figure + " %")
                .then(part -> part.isNegative() || part.compareTo(new Ratio(1, 2)) > 0
                        ? Parsed.refused("a share from 0 to 50 %, such as 2 or 1.5 %")
                        : Parsed.of(part));
    }
}
