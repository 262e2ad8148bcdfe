package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.LimitsPage;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Each limit of docs/limits.md on what a shop types: the figure of the page is read, the next larger is refused by its name. */
final class StatedLimitsTest {
    private static final String ORDERS = "orders.csv";
    private static final String REELS = "reels.csv";
    private static final String ROPES = "ropes.json";
    private static final String SHOP = "shop.json";
    private static final String OFFERS = "offers.csv";
    private static final String COMING = "on-order.csv";
    private static final String ORDER_HEAD =
            "order,line,customer,rope,length,end a,end b,quantity,legs,finishing,note\n";
    private static final String REEL_HEAD = "reel,rope,lot,length,flaws\n";
    private static final String OFFER_HEAD = "offer,supplier,rope,length,price,supply,lead days\n";

    private final Path folder;

    StatedLimitsTest(@TempDir Path folder) {
        this.folder = folder;
    }

    /**
     * A file of a shop as it is with a figure in it.
     *
     * @param file its name
     * @param refused where and how the next larger figure is refused
     */
    private record Probe(String file, LongFunction<String> text, String refused) {}

    private static String order(String id, String length, Object quantity, Object legs, Object finishing, String note) {
        return String.join(
                        ",",
                        id,
                        "1",
                        "boat",
                        "BRAID-12",
                        length,
                        "plain",
                        "plain",
                        "" + quantity,
                        "" + legs,
                        "" + finishing,
                        note)
                + "\n";
    }

    private static String rope(String id, String mass, String price) {
        return """
            {"format": "bitterend/ropes/1", "ropes": [
              {"id": "BRAID-12", "construction": "double braid", "fibre": "polyester", "diameter": "12 mm", "mass": "%s",
               "price": "%s", "usualReel": "200 m"},
              {"id": "%s", "construction": "3-strand", "fibre": "polyester", "diameter": "14 mm", "lay": "right ordinary",
               "price": "1.45 EUR/m", "usualReel": "220 m"}]}
            """
                .formatted(mass, price, id);
    }

    private static String shop(String labour, String opening) {
        return """
            {"format": "bitterend/shop/1", "name": "Eider Shed", "currency": "EUR", "day": "2026-03-02", "labour": "%s",
             "prices": {"opening": "%s"}}
            """
                .formatted(labour, opening);
    }

    private static String many(String each, long times) {
        return each.repeat(Math.toIntExact(times));
    }

