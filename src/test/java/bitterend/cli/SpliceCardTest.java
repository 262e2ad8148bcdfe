package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Golden;
import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The card that a splicer works by, and what sheet and tags say of the length. */
final class SpliceCardTest {
    private final Path shop;

    SpliceCardTest(@TempDir Path folder) throws IOException {
        shop = CardShop.in(folder);
    }

    private void plan() {
        Run plan = Run.of("plan", shop.toString(), "--time", "1s");
        assertEquals(0, plan.code(), plan.err());
    }

    private String sheet(String... options) throws IOException {
        String[] args = new String[options.length + 3];
        args[0] = "sheet";
        args[2] = "--all";
        args[1] = shop.toString();
        System.arraycopy(options, 0, args, 3, options.length);
        Run run = Run.of(args);
        assertEquals(0, run.code(), run.err());
        return PageText.of(Path.of(run.out().strip())).replaceAll("(?s)<style>.*?</style>", "<style/>");
    }

    /** One of each kind of end, drawn and marked. */
    @ParameterizedTest
    @ValueSource(strings = {"metric", "imperial"})
    void cards_readAsTheGoldenFile(String units) throws IOException {
        plan();
        Golden.check(
                "sheet/cards-" + units + ".html",
                sheet("--cards", "--units", units)
                        .replaceAll("(?s)<p class=\"made\">Planned.*?</p>", "")
                        .replace(shop.toString(), "SHOP"));
    }

    @Test
    void card_saysHowLongToExpectItOnTheFloor() throws IOException {
        plan();
        String cards = sheet("--cards");
        // 11 m under a tension that stretches it by 2 %: 11 / 1.02 on the floor.
        assertTrue(
                cards.contains("10.784 m slack and dry on the floor, inside of the eye, laid flat, to the other end"),
                cards);
        assertTrue(cards.contains("from 10.890 m to 11.110 m; on the floor from 10.676 m to 10.892 m"), cards);
        assertTrue(cards.contains("from 7.975 m to 8.025 m"), cards);
    }

    /** The boxes to tick, and the command, name no pin of a ring and no tension that the order does not state. */
    @Test
    void boxes_askOnlyForWaysInWhichThePieceCanBeMeasured() throws IOException {
        plan();
        String cards = sheet("--cards");
        assertTrue(card(cards, "1, line 3").contains("--how slack|tension --splicer"), card(cards, "1, line 3"));
        assertTrue(card(cards, "1, line 3").contains(">slack / under tension</th>"), card(cards, "1, line 3"));
        assertTrue(card(cards, "1, line 1").contains("--how slack|pins --splicer"), card(cards, "1, line 1"));
    }

    private static String card(String cards, String title) {
        int from = cards.indexOf("</span> " + title + "</h2>");
        return cards.substring(from, cards.indexOf("</section>", from));
    }

