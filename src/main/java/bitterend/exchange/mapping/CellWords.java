package bitterend.exchange.mapping;

import bitterend.exchange.form.LocalForm;
import bitterend.exchange.form.Readings;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.MassText;
import bitterend.measure.Parsed;
import bitterend.measure.Units;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Brings single cells into the form of the files, by what their column is. Nothing is guessed: what may mean two things is asked. */
final class CellWords {
    /** How the id of a question for the unit of a column begins. */
    static final String UNIT = "unit ";

    /** The id of the question for how much rope prices are. */
    static final String PRICE_BY = "price by";

    private static final Set<String> LENGTHS = Set.of("length", "spare", "usualReel");
    private static final Set<String> DAYS = Set.of("due", "received");
    private static final Set<String> COUNTS = Set.of("quantity", "legs", "priority");
    private static final Set<String> IDS = Set.of("order", "line", "reel", "id", "set", "lot");
    private static final Set<String> WITH_FIGURES = Set.of("length", "spare", "usualReel", "diameter", "price", "mass");
    private static final Pattern BARE = Pattern.compile("[+-]?[0-9]+(\\.[0-9]+)?|[0-9]+/[0-9]+|[0-9]+ [0-9]+/[0-9]+");
    private static final Pattern PIECES = Pattern.compile("([0-9]+)(?:\\.0+)? ?(?:x|[\\p{L}]{1,6}\\.?)?");
    /** How headings say for how much rope a price is, the more exact ones first. */
    private static final Map<String, String> BY_LENGTH = new LinkedHashMap<>();

    static {
        BY_LENGTH.put("100 ?(ft|feet)", "100 ft");
        BY_LENGTH.put("100 ?m\\b", "100 m");
        // the length of a reel, as in "per reel of 220 m", is none of these
        String alone = "(?<![0-9])(?<![0-9] )\\b";
        BY_LENGTH.put(alone + "(ft|foot|feet)\\b", "ft");
        BY_LENGTH.put(alone + "m\\b|met(re|er)|metro|m\u00e8tre", "m");
    }

    private static final Pattern CODE = Pattern.compile("\\b[A-Z]{3}\\b");
    private static final Set<String> CURRENCIES = Currency.getAvailableCurrencies().stream()
            .map(Currency::getCurrencyCode)
            .collect(Collectors.toSet());
    private static final Pattern MONEY =
            Pattern.compile("(?:[A-Za-z]{3}|[\u20ac$\u00a3])? ?([0-9]+(?:\\.[0-9]+)?) ?(.*)");

    private final Known known;
    private final Answers answers;
    private final SheetForm.Form how;
    private final LocalForm form;

    CellWords(Known known, Answers answers, SheetForm.Form how) {
        this.known = known;
        this.answers = answers;
        this.how = how;
        this.form = how.local();
    }

    static boolean isDay(String member) {
        return DAYS.contains(member);
    }

    static boolean hasFigures(String member) {
        return WITH_FIGURES.contains(member);
    }

    /**
     * A cell of a file; nothing while a question about it is open.
     *
     * @param exact whether its figures mean one thing, as in a cell of a workbook that holds a number
     */
    Optional<Parsed<String>> of(Column column, String cell, boolean exact) {
        return exact
                ? new CellWords(known, answers, new SheetForm.Form(LocalForm.NONE, true, true)).of(column, cell)
                : of(column, cell);
    }

    private Optional<Parsed<String>> of(Column column, String cell) {
        String text = cell.replaceAll("\\s+", " ").strip();
        String member = column.member();
        if ((DAYS.contains(member) && !how.days()) || (hasFigures(member) && !how.figures())) {
            return Optional.empty();
        }
        if (LENGTHS.contains(member)) {
            return length(column, text);
        }
        if (DAYS.contains(member)) {
            return Optional.of(form.day(SheetForm.withoutTime(text))
                    .then(day -> Readings.day(day).map(Object::toString)));
        }
        return switch (member) {
            case "diameter" -> diameter(column, text);
            case "price" -> price(column, text);
            case "mass" -> mass(column, text);
            case "full" -> Optional.of(
                    TradeWords.builtIn().meaning("yes", text).map(Parsed::of).orElse(Parsed.refused("yes or no")));
            case "lay" -> Optional.of(Parsed.of(text));
            default -> Optional.of(
                    COUNTS.contains(member) ? count(text) : IDS.contains(member) ? id(member, text) : words(text));
        };
    }

    private static Parsed<String> words(String text) {
        return Readings.text(text);
    }

    /** A sign that ids do not have becomes a hyphen, as in {@code 2026/114}. */
    private static Parsed<String> id(String member, String text) {
        String plain = member.equals("reel") || member.equals("id") ? text : text.replace('/', '-');
        String whole = plain.matches("[0-9]+\\.0+") ? plain.replaceAll("\\.0+$", "") : plain;
        return member.equals("set") || member.equals("lot")
                ? Readings.text(whole)
                : member.equals("order") || member.equals("line") ? Readings.orderId(whole) : Readings.id(whole);
    }

    private Parsed<String> count(String text) {
        return form.figures(text).then(plain -> {
            Matcher pieces = PIECES.matcher(plain);
            return pieces.matches() ? Parsed.of(pieces.group(1)) : Parsed.refused("a whole number");
        });
    }

    private Optional<Parsed<String>> length(Column column, String text) {
        Parsed<String> plain = form.figures(text);
        return withUnit(column, plain)
                .map(whole -> whole.then(written -> column.member().equals("spare")
                        ? Readings.allowance(written).map(any -> written)
                        : Readings.wantedLength(written).map(any -> written)));
    }