    private static final Map<String, Probe> PROBES = Map.ofEntries(
            Map.entry(
                    "rows of a CSV file",
                    new Probe(
                            REELS,
                            most -> REEL_HEAD + many("\n", most - 2) + "E7,BRAID-12,71,62 m,\n",
                            "at most 200000 rows in a file")),
            Map.entry(
                    "cells in a row",
                    new Probe(
                            REELS,
                            most -> REEL_HEAD + "E7,BRAID-12,71,62 m,\n" + many(",", most - 1) + "\n",
                            "at most 256 cells in a row")),
            Map.entry(
                    "characters in a cell",
                    new Probe(
                            REELS,
                            most -> REEL_HEAD.strip() + ",place\nE7,BRAID-12,71,62 m,," + many("x", most) + "\n",
                            "at most 1000000 characters in a cell")),
            Map.entry(
                    "brackets open at once",
                    new Probe(
                            SHOP,
                            most -> shop("1 EUR/h", "1 min")
                                    .replaceFirst(
                                            "}\\s*$", ", \"x\": " + many("[", most - 1) + many("]", most - 1) + "}"),
                            "at most 100 brackets open at once")),
            Map.entry(
                    "names, values and brackets of a JSON file",
                    new Probe(
                            ROPES,
                            most -> "{\"format\": \"bitterend/ropes/1\", \"ropes\": [" + many("true,", most - 8)
                                    + "true]}",
                            "at most 2000000 names, values and brackets in a file")),
            Map.entry(
                    "characters of a text in a JSON file",
                    new Probe(
                            SHOP,
                            most -> shop("1 EUR/h", "1 min").replace("Eider", many("E", most - " Shed".length())),
                            "at most 1000000 characters in a text")),
            Map.entry(
                    "digits of a number in a JSON file",
                    new Probe(
                            SHOP,
                            most -> shop("1 EUR/h", "1 min")
                                    .replaceFirst("}\\s*$", ", \"minorDigits\": " + many("9", most) + "}"),
                            "at most 100 digits in a number")),
            Map.entry(
                    "characters of an id",
                    new Probe(ROPES, most -> rope(many("L", most), "1 kg/m", "1 EUR/m"), "an id of at most 40")),
            Map.entry(
                    "characters of a text",
                    new Probe(
                            ORDERS,
                            most -> ORDER_HEAD + order("A", "9 m", 1, 1, 0, many("n", most)),
                            "note: found \"nnn")),
            Map.entry(
                    "metres of a reel",
                    new Probe(REELS, most -> REEL_HEAD + "E7,BRAID-12,71," + most + " m,\n", "at most 20 km")),
            Map.entry(
                    "metres of an assembly",
                    new Probe(ORDERS, most -> ORDER_HEAD + order("A", most + " m", 1, 1, 0, ""), "at most 20 km")),
            Map.entry(
                    "kilograms a metre",
                    new Probe(ROPES, most -> rope("L", most + " kg/m", "1 EUR/m"), "at most 1000 kg/m")),
            Map.entry(
                    "money by the metre",
                    new Probe(ROPES, most -> rope("L", "1 kg/m", most + " EUR/m"), "at most 30000.00 EUR/m")),
            Map.entry(
                    "one amount of money",
                    new Probe(SHOP, most -> shop("1 EUR/h", most + " EUR"), "at most 10000000.00 EUR")),
            Map.entry(
                    "money by the hour",
                    new Probe(SHOP, most -> shop(most + " EUR/h", "1 min"), "at most 10000000.00 EUR")),
            Map.entry("minutes of a rule", new Probe(SHOP, most -> shop("1 EUR/h", most + " min"), "or 9999 min")),
            Map.entry(
                    "pieces of a line",
                    new Probe(ORDERS, most -> ORDER_HEAD + order("A", "9 m", most, 1, 0, ""), "from 1 to 10000")),
            Map.entry(
                    "pieces of all orders",
                    new Probe(
                            ORDERS,
                            most -> ORDER_HEAD
                                    + LongStream.range(0, most / 10_000)
                                            .mapToObj(line -> order("A" + line, "9 m", 10_000, 1, 0, ""))
                                            .collect(Collectors.joining())
                                    + (most % 10_000 == 0 ? "" : order("Z", "9 m", most % 10_000, 1, 0, "")),
                            "at most 200000 pieces in all lines together; these would make 200001")),
            Map.entry(
                    "legs of an assembly",
                    new Probe(ORDERS, most -> ORDER_HEAD + order("A", "9 m", 1, most, 0, ""), "from 1 to 100")),
            Map.entry(
                    "days that finishing takes",
                    new Probe(ORDERS, most -> ORDER_HEAD + order("A", "9 m", 1, 1, most, ""), "from 0 to 60")),
            Map.entry(
                    "flaws of a reel",
                    new Probe(
                            REELS,
                            most -> REEL_HEAD + "E7,BRAID-12,71,62 m,"
                                    + LongStream.range(0, most)
                                            .mapToObj(at -> at * 3 + " mm")
                                            .collect(Collectors.joining("; "))
                                    + "\n",
                            "at most 20000 flaws")),
            Map.entry(
                    "reels that one offer has",
                    new Probe(
                            OFFERS,
                            most -> OFFER_HEAD + "B,Northquay Cordage,BRAID-12,100 m,196.00 EUR," + most + ",2\n",
                            "from 0 to 100000")),
            Map.entry(
                    "days until an offer comes",
                    new Probe(
                            OFFERS,
                            most -> OFFER_HEAD + "B,Northquay Cordage,BRAID-12,100 m,196.00 EUR,1," + most + "\n",
                            "from 0 to 1000")),
            Map.entry(
                    "reels of an order of reels",
                    new Probe(
                            COMING,
                            most -> "number,rope,length,quantity,expected\nP-88,BRAID-12,149 m," + most
                                    + ",2026-03-06\n",
                            "from 1 to 1000")));

