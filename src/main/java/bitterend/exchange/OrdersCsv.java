package bitterend.exchange;

import bitterend.demand.Assembly;
import bitterend.demand.EndSpec;
import bitterend.demand.Measuring;
import bitterend.demand.Piece;
import bitterend.demand.Tolerance;
import bitterend.exchange.OrderRows.OrderRow;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.finding.LookAlike;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.Written;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads {@code orders.csv}: one row for each line of an order. */
final class OrdersCsv {
    static final String NAME = "orders.csv";
    /** Of one line. */
    static final int MOST_PIECES = 10_000;
    /** Of all lines together: a plan of more would take more memory and time than a shop has. */
    static final int MOST_IN_ALL = 200_000;

    private static final Reading<Integer> PRIORITY = Readings.whole(1, 9);
    private static final Reading<Integer> FINISHING = Readings.whole(0, Piece.Source.MOST_DAYS);
    private static final Reading<Integer> QUANTITY = Readings.whole(1, MOST_PIECES);
    private static final Reading<Integer> LEGS = Readings.whole(1, 100);
    private static final Reading<Assembly.Use> USE = Readings.word(Assembly.Use.values(), Codec::word);
    private static final Pattern QUOTE = Pattern.compile("[^/]{1,40}/[1-9][0-9]{0,2}/[^/]{1,40}");
    static final CsvColumns COLUMNS = new CsvColumns(
            List.of("order", "line", "length"),
            List.of(
                    "customer",
                    "product",
                    "with",
                    "rope",
                    "substitutes",
                    "measured",
                    "extension",
                    "shrinkage",
                    "bedding",
                    "hang",
                    "end a",
                    "end b",
                    "legs",
                    "quantity",
                    "due",
                    "priority",
                    "finishing",
                    "set",
                    "match",
                    "certificate",
                    "own rope",
                    "use",
                    "code",
                    "spare",
                    "sample",
                    "tolerance",
                    "eye tolerance",
                    "set tolerance",
                    "marks",
                    "along",
                    "accept",
                    "note",
                    "quote"));

    private final Ropes ropes;
    private final OrderRows rows;
    private final Findings findings;
    private final Findings ofLines;

    OrdersCsv(Ropes ropes, Products products, Findings findings) {
        this(ropes, products, findings, findings);
    }

    /** Where problems of lines are told apart from those of the file as a whole. */
    OrdersCsv(Ropes ropes, Products products, Findings findings, Findings ofLines) {
        this.ropes = ropes;
        this.rows = new OrderRows(products);
        this.findings = findings;
        this.ofLines = ofLines;
    }

    /** The order lines by order and line. */
    List<Assembly> read(InputFile file) {
        List<Assembly> assemblies = new ArrayList<>();
        Map<String, String> ids = new HashMap<>();
        LookAlike met = new LookAlike();
        int pieces = 0;
        for (Fields row : new CsvTable(file, COLUMNS, findings, ofLines).rows()) {
            row.unlike("order", row.text("order").orElse(""), met);
            List<Assembly> made = assemblies(row, ids);
            int more = made.stream()
                    .map(Assembly::ordered)
                    .mapToInt(Assembly.Ordered::pieces)
                    .sum();
            if (pieces + more > MOST_IN_ALL) {
                row.error(
                        "quantity",
                        "at most " + MOST_IN_ALL + " pieces in all lines together; these would make "
                                + (pieces + more));
            } else {
                pieces += more;
                assemblies.addAll(made);
            }
        }
        assemblies.sort(
                Comparator.comparing((Assembly each) -> each.ordered().source().order(), NaturalOrder.IDS)
                        .thenComparing(each -> each.ordered().source().line(), NaturalOrder.IDS)
                        .thenComparing(each -> each.membership().part(), NaturalOrder.IDS));
        return assemblies;
    }

    /** Whether a file is the order book by its name, as a CSV file or as a workbook. */
    static boolean isNamed(String file) {
        return file.equals(NAME) || file.equals(InputFile.workbook(NAME));
    }

    /** The rows of an order line, such as 1041/3, whether or not they can be used. */
    static Set<String> places(Path folder, String wanted) {
        return InputFile.findTable(folder, NAME, new Findings()).stream()
                .flatMap(file -> new CsvTable(file, COLUMNS, new Findings(), new Findings()).rows().stream())
                .filter(row -> wanted.equals(
                        row.text("order").orElse("") + "/" + row.text("line").orElse("")))
                .map(Fields::place)
                .collect(Collectors.toSet());
    }

    /** One line, part by part, of another file with the same columns; nothing when a part of it cannot be used. */
    List<Assembly> parts(Fields row) {
        List<Assembly> parts = new ArrayList<>();
        boolean sound = true;
        for (OrderRow part : rows.filled(row)) {
            parts.add(assembly(part));
            sound &= part.fields().sound() && row.sound();
        }
        return sound ? parts : List.of();
    }

    /** What one row orders: one assembly, or one for each part of a product; those that can be used. */
    List<Assembly> assemblies(Fields row, Map<String, String> ids) {
        List<Assembly> assemblies = new ArrayList<>();
        for (OrderRow part : rows.filled(row)) {
            Assembly assembly = assembly(part);
            Piece.Source source = assembly.ordered().source();
            if (part.membership().part().isEmpty()) {
                part.fields().once("line", source.lineId(), ids);
            }
            if (row.sound() && part.fields().sound()) {
                assemblies.add(assembly);
            }
        }
        return assemblies;
    }

    /** The columns of a file of order lines that says one thing more. */
    static CsvColumns columnsWith(String required) {
        List<String> all = new ArrayList<>(COLUMNS.required());
        all.add(required);
        return new CsvColumns(all, COLUMNS.optional());
    }

