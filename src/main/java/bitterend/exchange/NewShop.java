package bitterend.exchange;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonTree;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
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

/**
 * The files that a new shop begins with. Everything that {@code shop.json} may leave out is written down with its usual
 * value, so that the shop sees what there is to change; the catalogue holds one rope to be replaced.
 *
 * @param name name of the shop, as printed
 * @param units system that figures are printed in, and that the new files are written in
 * @param money the shop's currency
 * @param labour rate of an hour
 * @param bench what its splicers measure with
 * @param example whether there are orders, reels and offers to try the commands on
 */
public record NewShop(String name, Units units, MoneyText money, Money labour, NewBench bench, boolean example) {
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
        files.put(RopesJson.NAME, rows.ropes().text());
        files.put(OrdersCsv.NAME, csv(ORDER_COLUMNS, rows.orders()));
        files.put(ReelsCsv.NAME, csv(REEL_COLUMNS, rows.reels()));
        if (example) {
            files.put(OffersCsv.NAME, csv(List.of("offer", "supplier", "rope", "length", "price"), rows.offers()));
        }
        if (!bench.fids().isEmpty()) {
            files.put(SplicesJson.NAME, bench.splices());
        }
        files.put(ShopJson.NAME, settings());
        return files;
    }

    private String csv(List<String> columns, List<String> rows) {
        List<String> lines = new ArrayList<>(List.of(String.join(",", columns)));
        if (example) {
            lines.addAll(rows);
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
