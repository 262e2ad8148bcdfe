package bitterend.exchange;

import bitterend.catalogue.Rope;
import bitterend.demand.Assembly;
import bitterend.demand.DemandModel;
import bitterend.demand.Demanded;
import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.LocalForm;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.Units;
import bitterend.quoting.Delivery;
import bitterend.quoting.QuoteLine;
import bitterend.quoting.QuoteRequest;
import bitterend.quoting.Recipient;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads what a customer asks a price for: a CSV file with the columns of {@code orders.csv} and some more, or a JSON file
 * whose lines have members of the same names.
 */
public final class QuoteRequestFile {
    /** What findings call a table that somebody typed. */
    public static final String TYPED = "lines";

    private static final String FORMAT = "bitterend/quote-request/1";
    static final List<String> OWN =
            List.of("hardware", "minutes", "test", "shorter", "longer", "fewest", "most", "tax", "instead of");
    /** What a file may be called so that its name is the number of the quote: {@code Q-2601}. */
    private static final Pattern NUMBER = Pattern.compile("Q-[0-9]{1,9}");

    private static final Reading<Integer> QUANTITY = Readings.whole(1, 10_000);
    private static final CsvColumns COLUMNS = columns();

    private final LocalDate day;
    private final Findings findings = new Findings();
    private final Findings ofFile = new Findings();
    private final OrdersCsv lines;
    private final QuotePolicyJson amounts;
    private final DemandModel model;
    private final Units units;
    private final LocalForm form;
    private final Reading<String> taxes;
    private final CustomerColumns ofCustomer;
    private final Map<String, Recipient> customers;
    private final List<Map<String, String>> kept = new ArrayList<>();
    /** Whether the request states its number itself, or has the name of its file. */
    private boolean stated;

    private QuoteRequestFile(Path folder, Shop shop, LocalDate day) {
        this.day = day;
        List<Rope> ropes = shop.catalogue().ropes();
        Ropes known = new Ropes(ropes, ropes.stream().map(Rope::id).collect(Collectors.toSet()), true, RopesJson.NAME);
        units = shop.settings().units();
        form = shop.settings().locale();
        taxes = LetterJson.taxOf(shop.settings().quote().letter());
        ofCustomer = new CustomerColumns(shop.settings().quote().letter());
        customers = shop.customers();
        FolderFiles files = new FolderFiles(folder, findings);
        files.in(form);
        Products products = files.either(ProductsJson.NAME, ProductsJson.TABLE_NAME)
                .map(new ProductsJson(findings)::read)
                .orElse(Products.NONE);
        lines = new OrdersCsv(known, products, findings);
        amounts = new QuotePolicyJson(shop.settings().money(), Money.ZERO);
        model = new DemandModel(shop.catalogue());
    }

    /**
     * What is in a file; a name that ends in {@code .json} says that it is JSON.
     *
     * @param folder the shop folder, for its standard products
     */
    public static QuoteRequestReading read(Path file, Path folder, Shop shop, LocalDate day) {
        return new QuoteRequestFile(folder, shop, day).read(file.toAbsolutePath());
    }

    /**
     * What somebody typed into a table.
     *
     * @param number number of the request
     * @param table lines below a row that names some of the {@link #columnNames}
     * @param folder the shop folder, for its standard products
     */
    public static QuoteRequestReading typed(String number, TableText table, Path folder, Shop shop, LocalDate day) {
        QuoteRequestFile reading = new QuoteRequestFile(folder, shop, day);
        Readings.orderId(number)
                .refusal()
                .ifPresent(expected -> reading.ofFile.add(Finding.error(TYPED, "", "number", number, expected)));
        reading.stated = true;
        return reading.read(TYPED, Optional.of(new InputFile(TYPED, table.text(), "")), number);
    }

    /** The columns of a request, those that every line has first. */
    public static List<String> columnNames() {
        List<String> names = new ArrayList<>(COLUMNS.required());
        names.addAll(COLUMNS.optional());
        return names;
    }

    /** The lines of an order in the book, as a request; nothing when there is no such order. */
    public static Optional<QuoteRequest> ofOrder(Shop shop, String order, LocalDate day) {
        List<OrderLine> found = shop.orders().stream()
                .filter(line -> line.assembly().ordered().source().order().equals(order))
                .toList();
        if (found.isEmpty()) {
            return Optional.empty();
        }
        String customer = found.get(0).assembly().ordered().customer();
        return Optional.of(new QuoteRequest(
                order,
                customer,
                day,
                found.stream()
                        .map(line -> new QuoteLine(line.assembly(), line.demanded(), QuoteLine.Asked.NOTHING))
                        .toList(),
                shop.customers().getOrDefault(customer, Recipient.UNKNOWN),
                QuoteRequest.Given.NOTHING));
    }

    private QuoteRequestReading read(Path file) {
        String name = String.valueOf(file.getFileName());
        return read(name, InputFile.named(file, findings).map(input -> input.in(form)), stem(name));
    }

    private QuoteRequestReading read(String name, Optional<InputFile> input, String id) {
        Optional<QuoteRequest> request = name.toLowerCase(Locale.ROOT).endsWith(".json")
                ? input.flatMap(this::json)
                : input.flatMap(text -> request(id, "", Recipient.UNKNOWN, csv(text, id)));
        List<Finding> told = new ArrayList<>(ofFile.sorted());
        told.addAll(request.isEmpty() ? findings.sorted() : new LeftOutLines(findings).findings());
        boolean usable = told.stream().noneMatch(Finding::isError);
        return new QuoteRequestReading(usable ? request.orElse(null) : null, told, kept);
    }

