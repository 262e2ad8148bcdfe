package bitterend.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number and the unit behind it, as typed: {@code 12.5 m}, {@code 6 1/2 in}. Exact; the same under every locale.
 *
 * @param number never negative
 * @param unit in lower case; empty when there was none
 */
record Amount(BigDecimal number, String unit) {
    private static final int LONGEST_TEXT = 60;
    private static final String DECIMAL = "(?<decimal>[0-9]{1,12}(?:\\.[0-9]{1,9})?)";
    private static final String FRACTION =
            "(?:(?<whole>[0-9]{1,6})(?: +|-))?(?<above>[0-9]{1,3})/(?<below>2|4|8|16|32|64)";
    private static final String UNIT = "(?<unit>''|['\"]|[\\p{L}$€£%]*(?: ?/ ?[0-9]{0,4} ?\\p{L}+)?)";
    private static final Pattern BLANKS = Pattern.compile("[\\s\u00a0\u2009\u202f]+");
    private static final Pattern FOOT_MARKS = Pattern.compile("[\u2032\u2019]");
    private static final Pattern INCH_MARKS = Pattern.compile("[\u2033\u201d]");
    private static final Pattern TERM = Pattern.compile("(?:" + FRACTION + "(?![0-9/])|" + DECIMAL + ") *" + UNIT);

    /** The amounts of a text, one or more, such as {@code 41 ft 6 in}; {@code expected} tells what was wanted. */
    static Parsed<List<Amount>> all(String text, String expected) {
        String plain = plain(text);
        if (plain.indexOf(',') >= 0) {
            return Parsed.refused(
                    expected
                            + ", written with a decimal point and no thousands mark: a comma is refused because it could mean either");
        }
        if (plain.isEmpty() || plain.length() > LONGEST_TEXT) {
            return Parsed.refused(expected);
        }
        List<Amount> amounts = new ArrayList<>();
        Matcher term = TERM.matcher(plain);
        int at = 0;
        while (at < plain.length()) {
            if (!term.find(at) || term.start() != at) {
                return Parsed.refused(expected);
            }
            amounts.add(of(term));
            at = term.end();
            while (at < plain.length() && plain.charAt(at) == ' ') {
                at++;
            }
        }
        return Parsed.of(List.copyOf(amounts));
    }

    /** The one amount of a text. */
    static Parsed<Amount> one(String text, String expected) {
        return all(text, expected)
                .then(amounts -> amounts.size() == 1 ? Parsed.of(amounts.get(0)) : Parsed.refused(expected));
    }

    private static Amount of(Matcher term) {
        String unit = term.group("unit").toLowerCase(Locale.ROOT);
        if (term.group("decimal") != null) {
            return new Amount(new BigDecimal(term.group("decimal")), unit);
        }
        BigDecimal whole = term.group("whole") == null ? BigDecimal.ZERO : new BigDecimal(term.group("whole"));
        BigDecimal part = new BigDecimal(term.group("above")).divide(new BigDecimal(term.group("below")));
        return new Amount(whole.add(part), unit);
    }

    /** One kind of blank, one kind of foot and inch mark, none at the ends. */
    private static String plain(String text) {
        String blanks = BLANKS.matcher(text).replaceAll(" ");
        String feet = FOOT_MARKS.matcher(blanks).replaceAll("'");
        return INCH_MARKS.matcher(feet).replaceAll("\"").strip();
    }
}