    /** Who makes the splice reads what was warned of when it was ordered, and who took it all the same. */
    @Test
    void warningsOfALine_standOnItsCard_withWhoAcceptedThem() throws IOException {
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,rope,length,end a,end b,quantity,accept,own rope
                1,1,HM8,1.4 m,bury-eye-hmpe length 100 mm,bury-eye-hmpe length 100 mm,2,working room: Jansen,
                """);
        plan();
        String card = sheet("--cards").replaceAll("<[^>]*>", "");
        assertTrue(
                card.contains("nly 1407.36 mm of slack rope between the throats;"
                        + " wanted: at least 1728 mm, the working room for the tools; accepted by Jansen."),
                card);
        assertTrue(card.contains("unverified termination: splice and measure one before cutting the other 1."), card);
    }

    /** The office reads where to accept less; the splicer reads what is wanted and what is there. */
    @Test
    void warningsOfALine_areSentencesForTheBench_withoutRowAndColumn() throws IOException {
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,rope,length,end a,end b
                1,1,HM8,1.4 m,bury-eye-hmpe length 100 mm,bury-eye-hmpe length 100 mm
                """);
        String derived = Run.of("lengths", shop.toString(), "1/1").out().replaceAll("\\s+", " ");
        assertTrue(
                derived.contains("slack rope between the throats; wanted: at least 1728 mm, the working room for the"
                        + " tools. Lengths only, never strength"),
                derived);
        assertFalse(derived.contains("orders.csv"), derived);
        String check = Run.of("check", shop.toString()).out();
        assertTrue(check.contains("row 2, accept: wanted: who accepts less than"), check);
    }

    /** 90 diameters of 8 mm are 28 3/8 in, 90 of 5/16 in would be 28 1/8: the rope is told as it is known. */
    @Test
    void derivation_tellsWhatTheOrderWrote_andTheRopeAsItIsKnown() throws IOException {
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,rope,length,end a,end b
                1,1,HM8,4.25 m,bury-eye-hmpe length 150 mm tail 90 diameters,bury-eye-hmpe length 150 mm tail 30 in
                """);
        String inches = Run.of("lengths", shop.toString(), "1/1", "--units", "imperial")
                .out()
                .replaceAll("\\s+", " ");
        assertTrue(inches.contains("finished length 167 5/16 4.25 m as ordered, bearing"), inches);
        assertTrue(inches.contains("end A: tail 28 3/8 90 diameters of 8 mm "), inches);
        assertTrue(inches.contains(" (5/16 in)"), inches);
        assertTrue(inches.contains("end B: tail 30 30 in as ordered"), inches);
        String metric = Run.of("lengths", shop.toString(), "1/1").out().replaceAll("\\s+", " ");
        assertTrue(metric.contains("end B: tail 762 30 in as ordered"), metric);
    }

    @Test
    void liftingPiece_saysSoOnItsCard() throws IOException {
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,rope,length,end a,end b,use
                1,1,HM8,4 m,bury-eye-hmpe length 100 mm,bury-eye-hmpe length 100 mm,lifting
                1,2,HM8,5 m,bury-eye-hmpe length 100 mm,bury-eye-hmpe length 100 mm,
                """);
        plan();
        String cards = sheet("--cards");
        String lifting = card(cards, "1, line 1").replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
        assertTrue(lifting.contains("use lifting"), lifting);
        assertFalse(card(cards, "1, line 2").contains("lifting<"), cards);
    }

    /** A leg with a sample is longer than its twin; who lays out from both cut ends must know. */
    @Test
    void sampleAndSpare_standOnCardAndTag() throws IOException {
        plan();
        String cards = sheet("--cards");
        assertTrue(cards.contains("1/2.1-1 carries 1 m for the break test"), cards);
        assertTrue(cards.contains("every piece carries 150 mm more than it needs"), cards);
        String tags = sheet("--tags");
        assertTrue(tags.contains("with a sample of 1 m, with 150 mm spare"), tags);
        assertTrue(tags.contains("on pins of 300 mm, after a first wetting that shrinks it by 5 %"), tags);
        assertTrue(tags.contains("passes 7.975 m to 8.025 m"), tags);
        assertEquals(1, tags.split("with a sample", -1).length - 1);
    }

    /** A counter that shows 1 for a true 0.995: the sheet prints what it will show. */
    @Test
    void counter_isPrintedAsItWillRead() throws IOException {
        Files.writeString(
                shop.resolve("splices.json"),
                """
                {"format": "bitterend/splices/1", "counters": [{"ropes": ["KM11"], "factor": "0.995"}]}
                """);
        plan();
        String csv = sheet("--csv");
        List<String> head = List.of(csv.lines().findFirst().orElseThrow().split(","));
        String[] cells = csv.lines()
                .filter(line -> line.contains("R6,KM11,") && line.contains(",1/6.1,"))
                .findFirst()
                .orElseThrow()
                .split(",");
        long at = Long.parseLong(cells[head.indexOf("at mm")]);
        assertEquals(Math.round(at / 0.995), Long.parseLong(cells[head.indexOf("counter mm")]));
        String page = sheet();
        assertTrue(page.contains("true length is 0.995 x its reading"), page);
        String reading = String.format(java.util.Locale.ROOT, "%.3f", Math.round(at / 0.995) / 1000.0);
        assertTrue(page.contains("<td class=\"c-at\">" + reading + "</td>"), reading);
        assertFalse(page.contains("<td class=\"c-at\">" + String.format(java.util.Locale.ROOT, "%.3f", at / 1000.0)));
    }

    @Test
    void sheet_hasOneTableForOneSplice() throws IOException {
        plan();
        String page = sheet();
        assertEquals(1, page.split("double-braid eye, one-fid form <span", -1).length - 1);
        assertTrue(page.contains("1/1 A") && page.contains("1/1 B"), page);
    }
}