    private Assembly assembly(OrderRow part) {
        Fields row = part.fields();
        Assembly.Ordered ordered = ordered(row);
        List<String> allowed = ropes(row);
        HangText.Row hung = HangText.read(row);
        Assembly.Make make = new Assembly.Make(
                hung.finished(),
                measuring(row),
                row.optional("end a", EndText::parse, EndSpec.of("plain")),
                row.optional("end b", EndText::parse, EndSpec.of("plain")),
                new Assembly.Extras(
                        row.optional("spare", Readings::allowanceAsWritten, Written.NOTHING),
                        row.optional("sample", Readings::allowanceAsWritten, Written.NOTHING),
                        row.optional("along", AskedText::along, List.of())),
                new Assembly.Asked(
                        row.optional("tolerance", AskedText::tolerance, Tolerance.NONE),
                        row.optional("eye tolerance", AskedText::tolerance, Tolerance.NONE),
                        row.optional("set tolerance", AskedText::tolerance, Tolerance.NONE),
                        row.optional("marks", AskedText::marks, List.of()),
                        row.optional("accept", AskedText::accepted, List.of())),
                hung.hang());
        return new Assembly(
                new Assembly.Origin(row.file(), row.place()),
                ordered,
                allowed,
                make,
                terms(row, ordered),
                part.membership());
    }

    private static Assembly.Ordered ordered(Fields row) {
        Piece.Source source = new Piece.Source(
                row.require("order", Readings::orderId, "?" + row.place()),
                row.require("line", Readings::orderId, "?"),
                row.optional("due", Readings::dayOfTable, LocalDate.MAX),
                row.optional("priority", PRIORITY, 5),
                row.optional("finishing", FINISHING, 0));
        int quantity = row.optional("quantity", QUANTITY, 1);
        int legs = row.optional("legs", LEGS, 1);
        if ((long) quantity * legs > MOST_PIECES) {
            row.error("quantity", "at most " + MOST_PIECES + " pieces in a line");
        }
        return new Assembly.Ordered(
                source,
                row.optional("customer", Readings::text, ""),
                row.optional("product", Readings::id, ""),
                quantity,
                legs,
                row.optional("note", Readings::text, ""),
                row.optional("quote", OrdersCsv::quote, ""));
    }

    /** The rope as ordered, then its substitutes, each once. */
    private List<String> ropes(Fields row) {
        Set<String> allowed = new LinkedHashSet<>();
        allowed.add(known(row, "rope", row.require("rope", Readings::id, "?")));
        String substitutes = row.text("substitutes").orElse("");
        for (String substitute : substitutes.split(";")) {
            if (!substitute.isBlank() && !allowed.add(known(row, "substitutes", substitute.strip()))) {
                row.error("substitutes", "every rope once");
            }
        }
        return List.copyOf(allowed);
    }

    private String known(Fields row, String column, String rope) {
        if (row.text(column).isPresent() && !ropes.mayKnow(rope)) {
            row.error(column, "a rope of " + ropes.file() + ropes.hint(rope));
        }
        return rope;
    }

    /** How a finished length is measured, from the columns that say so. */
    static Measuring measuring(Fields row) {
        Measuring points = row.optional("measured", MeasuredText::parse, Measuring.USUAL);
        return new Measuring(
                points.between(),
                points.pin(),
                row.optional("extension", OrdersCsv::share, Ratio.ZERO),
                row.optional("shrinkage", OrdersCsv::share, Ratio.ZERO),
                row.optional("bedding", OrdersCsv::share, Ratio.ZERO),
                points.points());
    }

    private static Parsed<Ratio> share(String text) {
        Optional<Ratio> share = RatioText.parse(text).value();
        return share.isPresent() && !share.get().isNegative() && share.get().compareTo(new Ratio(1, 2)) <= 0
                ? Parsed.of(share.get())
                : Parsed.refused("a share from 0 to 50 %, such as 2 %");
    }

    private static Assembly.Terms terms(Fields row, Assembly.Ordered ordered) {
        String set = row.optional("set", Readings::orderId, "");
        Piece.Bond bond = row.optional("match", OrdersCsv::bond, set.isEmpty() ? Piece.Bond.NONE : Piece.Bond.ONE_LOT);
        if (!set.isEmpty() && bond == Piece.Bond.NONE) {
            row.error("match", "lot or reel for a line of a set");
        }
        if (set.isEmpty() && bond != Piece.Bond.NONE && ordered.legs() == 1) {
            row.error("match", "the name of a set, or several legs that are to match: one piece alone is no set");
        }
        return new Assembly.Terms(
                new Piece.Matching(set, bond),
                row.optional("certificate", Readings::mark, ""),
                row.optional("own rope", Readings::yesOrNo, false),
                row.optional("use", USE, Assembly.Use.GENERAL),
                row.optional("code", EndText::partId, ""));
    }

    /** The number of a quote, its revision and the line. */
    private static Parsed<String> quote(String text) {
        return QUOTE.matcher(text).matches()
                ? Parsed.of(text)
                : Parsed.refused("a quote, its revision and its line, such as Q-2601/1/2");
    }

    private static Parsed<Piece.Bond> bond(String text) {
        return switch (Readings.plain(text)) {
            case "no" -> Parsed.of(Piece.Bond.NONE);
            case "lot" -> Parsed.of(Piece.Bond.ONE_LOT);
            case "reel" -> Parsed.of(Piece.Bond.ONE_REEL);
            default -> Parsed.refused("one of: no, lot, reel");
        };
    }
}
