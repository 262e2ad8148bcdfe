package bitterend.exchange.form;

import bitterend.measure.Parsed;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.FormatStyle;
import java.time.format.ResolverStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How days and figures are typed where a shop is, as Java knows it: what is typed becomes the one form of the files, a day as
 * {@code 2026-03-05} and a decimal point. The form of the files is understood everywhere; what could mean two things is
 * refused, and nothing is guessed.
 */
public final class LocalForm {
    /** Of no place in particular: the form of the files alone. */
    public static final LocalForm NONE = new LocalForm("", List.of(), '.');

    private static final Pattern ISO = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    /** Digits with signs between them, as in {@code 1.500,25}; not those of an id such as {@code T1.250} or {@code fork-1.250}. */
    private static final Pattern FIGURE =
            Pattern.compile("(?<![\\p{L}\\p{N}_.,#]|[\\p{L}\\p{N}][-/])[0-9]++(?:[.,][0-9]++)++(?!-[\\p{L}\\p{N}])");

    private static final Pattern THOUSANDS = Pattern.compile("[0-9]{1,3}(?:[.,][0-9]{3})+");
    private static final String EXPECTED = "a place such as de-DE, en-GB or en-US";

    private final String tag;
    private final List<DateTimeFormatter> days;
    private final char point;

    private LocalForm(String tag, List<DateTimeFormatter> days, char point) {
        this.tag = tag;
        this.days = days;
        this.point = point;
    }

    /** The form of a place, by its language and country. */
    public static Parsed<LocalForm> of(String tag) {
        Locale locale = Locale.forLanguageTag(tag);
        boolean known = Arrays.asList(Locale.getAvailableLocales()).contains(locale);
        char point = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
        if (!known || locale.getCountry().isEmpty() || (point != '.' && point != ',')) {
            return Parsed.refused(EXPECTED);
        }
        String pattern = DateTimeFormatterBuilder.getLocalizedDateTimePattern(
                FormatStyle.SHORT, null, IsoChronology.INSTANCE, locale);
        String plain = pattern.replaceAll("d+", "d").replaceAll("M+", "M");
        return plain.matches("[dMyu./ -]+")
                ? Parsed.of(
                        new LocalForm(locale.toLanguageTag(), List.of(days(plain, "uuuu"), days(plain, "uu")), point))
                : Parsed.refused(EXPECTED);
    }

    /** Days in one order, whatever separates their parts, and figures with this decimal sign, as a reader of a sheet said. */
    public static LocalForm stated(DayOrder order, char point) {
        return new LocalForm(
                order.word(),
                order.patterns().stream()
                        .map(pattern -> DateTimeFormatter.ofPattern(pattern, Locale.ROOT)
                                .withResolverStyle(ResolverStyle.STRICT))
                        .toList(),
                point);
    }

    /** In which order days are typed; empty for no place in particular. */
    public Optional<DayOrder> order() {
        return days.stream()
                .findFirst()
                .map(form -> LocalDate.of(2026, 12, 31).format(form))
                .map(day -> day.startsWith("31")
                        ? DayOrder.DAY_FIRST
                        : day.startsWith("12") ? DayOrder.MONTH_FIRST : DayOrder.YEAR_FIRST);
    }

    /** The decimal sign. */
    public char point() {
        return point;
    }

    private static DateTimeFormatter days(String pattern, String year) {
        return DateTimeFormatter.ofPattern(pattern.replaceAll("[yu]+", year), Locale.ROOT)
                .withResolverStyle(ResolverStyle.STRICT);
    }

    /** Language and country, such as {@code de-DE}; empty for no place in particular. */
    public String tag() {
        return tag;
    }

    /** A day in the form of the files; without a place the text as it is. */
    public Parsed<String> day(String text) {
        if (days.isEmpty() || ISO.matcher(text).matches()) {
            return Parsed.of(text);
        }
        for (DateTimeFormatter form : days) {
            try {
                return Parsed.of(LocalDate.parse(text, form).toString());
            } catch (DateTimeParseException otherForm) {
                // the next one
            }
        }
        LocalDate example = LocalDate.of(2026, 12, 31);
        return Parsed.refused("a day with its year, such as " + example.format(days.get(0)) + " or " + example);
    }

    /**
     * Figures in the form of the files, in whatever words are around them. Where the decimal sign is a comma, a point before
     * three digits could part thousands; elsewhere a comma could.
     */
    public Parsed<String> figures(String text) {
        if (tag.isEmpty()) {
            return Parsed.of(text);
        }
        StringBuilder plain = new StringBuilder();
        Matcher figure = FIGURE.matcher(text);
        int from = 0;
        while (figure.find()) {
            Parsed<String> one = figure(figure.group());
            if (one.value().isEmpty()) {
                return one;
            }
            plain.append(text, from, figure.start()).append(one.value().get());
            from = figure.end();
        }
        return Parsed.of(plain.append(text.substring(from)).toString());
    }

    /**
     * Figures of a file in the form of the files: a decimal comma becomes a point where the place has one, a point stays
     * what it is everywhere. What can mean two things stays as it is.
     */
    String decimals(String text) {
        if (point != ',') {
            return text;
        }
        return FIGURE.matcher(text)
                .replaceAll(figure ->
                        isDecimalComma(figure.group()) ? figure.group().replace(',', '.') : figure.group());
    }

    private static boolean isDecimalComma(String figure) {
        return figure.indexOf(',') >= 0 && figure.indexOf(',') == figure.lastIndexOf(',') && figure.indexOf('.') < 0;
    }

    /** A figure of a file that would be another one if its points parted thousands; empty where there is none. */
    String twoMeanings(String text) {
        Matcher figure = FIGURE.matcher(text);
        while (point == ',' && figure.find()) {
            if (figure.group().indexOf(',') < 0
                    && THOUSANDS.matcher(figure.group()).matches()) {
                return figure.group();
            }
        }
        return "";
    }

    private Parsed<String> figure(String typed) {
        boolean one = typed.chars().filter(sign -> sign == '.' || sign == ',').count() == 1;
        char sign = typed.replaceAll("[0-9]", "").charAt(0);
        if (one && sign == point) {
            return Parsed.of(typed.replace(point, '.'));
        }
        if (one && sign == '.' && !THOUSANDS.matcher(typed).matches()) {
            return Parsed.of(typed);
        }
        String digits = typed.replaceAll("[.,]", "");
        String parted =
                typed.replaceAll("[.,](?=[0-9]*$)", String.valueOf(point)).replaceAll("[.,](?=.*[.,])", "");
        return Parsed.refused("a figure that means one thing: " + digits + ", or " + parted + " with the decimal sign "
                + (point == ',' ? "of this place" : "a point"));
    }
}
