package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Orders of the demo loft that are measured on pins, under tension, and on a counter that reads short; by hand. */
final class DemoMeasuredTest {
    /** 5 tucks of 23/6 D and 6 D left, 1.2 D of take-up: 14 mm rope, the loft's own figures. */
    private static final double TAIL = 5 * 23.0 / 6 * 14 + 6 * 14;

    private static final double TAKE_UP = 1.2 * 14;

    private final Path shop;

    DemoMeasuredTest(@TempDir Path folder) throws IOException {
        shop = DemoShop.copy("gannet-loft", folder);
        Path orders = shop.resolve("orders.csv");
        Files.write(
                orders,
                Files.readAllLines(orders).stream()
                        .filter(line ->
                                line.startsWith("order,") || line.startsWith("G-2118,") || line.startsWith("G-2111,1,"))
                        .toList());
        Files.delete(shop.resolve("pins.csv"));
        run("plan", shop.toString(), "--time", "1s");
    }

    private static String run(String... args) {
        Run run = Run.of(args);
        assertEquals(0, run.code(), run.err() + run.out());
        return run.out();
    }

    private String cards() throws IOException {
        return PageText.of(
                Path.of(run("sheet", shop.toString(), "--all", "--cards").strip()));
    }

    /** Rope from throat to throat, on its centre line, when the inside of the eye is so long on a pin. */
    private static double round(double inside, double pin) {
        double radius = (pin + 14) / 2;
        double toPin = inside - pin / 2;
        return 2 * Math.sqrt(toPin * toPin - radius * radius) + 2 * radius * (Math.PI - Math.acos(radius / toPin));
    }

    /** The same rope round another pin: its inside length there, by halving. */
    private static double inside(double rope, double pin) {
        double low = pin + 7.1;
        double high = rope;
        while (high - low > 1e-7) {
            double middle = (low + high) / 2;
            if (round(middle, pin) < rope) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static long up(double mm) {
        return (long) Math.ceil(mm / 10) * 10;
    }

    private static String metres(double mm) {
        return String.format(Locale.ROOT, "%.3f m", Math.round(mm) / 1000.0);
    }

    /** 5 m over pins of 300 mm: an eye of 700 mm flat is about 586 mm there. */
    @Test
    void overPins_theEyesAreShorterThanFlat() throws IOException {
        double eye = round(700, 0);
        double onPin = inside(eye, 300);
        assertEquals(585.8, onPin, 0.1);
        long cut = up(5000 + 2 * (eye - onPin + TAIL + TAKE_UP));
        assertTrue(
                run("lengths", shop.toString(), "G-2118/1")
                        .replaceAll(" +", " ")
                        .contains("cut length " + cut + " "),
                "" + cut);
        String cards = cards();
        assertTrue(cards.contains(metres(5000 + 2 * (700 - onPin)) + " slack and dry on the floor"), cards);
        assertTrue(cards.contains("from 4.970 m to 5.030 m; on the floor from"), cards);
        assertTrue(
                cards.contains("Second throat: " + metres(5000 - onPin + TAKE_UP)
                        + " from the bearing point of the finished end A, on a pin of 300 mm."),
                cards);
    }

    /** 11 m under a tension that stretches it by 2 % are 10.784 m slack; 1 % of 11 m either way. */
    @Test
    void underTension_itIsCutSlack() throws IOException {
        double slack = 11_000 / 1.02;
        long cut = up(slack - 250.0 + round(250, 0) + TAIL + TAKE_UP);
        assertTrue(run("lengths", shop.toString(), "G-2118/2").contains("= " + metres((double) cut)), "" + cut);
        String cards = cards();
        assertTrue(cards.contains("10.784 m slack and dry on the floor"), cards);
        assertTrue(
                cards.contains("from 10.890 m to 11.110 m; on the floor from " + metres(slack * 0.99) + " to "
                        + metres(slack * 1.01)),
                cards);
    }

    /** One command books what the boxes of the card say; three alike teach take-up: 11.43 m cut, 11.01 m under tension. */
    @Test
    void boxesOfTheCard_areTheRowsThatCalibrateReads() throws IOException {
        run("measure", "" + shop, "G-2118/1.1", "--cut", "7.42 m", "--came-out", "5.01 m", "--how", "pins");
        for (String cameOut : List.of("11.01 m", "36 ft 1 1/2 in", "11.004 m")) {
            run("measure", "" + shop, "G-2118/2.1", "--cut", "11.43 m", "--came-out", cameOut, "--how", "tension");
        }
        List<String> rows = Files.readAllLines(shop.resolve("measured.csv"));
        String last = rows.get(rows.size() - 2);
        assertTrue(last.contains("whipped,11.43 m,36 ft 1 1/2 in,flat,0.02,no,"), last);
        Files.write(
                shop.resolve("measured.csv"),
                rows.stream().filter(row -> !row.startsWith("G-2118/1.1")).toList());
        double took = 0;
        for (double cameOut : new double[] {11_010, 36 * 304.8 + 1.5 * 25.4, 11_004}) {
            took += (11_430 - (cameOut / 1.02 - 250 + round(250, 0) + TAIL)) / 3;
        }
        assertEquals(13.03, took, 0.01);
        String learned = run("calibrate", "" + shop);
        assertTrue(learned.matches("(?s).*three-strand-eye +TS14 +3 +" + (long) Math.ceil(took) + " .*"), learned);
    }

    /** The counter shows 1 m for a true 0.995 m: 60 m are cut at a reading of 60.302 m and what was cut before. */
    @Test
    void counterThatReadsShort_isPrintedAsItWillRead() throws IOException {
        List<String> rows = Files.readAllLines(
                Path.of(run("sheet", shop.toString(), "--all", "--csv").strip()));
        List<String> head = List.of(rows.get(0).split(",", -1));
        List<String[]> cuts = rows.stream()
                .filter(row -> row.contains(",KM10,"))
                .filter(row -> row.contains("G-2111/1."))
                .map(row -> row.split(",", -1))
                .toList();
        assertEquals(2, cuts.size(), rows::toString);
        for (String[] cut : cuts) {
            long at = Long.parseLong(cut[head.indexOf("at mm")]);
            assertTrue(at >= 60_000, "" + at);
            assertEquals(Math.round(at / 0.995), Long.parseLong(cut[head.indexOf("counter mm")]));
        }
        String sheet =
                PageText.of(Path.of(run("sheet", shop.toString(), "--all").strip()));
        assertTrue(sheet.contains("true length is 0.995 x its reading"), sheet);
    }
}