    /** What the figure of the page itself is not read of: no shop means 100 nines, and one text of a million letters is no name. */
    private static final List<String> ONLY_REFUSED = List.of(
            "cells in a row",
            "characters in a cell",
            "brackets open at once",
            "names, values and brackets of a JSON file",
            "characters of a text in a JSON file",
            "digits of a number in a JSON file");

    @TestFactory
    Stream<DynamicTest> everyFigure_isReadAndTheNextIsRefused() {
        return PROBES.entrySet().stream()
                .map(each -> DynamicTest.dynamicTest(each.getKey(), () -> probe(each.getKey(), each.getValue())));
    }

    private void probe(String limit, Probe probe) throws IOException {
        Path shop = DemoShop.copy("eider-shed", Files.createTempDirectory(folder, "limit"));
        long most = LimitsPage.most(limit);
        String within = limit.startsWith("names, values") ? "" : checked(shop, probe, most);
        assertFalse(within.contains(probe.refused()), within);
        assertTrue(
                ONLY_REFUSED.contains(limit)
                        || !within.matches("(?s).*(^|\\n)(error|left out): " + probe.file() + ".*"),
                within);
        String beyond = checked(shop, probe, most + 1);
        assertTrue(
                beyond.lines()
                        .anyMatch(line -> line.matches("(error|left out|warning): " + probe.file() + ".*")
                                && line.contains(probe.refused())),
                beyond);
        assertTrue(beyond.length() < 20_000, beyond);
    }

    private static String checked(Path shop, Probe probe, long figure) throws IOException {
        Files.writeString(shop.resolve(probe.file()), probe.text().apply(figure));
        Run run = Run.of("check", shop.toString());
        assertFalse(run.code() == ExitCode.INTERNAL_ERROR.number(), run.err());
        return run.out() + run.err();
    }

    @Test
    void file_isAtMostSoLarge() throws IOException {
        Path shop = DemoShop.copy("eider-shed", folder);
        long most = LimitsPage.most("bytes of a CSV or JSON file");
        for (String file : List.of(ORDERS, ROPES)) {
            try (RandomAccessFile large =
                    new RandomAccessFile(shop.resolve(file).toFile(), "rw")) {
                large.setLength(most + 1);
            }
        }
        String told = Run.of("check", shop.toString()).out();
        assertTrue(told.contains("orders.csv: found \"100 MB\", expected a file of at most 100 MB"), told);
        assertTrue(told.contains("ropes.json: found \"100 MB\", expected a file of at most 100 MB"), told);
    }

    @Test
    void lotBookedAtTheRack_isAtMostSoLong() throws IOException {
        Path shop = DemoShop.copy("eider-shed", folder);
        assertEquals(0, Run.of("stock", "open", shop.toString()).code());
        int most = (int) LimitsPage.most("characters of a lot booked at the rack");
        Run within = received(shop, "E90", most);
        assertEquals(0, within.code(), within.err());
        Run beyond = received(shop, "E91", most + 1);
        assertTrue(beyond.code() != 0 && beyond.err().contains("at most 60 characters"), beyond.err());
    }

    private static Run received(Path shop, String reel, int lot) {
        return Run.of("stock", "receive", shop.toString(), reel, "BRAID-12", "50 m", "--lot", "l".repeat(lot));
    }

    /** Every row of the page is held by a test that names it. */
    @Test
    void everyRow_isHeldByATest() throws IOException {
        StringBuilder tests = new StringBuilder();
        try (Stream<Path> files = Files.walk(Path.of("src", "test", "java"))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith("Test.java")).toList()) {
                String text = Files.readString(file);
                tests.append(text.contains("LimitsPage") ? text : "");
            }
        }
        TreeSet<String> open = new TreeSet<>(LimitsPage.all().keySet());
        open.removeIf(limit -> tests.indexOf('"' + limit + '"') >= 0);
        assertEquals(Collections.emptySet(), open);
        assertTrue(LimitsPage.all().size() > 30, LimitsPage.all().toString());
    }
}