    /** Behind a bare figure the unit of its heading, else the one that was answered for the column. */
    private Optional<Parsed<String>> withUnit(Column column, Parsed<String> figures) {
        String written = figures.value().orElse("");
        if (!isBare(written) || written.equals("0")) {
            return Optional.of(figures.map(CellWords::plainUnit));
        }
        return unit(column).map(unit -> Parsed.of(written + " " + unit));
    }

    private Optional<String> unit(Column column) {
        Optional<String> named = new Heading("", column.unit()).lengthUnit();
        return named.isPresent() ? named : answers.ask(unitQuestion(column));
    }

    /** The id of the question what the bare figures of a column are in. */
    static String unitOf(Column column) {
        return UNIT + column.heading();
    }

    /** Whether a text is a figure without a unit. */
    static boolean isBare(String text) {
        return BARE.matcher(text).matches();
    }

    private Question unitQuestion(Column column) {
        boolean thin = column.member().equals("diameter");
        List<String> choices = known.units() == Units.METRIC
                ? thin ? List.of("mm", "in") : List.of("m", "cm", "mm", "ft")
                : thin ? List.of("in", "mm") : List.of("ft", "in", "m", "mm");
        return new Question(unitOf(column), "What are the figures of " + column.heading() + " in?", choices, false);
    }

    /** {@code 12,5 Meter} as files write it. */
    private static String plainUnit(String text) {
        int at = text.lastIndexOf(' ');
        String last = text.substring(at + 1);
        return at > 0
                ? TradeWords.builtIn()
                        .meaning("unit", last)
                        .map(unit -> text.substring(0, at + 1) + unit)
                        .orElse(text)
                : text;
    }

    private Optional<Parsed<String>> diameter(Column column, String text) {
        Parsed<String> plain =
                form.figures(text.replaceAll("^[\u00d8\u2300\u00f8] ?", "").replace("\"", " in"));
        return withUnit(column, plain)
                .map(whole ->
                        whole.then(written -> DiameterText.parse(written).map(any -> written.replaceAll(" +", " "))));
    }

    /**
     * Whether a cell says another diameter; a bare figure whose unit nobody knows is one of millimetres or inches. Beside one in
     * inches 12 or 13 mm are as good as 1/2 in: up to 8 % are the same then (common practice, no source).
     */
    boolean isOther(Column column, String text, Diameter diameter) {
        String plain = form.figures(text.replace("\"", " in")).value().orElse("");
        List<String> units = new Heading("", column.unit())
                .lengthUnit()
                .or(() -> answers.find(unitOf(column)))
                .map(List::of)
                .orElse(List.of("mm", "in"));
        List<Diameter> said = (isBare(plain) ? units.stream().map(unit -> plain + " " + unit) : Stream.of(plain))
                .flatMap(each -> DiameterText.parse(each).value().stream())
                .toList();
        return !said.isEmpty() && said.stream().noneMatch(each -> isAbout(each, diameter));
    }

    private static boolean isAbout(Diameter one, Diameter other) {
        boolean inches = one.units() % FineLength.UNITS_PER_MM != 0 || other.units() % FineLength.UNITS_PER_MM != 0;
        return one.equals(other) || (inches && Math.abs(one.units() - other.units()) * 100 <= other.units() * 8);
    }

    /** Money for a length, which the heading or the cell says, as in {@code Preis (EUR/m)}, or which is asked. */
    private Optional<Parsed<String>> price(Column column, String text) {
        Parsed<String> figures = form.figures(text);
        Matcher money = MONEY.matcher(figures.value().orElse(""));
        if (!money.matches()) {
            return Optional.of(figures.then(any -> Parsed.refused("a price such as 1.85")));
        }
        String said = (column.heading() + " " + column.unit() + " " + text).toLowerCase(Locale.ROOT);
        Optional<String> by = BY_LENGTH.entrySet().stream()
                .filter(length -> Pattern.compile(length.getKey()).matcher(said).find())
                .map(Map.Entry::getValue)
                .findFirst()
                .or(() -> answers.ask(new Question(
                        PRICE_BY,
                        "For how much rope are the prices of " + column.heading() + "?",
                        List.of("m", "100 m", "ft", "100 ft"),
                        false)));
        return by.map(length -> {
            String price = money.group(1) + " " + known.money().currency() + "/" + length;
            return isOtherMoney(column, text)
                    ? Parsed.<String>refused("a price in " + known.money().currency() + ", the currency of shop.json")
                    : known.money().parseByLength(price).map(any -> price);
        });
    }

    /** By a sign or by the three letters of a currency; those of a heading are capitals, lest a word is taken for one. */
    private boolean isOtherMoney(Column column, String text) {
        String ours = known.money().currency();
        String said = column.heading() + " " + (column.unit() + " " + text).toUpperCase(Locale.ROOT);
        boolean other = CODE.matcher(said)
                .results()
                .map(MatchResult::group)
                .anyMatch(code -> CURRENCIES.contains(code) && !code.equals(ours));
        return other
                || (said.contains("\u20ac") && !ours.equals("EUR"))
                || (said.contains("\u00a3") && !ours.equals("GBP"))
                || (said.contains("$") && !ours.endsWith("D"));
    }

    private Optional<Parsed<String>> mass(Column column, String text) {
        Parsed<String> figures = form.figures(text);
        String unit = column.unit().isEmpty() ? "" : " " + column.unit();
        return Optional.of(figures.map(plain -> isBare(plain) ? plain + unit : plain)
                .then(whole -> MassText.parseByLength(whole).map(any -> whole)));
    }

    /** Whether two texts of a file say the same. */
    static boolean isSame(String member, String one, String other) {
        if (one.equals(other)) {
            return true;
        }
        Optional<Length> length =
                LENGTHS.contains(member) ? Readings.allowance(one).value() : Optional.empty();
        return length.isPresent() && length.equals(Readings.allowance(other).value());
    }
}
