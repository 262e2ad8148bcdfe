package bitterend.exchange;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.LocalForm;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.measure.RatioText;
import bitterend.measure.Units;
import bitterend.quoting.QuotePolicy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The files that a new shop begins with. Everything that {@code shop.json} may leave out is written down with its usual
 * value, so that the shop sees what there is to change; the tables have every column there is; the catalogue holds examples of its kinds
 * of rope, to be replaced.
 *
 * @param name name of the shop, as printed
 * @param units system that figures are printed in, and that the new files are written in
 * @param money the shop's currency
 * @param labour rate of an hour
 * @param bench what its splicers measure with
 * @param locale language and country by which days and figures are typed; empty for none
 * @param ropes the kinds of rope of which there is an example
 * @param example whether there are orders, reels and offers to try the commands on
 */
public record NewShop(
        String name,
        Units units,
        MoneyText money,
        Money labour,
        NewBench bench,
        String locale,
        List<NewRope> ropes,
        boolean example) {
    /** Columns that most orders fill, before the others. */
    private static final List<String> ORDER_COLUMNS = List.of(
            "order",
            "line",
            "customer",
            "rope",
            "length",
            "end a",
            "end b",
            "quantity",
            "due",
            "priority",
            "set",
            "match",
            "note");
    /** Columns that most reels fill, before the others. */
    private static final List<String> REEL_COLUMNS = List.of(
            "reel",
            "rope",
            "lot",
            "length",
            "uncertainty",
            "known",
            "lead trim",
            "inner wraps",
            "flaws",
            "received",
            "full",
            "place");

    private static final List<String> OFFER_COLUMNS = List.of("offer", "supplier", "rope", "length", "price");
    private static final List<String> ROPE_COLUMNS =
            List.of("id", "name", "construction", "fibre", "diameter", "lay", "colour", "price", "usual reel");

    public NewShop {
        ropes = ropes.isEmpty() || (example && !ropes.contains(NewRope.LAID)) ? withLaid(ropes) : List.copyOf(ropes);
    }

    /** A place by whose language and country days and figures are typed, such as {@code de-DE}. */
    public static Parsed<String> locale(String text) {
        return LocalForm.of(text.strip()).then(form -> Parsed.of(form.tag()));
    }

    /** The orders of the example are made of laid rope. */
    private static List<NewRope> withLaid(List<NewRope> ropes) {
        List<NewRope> more = new ArrayList<>(List.of(NewRope.LAID));
        more.addAll(ropes);
        return List.copyOf(more);
    }

    /**
     * Writes the files into a folder that is empty or not there yet.
     *
     * @return what is wrong; then nothing was written
     * @throws UncheckedIOException when the folder cannot be written; then it is as it was
     */
    public List<Finding> writeInto(Path folder) {
        Findings findings = new Findings();
        ShopJson.read(new InputFile(ShopJson.NAME, settings(), ""), findings);
        try {
            if (isTaken(folder)) {
                findings.add(
                        Finding.error(folder.toString(), "", "", found(folder), "a folder that is empty or not there"));
            }
            if (!findings.hasErrors()) {
                write(folder, files());
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return findings.sorted();
    }

    /** Name and text of each file; the one that makes the folder a shop comes last. */
    private Map<String, String> files() {
        NewShopExample rows = new NewShopExample(units, money.currency());
        Map<String, String> files = new LinkedHashMap<>();
        files.put(RopesJson.TABLE_NAME, ropeRows());
        files.put(OrdersCsv.NAME, csv(ORDER_COLUMNS, OrdersCsv.COLUMNS, rows.orders()));
        files.put(ReelsCsv.NAME, csv(REEL_COLUMNS, ReelsCsv.COLUMNS, rows.reels()));
        if (example) {
            files.put(OffersCsv.NAME, csv(OFFER_COLUMNS, OffersCsv.COLUMNS, rows.offers()));
        }
        if (!bench.fids().isEmpty()) {
            files.put(SplicesJson.NAME, bench.splices());
        }
        files.put(AboutFiles.NAME, AboutFiles.text(files.keySet()));
        files.put(ShopJson.NAME, settings());
        return files;
    }

    private String ropeRows() {
        List<String> columns = whole(ROPE_COLUMNS, RopesJson.TABLE.columns());
        TableText table = TableText.of(String.join(",", columns) + "\n");
        for (NewRope rope : ropes) {
            Map<String, String> row = rope.row(units, money.currency());
            table = table.plus(
                    columns.stream().map(column -> row.getOrDefault(column, "")).toList());
        }
        return table.text();
    }

    /** These columns and behind them every other that the file may have. */
    private static List<String> whole(List<String> first, CsvColumns columns) {
        return Stream.concat(first.stream(), columns.all().stream()).distinct().toList();
    }

    private String csv(List<String> first, CsvColumns columns, List<String> rows) {
        List<String> whole = whole(first, columns);
        List<String> lines = new ArrayList<>(List.of(String.join(",", whole)));
        if (example) {
            String blank = ",".repeat(whole.size() - first.size());
            rows.forEach(row -> lines.add(row + blank));
        }
        return String.join("\n", lines) + "\n";
    }

    /** The text of {@code shop.json}. */
    String settings() {
        boolean metric = units == Units.METRIC;
        return new JsonTree()
                .with("format", ShopJson.FORMAT)
                .with("name", name)
                .with("units", Codec.word(units))
                .with("currency", money.currency())
                .with("minorDigits", money.minorDigits())
                .with("closed", (Object) List.of())
                .with("urgency", new JsonTree().with("third", "1 working day").with("fourth", "7 days"))
                .with("horizon", "5 working days")
                .with("lateness", "2 working days")
                .with(locale.isEmpty() ? new JsonTree() : new JsonTree().with("locale", locale))
                .with("labour", money.print(labour) + "/h")
                .with(
                        "cutLoss",
                        new JsonTree()
                                .with("fibre", "10 mm")
                                .with("whipped", "40 mm")
                                .with("wire", "5 mm"))
                .with("cutToNearest", toNearest(metric ? "10 mm" : "1/2 in", metric ? "5 mm" : "1/2 in"))
                .with("benchTools", bench.tools().word())
                .with("prices", prices())
                .with("interest", RatioText.percent(Settings.Holding.USUAL_INTEREST))
                .with("room", ShopJson.USUAL_ROOM)
                .with("quote", quote(QuotePolicy.usual(labour)))
                .text();
    }

    private static JsonTree toNearest(String fibre, String wire) {
        return new JsonTree().with("fibre", fibre).with("wire", wire);
    }

    private static JsonTree prices() {
        JsonTree prices = new JsonTree();
        for (RulePrice price : RulePrice.values()) {
            prices.with(price.member(), price.minutes());
        }
        return prices;
    }

    private JsonTree quote(QuotePolicy usual) {
        return new JsonTree()
                .with("waste", usual.waste().word())
                .with("floorAtRope", usual.floorAtRope() ? "yes" : "no")
                .with("settingUp", usual.work().setUpMinutes() + " min")
                .with("spoilage", RatioText.percent(usual.work().spoilage()))
                .with("packing", money.print(usual.work().packing()))
                .with("overhead", RatioText.percent(usual.surcharges().overhead()))
                .with("margin", RatioText.percent(usual.surcharges().margin()))
                .with("minimum", money.print(usual.surcharges().minimum()))
                .with("parts", List.of())
                .with("validDays", usual.validDays());
    }

    private static boolean isTaken(Path folder) throws IOException {
        return Files.exists(folder)
                && (!Files.isDirectory(folder) || !names(folder).isEmpty());
    }

    /** What stands in the way, for people: the first name of the folder and how many more there are. */
    private static String found(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return "a file";
        }
        List<String> names = names(folder);
        return names.get(0) + (names.size() == 1 ? "" : " and " + (names.size() - 1) + " more");
    }

    private static List<String> names(Path folder) throws IOException {
        List<String> names = new ArrayList<>();
        try (DirectoryStream<Path> inside = Files.newDirectoryStream(folder)) {
            inside.forEach(each -> names.add(String.valueOf(each.getFileName())));
        }
        names.sort(null);
        return names;
    }

    /** All of the files or none: what was written is taken away again when a later one fails. */
    private static void write(Path folder, Map<String, String> files) throws IOException {
        boolean made = !Files.exists(folder);
        List<Path> written = new ArrayList<>();
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, String> file : files.entrySet()) {
                written.add(folder.resolve(file.getKey()));
                WholeFile.write(folder.resolve(file.getKey()), file.getValue());
            }
        } catch (IOException | UncheckedIOException fault) {
            for (Path file : written) {
                Files.deleteIfExists(file);
            }
            if (made) {
                Files.deleteIfExists(folder);
            }
            throw fault;
        }
    }
}
