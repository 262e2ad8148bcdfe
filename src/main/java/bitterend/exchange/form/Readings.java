package bitterend.exchange.form;

import bitterend.finding.Unseen;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import bitterend.measure.Written;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The ways in which fields of several files are understood. None depends on locale or time zone. */
public final class Readings {
    private static final Pattern ID = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ._#+/()-]{0,39}");
    private static final Pattern ORDER_ID = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ._#+()-]{0,39}");
    private static final Pattern PLANNED_REEL = Pattern.compile(ID.pattern() + "(:[1-9][0-9]{0,3})?");
    private static final Pattern TEXT = Pattern.compile("[^\\p{Cntrl}\\u0080-\\u009F\\u2028\\u2029]{1,200}");
    private static final Pattern BLANKS = Pattern.compile("\\p{Zs}");
    private static final Pattern JOINTS = Pattern.compile("[\\s_-]+");
    private static final Pattern TYPED_DAY = Pattern.compile("[0-9]{1,2}[./-][0-9]{1,2}[./-]([0-9]{2}){1,2}");
    private static final Pattern WHOLE = Pattern.compile("[0-9]{1,9}");
    private static final Length LONGEST = Length.ofMetres(20_000);

    private Readings() {}

    /** The id of a rope, a reel, a product. */
    public static Parsed<String> id(String text) {
        return matching(ID, text, "an id of at most 40 letters, digits, blanks and . _ # + / ( ) -");
    }

    /** The number of an order or a line: an id without a slash. */
    public static Parsed<String> orderId(String text) {
        return matching(ORDER_ID, text, "an id of at most 40 letters, digits, blanks and . _ # + ( ) -");
    }

    /** A reel of a plan: one of the rack, or one that is on order, which has the number of its order and a colon in its id. */
    public static Parsed<String> plannedReel(String text) {
        return matching(PLANNED_REEL, text, "the id of a reel, or the number of an order of reels, a colon and which");
    }

    /** Words for people, on one line. */
    public static Parsed<String> text(String text) {
        return matching(TEXT, text, "at most 200 characters on one line, none of control");
    }

    /**
     * A lot, or what a certificate is called or numbered: compared with others, so that no character counts that nobody sees. A
     * blank is a blank, however wide or unbreakable it was typed.
     */
    public static Parsed<String> mark(String text) {
        return text(text).map(Unseen::plain);
    }

    /** Blanks of other widths, such as spreadsheets and web pages put between words, as plain ones. */
    static String blanks(String text) {
        return BLANKS.matcher(text).replaceAll(" ");
    }

    private static Parsed<String> matching(Pattern pattern, String text, String expected) {
        String plain = blanks(text);
        return pattern.matcher(plain).matches() ? Parsed.of(plain) : Parsed.refused(expected);
    }

    /** Something to cut: above nothing, rounded up. */
    public static Parsed<Length> wantedLength(String text) {
        return LengthText.parse(text).then(Readings::positive);
    }

    /** The same as it was written. */
    public static Parsed<Written> wantedAsWritten(String text) {
        return wantedLength(text).then(sound -> Written.parse(text));
    }

    /** An allowance as it was written. */
    public static Parsed<Written> allowanceAsWritten(String text) {
        return allowance(text).then(sound -> Written.parse(text));
    }

    /** What cut lengths are rounded up to a multiple of: above nothing, at most 1 m, exact to 0.0001 mm. */
    public static Parsed<FineLength> step(String text) {
        return LengthText.parseFine(text)
                .then(step -> step.isPositive() && step.compareTo(FineLength.ofMillimetres(1000)) <= 0
                        ? Parsed.of(step)
                        : Parsed.refused("a length above 0 and of at most 1 m"));
    }

    /** Something that is there: above nothing, rounded down. */
    public static Parsed<Length> presentLength(String text) {
        return LengthText.parseRoundedDown(text).then(Readings::positive);
    }

    /** The same as it was written. */
    public static Parsed<Written> presentAsWritten(String text) {
        return presentLength(text).then(sound -> Written.parsePresent(text));
    }

    /** What was worked out from a length that may be the longest, its ends and allowances on top: above nothing. */
    public static Parsed<Length> workedLength(String text) {
        return LengthText.parse(text)
                .then(length -> length.isPositive() ? Parsed.of(length) : Parsed.refused("a length above 0"));
    }

    /** An allowance or an uncertainty: not negative, rounded up. */
    public static Parsed<Length> allowance(String text) {
        return LengthText.parse(text)
                .then(length -> length.isNegative() || length.isLongerThan(LONGEST)
                        ? Parsed.refused("a length from 0 to 20 km")
                        : Parsed.of(length));
    }

    private static Parsed<Length> positive(Length length) {
        return length.isPositive() && !length.isLongerThan(LONGEST)
                ? Parsed.of(length)
                : Parsed.refused("a length above 0 and of at most 20 km");
    }

    /** A day as {@code 2026-03-02}, between 1900 and 2199. */
    public static Parsed<LocalDate> day(String text) {
        String expected = "a day such as 2026-03-02";
        try {
            LocalDate day = LocalDate.parse(text, DateTimeFormatter.ISO_LOCAL_DATE);
            return day.getYear() >= 1900 && day.getYear() < 2200 ? Parsed.of(day) : Parsed.refused(expected);
        } catch (DateTimeParseException notADay) {
            return Parsed.refused(expected);
        }
    }

    /** A day in a table, which a place may type in its own way; the refusal says how that is told. */
    public static Parsed<LocalDate> dayOfTable(String text) {
        boolean local = TYPED_DAY.matcher(text).matches();
        return local
                ? Parsed.refused("a day such as 2026-03-02, or the place whose days these are as locale in shop.json")
                : day(text);
    }

    /** A whole number between two others, both included. */
    public static Reading<Integer> whole(int from, int to) {
        String expected = "a whole number from " + from + " to " + to;
        return text -> {
            if (!WHOLE.matcher(text).matches()) {
                return Parsed.refused(expected);
            }
            int number = Integer.parseInt(text);
            return number >= from && number <= to ? Parsed.of(number) : Parsed.refused(expected);
        };
    }

    /** What is said of settings of an older value curve. */
    public static final String GONE =
            "nothing: a coil is worth what it saves later less interest and room, so that this has" + " no effect";

    /** {@code yes} or {@code no}. */
    public static Parsed<Boolean> yesOrNo(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "true" -> Parsed.of(true);
            case "no", "false" -> Parsed.of(false);
            default -> Parsed.refused("yes or no");
        };
    }

    /** One of a few words; case, hyphens and underscores do not matter. */
    public static <T> Reading<T> word(T[] values, Function<T, String> word) {
        Map<String, T> byWord = new TreeMap<>();
        for (T value : values) {
            byWord.put(plain(word.apply(value)), value);
        }
        String expected = "one of: " + Arrays.stream(values).map(word).collect(Collectors.joining(", "));
        return text -> {
            T value = byWord.get(plain(text));
            return value == null ? Parsed.refused(expected) : Parsed.of(value);
        };
    }

    /** A word with blanks for hyphens and underscores, in lower case. */
    public static String plain(String word) {
        return JOINTS.matcher(word.strip().toLowerCase(Locale.ROOT)).replaceAll(" ");
    }
}
