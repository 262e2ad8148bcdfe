package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import org.junit.jupiter.params.provider.CsvSource;

/** The boxes of a splice card, booked by one command. */
final class MeasureCommandTest {
    private final Path shop;

    MeasureCommandTest(@TempDir Path folder) throws IOException {
        shop = CardShop.in(folder);
    }

    private Run measure(String piece, String cut, String cameOut, String... more) {
        List<String> args = new java.util.ArrayList<>(List.of(
                "measure",
                shop.toString(),
                piece,
                "--cut",
                cut,
                "--came-out",
                cameOut,
                "--splicer",
                "Iversen",
                "--day",
                "2026-03-04"));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    private List<String> rows() throws IOException {
        Path file = shop.resolve("measured.csv");
        return Files.exists(file) ? Files.readAllLines(file) : List.of();
    }

    @Test
    void pieceThatPasses_isARowThatCalibrateReads() throws IOException {
        Run run = measure("1/3.1", "12.05 m", "10.79 m");
        assertEquals(0, run.code(), run.err());
        Golden.check("cli/measure.txt", run.out());
        assertEquals(2, rows().size());
        assertEquals(
                "1/3.1,TS16,three-strand-eye length 250 mm tucks 5,whipped,12.05 m,10.79 m,flat,,no,Iversen,,"
                        + "2026-03-04,passed",
                rows().get(1));
        Run calibrate = Run.of("calibrate", shop.toString());
        assertTrue(calibrate.err().contains("at least three of a termination and rope"), calibrate.err());
    }

    @ParameterizedTest
    @CsvSource({
        // 11 m within 1 %, under a tension that stretches it by 2 %: slack 10.784 m
        "1/3.1, 10.5 m, slack",
        "1/3.1, 10.9 m, slack",
        "1/3.1, 10.8 m, tension",
        // 8 m within 25 mm, on its pin
        "1/1.2, 8.03 m, pins"
    })
    void pieceOutside_isBookedOnlyWithAWord(String piece, String cameOut, String how) throws IOException {
        Run run = measure(piece, "12.05 m", cameOut, "--how", how);
        assertEquals(2, run.code(), run.err());
        assertTrue(
                run.err().replaceAll("\\s+", " ").contains("say --accepted NAME, --respliced or --spoiled"), run.err());
        assertEquals(List.of(), rows());
        Run accepted = measure(piece, "12.05 m", cameOut, "--how", how, "--accepted", "Okafor");
        assertEquals(0, accepted.code(), accepted.err());
        assertTrue(rows().get(1).endsWith(",accepted by Okafor"), rows().toString());
        Run again = measure(piece, "12.05 m", cameOut, "--how", how, "--respliced");
        assertEquals(0, again.code(), again.err());
        assertTrue(rows().get(2).startsWith(piece + " (2),"), rows().toString());
        assertTrue(rows().get(2).endsWith(",to be respliced"), rows().toString());
    }

    @ParameterizedTest
    @CsvSource({
        "9/9.9, 5 m, slack, no order asks for piece 9/9.9",
        "1/1.1, 7.9 m, tension, names no tension",
        "1/7.1, 99 m, slack, cannot come out longer than it was cut"
    })
    void whatCannotBe_isRefused(String piece, String cameOut, String how, String why) throws IOException {
        Run run = measure(piece, "12.05 m", cameOut, "--how", how, "--accepted", "Okafor");
        assertEquals(3, run.code(), run.err());
        assertTrue(run.err().contains(why), run.err());
        assertEquals(List.of(), rows());
    }

    /** How long it took is a cell of the row, and said; what is no whole minutes is refused. */
    @Test
    void minutes_areBookedWithThePiece() throws IOException {
        Run run = measure("1/3.1", "12.05 m", "10.79 m", "--minutes", "75 min");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().replaceAll("\\s+", " ").contains("passed, in 1 h 15 min."), run.out());
        assertTrue(rows().get(1).endsWith(",no,Iversen,75,2026-03-04,passed"), rows().toString());
        assertTrue(
                measure("1/3.1", "12.05 m", "10.79 m", "--minutes", "40", "--json")
                        .out()
                        .contains("\"minutes\": 40"),
                "as JSON");
        Run wrong = measure("1/3.1", "12.05 m", "10.79 m", "--minutes", "an hour");
        assertEquals(2, wrong.code(), wrong.err());
        assertTrue(wrong.err().contains("whole minutes from 1 to 9999, such as 75"), wrong.err());
        Run idle = Run.of("measure", shop.toString(), "1/3.1", "--passed", "--minutes", "40");
        assertEquals(2, idle.code(), idle.err());
        assertEquals(3, rows().size());
    }