    private Optional<QuoteRequest> json(InputFile file) {
        return JsonDocument.read(file, FORMAT, findings, document -> {
                    stated = true;
                    String id = document.fields().require("request", Readings::orderId, "?");
                    String customer = document.fields().optional("customer", Readings::text, "");
                    Recipient recipient = ofCustomer.of(document.fields());
                    List<Fields> rows = new ArrayList<>();
                    for (JsonObject line : document.objects("lines")) {
                        rows.add(row(line, id));
                    }
                    return request(id, customer, recipient, rows);
                })
                .flatMap(request -> request);
    }

    /** The members of a line as the columns of a row. */
    private Fields row(JsonObject line, String id) {
        Map<String, String> texts = new HashMap<>();
        for (String member : line.names()) {
            String column = Readings.plain(member);
            if (COLUMNS.required().contains(column) || COLUMNS.optional().contains(column)) {
                texts.put(column, line.fields().text(member).orElse(""));
            } else {
                line.fields().error(member, "a column of a request");
            }
        }
        texts.put("order", id);
        return new Fields(line.fields().file(), line.fields().place(), texts, findings);
    }

    private List<Fields> csv(InputFile file, String id) {
        List<Fields> rows = new CsvTable(file, COLUMNS, ofFile, findings).rows();
        stated |= rows.stream().anyMatch(row -> row.text("order").isPresent());
        return rows.stream()
                .map(row -> row.text("order").isPresent() ? row : row.with("order", id))
                .toList();
    }

    private Optional<QuoteRequest> request(String id, String customer, Recipient known, List<Fields> rows) {
        List<QuoteLine> read = new ArrayList<>();
        Map<String, String> names = new HashMap<>();
        Recipient recipient = known;
        List<Fields> leftOut = new ArrayList<>();
        CustomerColumns.ofOne(customer, rows, ofFile);
        for (Fields row : rows) {
            recipient = ofCustomer.completed(recipient, row);
            QuoteLine.Asked asked = asked(row);
            row.text("line").ifPresent(line -> row.once("line", line, names));
            row.text("instead of")
                    .filter(line -> !isWanted(rows, line))
                    .ifPresent(line ->
                            row.error("instead of", "a line of this request that is not itself instead of another"));
            List<QuoteLine> priced = priced(row, asked);
            if (!priced.isEmpty()) {
                Map<String, String> filled = row.filled();
                if (!stated) {
                    filled.remove("order");
                }
                kept.add(filled);
            }
            read.addAll(priced);
            if (priced.isEmpty()) {
                leftOut.add(row);
            }
        }
        new SharedHardware(read.stream().map(QuoteLine::assembly).toList()).check(findings);
        if (rows.isEmpty() && !findings.hasErrors()) {
            findings.add(Finding.error(id, "", "", "", "a request of at least one line"));
        }
        if (read.isEmpty()) {
            return Optional.empty();
        }
        String order = read.get(0).assembly().ordered().source().order();
        String asking = customer.isEmpty() ? read.get(0).assembly().ordered().customer() : customer;
        return Optional.of(new QuoteRequest(
                order,
                asking,
                day,
                read,
                recipient.completedBy(customers.getOrDefault(asking, Recipient.UNKNOWN)),
                new QuoteRequest.Given(
                        UnpricedRows.lacking(leftOut, names, findings),
                        "",
                        Delivery.BY_ARRANGEMENT,
                        !stated && !NUMBER.matcher(order).matches())));
    }

    private static boolean isWanted(List<Fields> rows, String line) {
        return rows.stream()
                .anyMatch(row -> row.text("line").filter(line::equals).isPresent()
                        && row.text("instead of").isEmpty());
    }

    /** What a row asks a price for; nothing when a part of it cannot be made. */
    private List<QuoteLine> priced(Fields row, QuoteLine.Asked asked) {
        List<QuoteLine> priced = new ArrayList<>();
        boolean made = row.sound();
        for (Assembly assembly : lines.parts(row)) {
            Demanded demanded = model.pieces(assembly);
            demanded.findings().forEach(finding -> findings.add(finding.in(units)));
            made &= demanded.findings().stream().noneMatch(Finding::isError);
            boolean main = assembly.membership().part().isEmpty();
            priced.add(new QuoteLine(assembly, demanded, main ? asked : QuoteLine.Asked.NOTHING));
        }
        return made ? priced : List.of();
    }

    private QuoteLine.Asked asked(Fields row) {
        int quantity = row.text("quantity")
                .flatMap(text -> QUANTITY.read(text).value())
                .orElse(1);
        QuoteLine.Leeway leeway = new QuoteLine.Leeway(
                row.optional("shorter", Readings::allowance, Length.ZERO),
                row.optional("longer", Readings::allowance, Length.ZERO),
                row.optional("fewest", QUANTITY, quantity),
                row.optional("most", QUANTITY, quantity));
        if (leeway.fewest() > quantity || leeway.most() < quantity) {
            row.error("fewest", "fewest, quantity and most in this order");
        }
        return new QuoteLine.Asked(
                row.optional("hardware", amounts::amount, Money.ZERO),
                row.optional("minutes", QuotePolicyJson::minutes, QuoteLine.Asked.BY_THE_ENDS),
                row.optional("test", amounts::amount, Money.ZERO),
                leeway,
                new QuoteLine.Terms(row.optional("tax", taxes, ""), row.optional("instead of", Readings::orderId, "")));
    }

    private static CsvColumns columns() {
        List<String> optional = new ArrayList<>(OrdersCsv.COLUMNS.optional());
        optional.add("order");
        optional.addAll(OWN);
        optional.addAll(CustomerColumns.NAMES);
        return new CsvColumns(List.of("line", "length"), optional);
    }

    private static String stem(String name) {
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        return Readings.orderId(stem).value().orElse("request");
    }
}