    /** A file from before minutes were booked gets their column; its rows stay as they are, and can still be taken back. */
    @Test
    void olderFile_getsTheColumnOfMinutes() throws IOException {
        String head = "id,rope,end a,end b,cut,finished,measured,extension,bedded in,splicer,day,note";
        String old =
                "A,TS16,\"three-strand-eye length 250 mm tucks 5\",whipped,12.05 m,10.79 m,flat,,no,,,\"by hand, twice\"";
        Files.writeString(shop.resolve("measured.csv"), head + "\r\n" + old + "\r\n");
        assertEquals(0, measure("1/3.1", "12.05 m", "10.79 m").code());
        assertEquals(head, rows().get(0));
        String before = rows().get(2);
        Run run = measure("1/3.1", "12.05 m", "10.78 m", "--minutes", "50");
        assertEquals(0, run.code(), run.err());
        assertEquals(List.of(head + ",minutes", old + ",", before + ","), rows().subList(0, 3));
        assertTrue(rows().get(3).endsWith(",Iversen,2026-03-04,passed,50"), rows().toString());
        assertTrue(bitterend.exchange.MeasuredRows.takeOut(shop, before));
        assertEquals(3, rows().size());
    }

    /** What a rigger reads off a tape in inches is kept in inches: 35 ft 5 in are 10,795 mm. */
    @Test
    void lengths_areKeptAndPrintedAsTheyWereTyped() throws IOException {
        assertEquals(0, Run.of("plan", shop.toString(), "--time", "1s").code());
        Run run = measure("1/3.1", "39 ft 6 1/2 in", "35  ft 5 in");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().replaceAll("\\s+", " ").contains("1/3.1 came out at 35 ft 5 in (10.795 m)"), run.out());
        assertTrue(rows().get(1).contains(",39 ft 6 1/2 in,35 ft 5 in,flat,"), rows().toString());
        assertTrue(tags("metric").contains("came out 35 ft 5 in (10.795 m), flat, passed"), tags("metric"));
        assertTrue(tags("imperial").contains("came out 35 ft 5 in, flat, passed"), tags("imperial"));
    }

    private String tags(String units) throws IOException {
        return PageText.of(Path.of(Run.of("sheet", shop.toString(), "--all", "--tags", "--units", units)
                .out()
                .strip()));
    }

    /** Take-up is learned of the rope that was spliced, not of the one that was ordered: as the ledger has it, or as said. */
    @Test
    void pieceOfASubstitute_isARowOfItsOwnRope(@TempDir Path other) throws IOException {
        Path loft = DemoShop.copy("gannet-loft", other);
        String[] boxes = {"measure", loft.toString(), "G-2101/1.1", "--came-out", "38.5 m"};
        assertEquals(
                0, Run.of(with(boxes, "--cut", "39.02 m", "--rope", "DB12-G")).code());
        Run wrong = Run.of(with(boxes, "--cut", "39.02 m", "--rope", "DB10"));
        assertEquals(3, wrong.code());
        assertTrue(
                wrong.err().contains("piece G-2101/1.1 may be of DB12, DB12-G, not of DB10; nothing was booked"),
                wrong.err());
        assertEquals(0, Run.of("stock", "open", loft.toString()).code());
        Run cut = Run.of("stock", "cut", loft.toString(), "0425", "39.02 m", "--piece", "G-2101/1.1");
        assertEquals(0, cut.code(), cut.err());
        Run booked = Run.of(boxes);
        assertEquals(0, booked.code(), booked.err());
        List<String> rows = Files.readAllLines(loft.resolve("measured.csv"));
        assertTrue(rows.get(rows.size() - 2).startsWith("G-2101/1.1,DB12-G,"), rows.toString());
        assertTrue(rows.get(rows.size() - 1).startsWith("G-2101/1.1 (2),DB12-G,"), rows.toString());
    }

    private static String[] with(String[] args, String... more) {
        return java.util.stream.Stream.concat(java.util.Arrays.stream(args), java.util.Arrays.stream(more))
                .toArray(String[]::new);
    }

    /** The file is the shop's: its columns, its separator and its rows stay as they are. */
    @Test
    void ownFile_keepsItsFormAndItsRows() throws IOException {
        String own = "id;rope;end a;end b;finished;cut;note;day;splicer;measured;bedded in\n"
                + "old;DB12;double-braid-eye length 300 mm;plain;7 m;8 m;\"a; b\";;;flat;no";
        Files.writeString(shop.resolve("measured.csv"), own);
        assertEquals(0, measure("1/1.1", "9.9 m", "8.02 m").code());
        String now = Files.readString(shop.resolve("measured.csv"));
        assertTrue(now.startsWith(own + "\n"), now);
        assertTrue(rows().get(2).startsWith("1/1.1;DB12;"), now);
        Run tension = measure("1/3.1", "12.05 m", "11.0 m", "--how", "tension");
        assertEquals(3, tension.code(), tension.err());
        assertTrue(tension.err().contains("measured.csv, row 1, extension"), tension.err());
        assertEquals(3, rows().size());
    }

    @Test
    void tag_carriesWhatWasMeasured() throws IOException {
        assertEquals(0, Run.of("plan", shop.toString(), "--time", "1s").code());
        measure("1/3.1", "12.05 m", "10.79 m");
        Run tags = Run.of("sheet", shop.toString(), "--all", "--tags");
        String page = PageText.of(Path.of(tags.out().strip()));
        assertTrue(page.contains("came out 10.79 m, flat, passed, spliced by Iversen, 2026-03-04"), page);
        measure("1/3.1", "12.05 m", "10.5 m", "--accepted", "Okafor");
        Run.of("sheet", shop.toString(), "--all", "--tags");
        page = PageText.of(Path.of(tags.out().strip()));
        assertTrue(page.contains("came out 10.5 m, flat, accepted by Okafor, spliced by Iversen"), page);
    }

    @Test
    void answer_isJsonForPrograms() {
        Run run = measure("1/1.1", "9.9 m", "8.03 m", "--json");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("\"verdict\": \"passed\""), run.out());
        assertTrue(run.out().contains("\"least\": "), run.out());
    }

    /** With a ledger the piece is made and looked over, in one event; a piece that is not cut is neither. */
    @Test
    void ledger_knowsWhatIsMade() throws IOException {
        cutSprings();
        assertEquals(0, measure("1/1.1", "9.9 m", "8.02 m", "--how", "pins").code());
        assertEquals(
                0,
                measure("1/1.2", "9.9 m", "8.5 m", "--how", "pins", "--spoiled").code());
        assertEquals(3, rows().size());
        assertEquals("passed", state("1/1.1"));
        assertEquals("planned", state("1/1.2"));
        assertEquals(0, Run.of("stock", "verify", shop.toString()).code());
    }

    @Test
    void pieceThatIsNotCut_isNotMade() throws IOException {
        assertEquals(0, Run.of("stock", "open", shop.toString()).code());
        Run early = measure("1/1.1", "9.9 m", "8.02 m", "--how", "pins");
        assertEquals(3, early.code(), early.out());
        assertTrue(early.err().contains("piece 1/1.1 is not cut"), early.err());
        assertEquals(List.of(), rows());
    }

    /** What it was cut to is in the ledger already. */
    @Test
    void cut_isAsTheLedgerHasIt_unlessSaid() throws IOException {
        Run without = Run.of("measure", shop.toString(), "1/1.1", "--came-out", "8.02 m");
        assertEquals(3, without.code(), without.out());
        assertTrue(without.err().contains("say with --cut what it was cut to"), without.err());
        cutSprings();
        Run run = Run.of("measure", shop.toString(), "1/1.1", "--came-out", "8.02 m", "--how", "pins");
        assertEquals(0, run.code(), run.err());
        String trace =
                Run.of("stock", "trace", shop.toString(), "1/1.1", "--json").out();
        String cut = rows().get(1).split(",")[4];
        assertTrue(trace.contains('"' + cut + '"'), cut + trace);
    }

    /** The figure and the row go together: calibrate learns nothing from what was taken back. */
    @ParameterizedTest
    @CsvSource({
        "8.02 m, --passed, passed, cut",
        "8.5 m, --accepted=Okafor, passed, cut",
        "8.5 m, --spoiled, planned, cut"
    })
    void undo_takesTheEventBackWhole_withItsRow(String cameOut, String said, String then, String after)
            throws IOException {
        cutSprings();
        assertEquals(0, measure("1/1.2", "9.9 m", "8.01 m", "--how", "pins").code());
        List<String> before = rows();
        Run run = measure("1/1.1", "9.9 m", cameOut, "--how", "pins", said);
        assertEquals(0, run.code(), run.err());
        assertEquals(3, rows().size());
        assertEquals(then, state("1/1.1"));
        Run undo = Run.of("stock", "undo", shop.toString(), event(run));
        assertEquals(0, undo.code(), undo.err());
        assertTrue(undo.out().contains("its row of measured.csv went with it: 1/1.1,"), undo.out());
        assertEquals(before, rows());
        assertEquals(after, state("1/1.1"));
        assertEquals(0, Run.of("stock", "verify", shop.toString()).code());
    }

    @Test
    void undo_leavesARowThatAPersonChanged_andSaysSo() throws IOException {
        cutSprings();
        Run run = measure("1/1.1", "9.9 m", "8.02 m", "--how", "pins");
        Path file = shop.resolve("measured.csv");
        Files.writeString(file, Files.readString(file).replace("8.02 m,", "8.025 m,"));
        Run undo = Run.of("stock", "undo", shop.toString(), event(run));
        assertTrue(undo.out().contains("its row of measured.csv is not as it was written"), undo.out());
        assertEquals(2, rows().size());
        assertEquals("cut", state("1/1.1"));
    }

    @Test
    void undo_ofAFigureThatSomethingWasBuiltOn_isRefused() throws IOException {
        cutSprings();
        Run run = measure("1/1.1", "9.9 m", "8.02 m", "--how", "pins");
        assertEquals(
                0,
                Run.of("orders", "deliver", shop.toString(), "1", "--piece", "1/1.1")
                        .code());
        Run undo = Run.of("stock", "undo", shop.toString(), event(run));
        assertEquals(3, undo.code(), undo.out());
        assertTrue(undo.err().contains("delivered"), undo.err());
        assertEquals(2, rows().size());
        assertEquals("delivered", state("1/1.1"));
    }

    @Test
    void pieceToBeRespliced_isCut_untilItIsMeasuredAgain() throws IOException {
        cutSprings();
        assertEquals(
                0,
                measure("1/1.1", "9.9 m", "8.5 m", "--how", "pins", "--respliced")
                        .code());
        assertEquals("cut", state("1/1.1"));
        assertEquals(0, measure("1/1.1", "9.9 m", "8.01 m", "--how", "pins").code());
        assertEquals("passed", state("1/1.1"));
    }

    @Test
    void piecesWithoutAFigure_arePassedTogether_andTakenBackTogether() throws IOException {
        cutSprings();
        Run nothing = Run.of("measure", shop.toString(), "1/1.1");
        assertEquals(2, nothing.code());
        assertTrue(nothing.err().contains("--came-out"), nothing.err());
        Run two = Run.of("measure", shop.toString(), "1/1.1", "1/1.2", "--came-out", "8 m");
        assertEquals(2, two.code());
        Run passed = Run.of("measure", shop.toString(), "1/1.1", "1/1.2", "--passed", "--who", "Okafor");
        assertEquals(0, passed.code(), passed.err());
        assertEquals("passed", state("1/1.2"));
        assertEquals(List.of(), rows());
        assertEquals(0, Run.of("stock", "undo", shop.toString(), event(passed)).code());
        assertEquals("cut", state("1/1.1"));
        assertEquals("cut", state("1/1.2"));
    }

    /** Where the order does not say how near it must come, a figure far off what is ordered is a slip until somebody says so. */
    @Test
    void figureFarOffWhatIsOrdered_wantsAWord_andIsToldHowToTakeItBack() throws IOException {
        Run slip = measure("1/7.1", "8 m", "5 m", "--how", "slack");
        assertEquals(2, slip.code(), slip.err());
        assertTrue(slip.err().replaceAll("\\s+", " ").contains("say --passed, --accepted NAME"), slip.err());
        assertEquals(List.of(), rows());
        cutSprings();
        Run passed = Run.of("measure", shop.toString(), "1/1.1", "--came-out", "8.02 m", "--passed");
        assertEquals(0, passed.code(), passed.err());
        assertTrue(
                passed.out()
                        .contains("taken back with:\n  bitterend stock undo " + shop + " "
                                + passed.out().replaceAll("(?s).*Event (\\d+).*", "$1")),
                passed.out());
    }

    @Test
    void deliveredPiece_isPassedNoMore() {
        cutSprings();
        String[] deliver = {"orders", "deliver", shop.toString(), "1", "--piece", "1/1.1", "--unpassed"};
        assertEquals(0, Run.of(deliver).code());
        for (String said : List.of("--passed", "--came-out=8.02 m")) {
            Run late = Run.of("measure", shop.toString(), "1/1.1", said);
            assertEquals(3, late.code(), late.err());
            assertTrue(late.err().contains("piece 1/1.1 is delivered"), late.err());
        }
    }

    /** A piece without a splice, and one with two kinds, teach nothing about take-up; the others do. */
    @Test
    void rowsThatTeachNothing_doNotStopCalibrate() {
        for (int sample = 0; sample < 3; sample++) {
            assertEquals(0, measure("1/3.1", "12.05 m", "10.79 m").code());
        }
        assertEquals(0, measure("1/7.1", "8 m", "6 m", "--how", "slack").code());
        Run calibrate = Run.of("calibrate", shop.toString());
        assertEquals(0, calibrate.code(), calibrate.err());
        assertTrue(calibrate.err().contains("neither take-up is known from the sum"), calibrate.err());
    }

    private void cutSprings() {
        for (String[] step : new String[][] {
            {"stock", "open", "" + shop},
            {"plan", "" + shop, "--time", "300ms"},
            {"stock", "post", "" + shop, "--reel", "R1"}
        }) {
            Run run = Run.of(step);
            assertEquals(0, run.code(), run.err());
        }
    }

    private String state(String piece) {
        String json = Run.of("orders", shop.toString(), "--json").out();
        String from = json.substring(json.indexOf("\"piece\": \"" + piece + '"'));
        return from.split("\"state\": \"")[1].split("\"")[0];
    }

    private static String event(Run run) {
        return run.out().replaceAll("(?s).*Event (\\d+)\\.\\s*", "$1");
    }
}
