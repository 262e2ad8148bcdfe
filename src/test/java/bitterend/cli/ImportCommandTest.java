package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.workbook.RawBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** From the workbooks of invented lofts, each of another habit, to their first plan, without a file edited by hand. */
final class ImportCommandTest {
    private static final Path SHEETS = Path.of("src/test/resources/imports");
    private static final int MOST_QUESTIONS = 6;

    private final Path shop;

    ImportCommandTest(@TempDir Path folder) {
        this.shop = folder.resolve("loft");
    }

    /** A loft: how its shop begins, its files, the answers to what they leave open, and how many pieces it has to cut. */
    private record Loft(String begin, List<String> files, List<String> answers, int pieces) {}

    /** A title above, semicolons, decimal commas, Windows letters, a row of sums. */
    private static final Loft KITTIWAKE = new Loft(
            "--units metric",
            List.of("kittiwake-seile.csv", "kittiwake-rollen.csv", "kittiwake-auftraege.csv"),
            List.of("rope Polyester doppelt gefl. 10 mm wei\u00df=PG10"),
            17);

    /** Feet and inches, days with the month first, no line numbers, ropes told by what they are. */
    private static final Loft PUFFIN = new Loft(
            "--units imperial --currency USD",
            List.of("puffin-ropes.csv", "puffin-reels.csv", "puffin-orders.csv"),
            List.of("days=month-first", "unit Length=ft", "end eye splice=length 6 in"),
            9);

    /** One workbook with real days and numbers, order numbers at the first line alone, and a sheet that is no table. */
    private static final Loft CORMORANT = new Loft(
            "--units metric",
            List.of("cormorant.xlsx"),
            List.of("unit Longueur=m", "blank order=as above", "thimble DT10=light-10"),
            12);

    static Stream<Loft> lofts() {
        return Stream.of(KITTIWAKE, PUFFIN, CORMORANT);
    }

    private Run bitterend(String... words) {
        return Run.of(words);
    }

    private void begin(Loft loft) {
        List<String> words = new ArrayList<>(List.of("init", "" + shop));
        words.addAll(List.of(loft.begin().split(" ")));
        assertEquals(0, bitterend(words.toArray(String[]::new)).code());
    }

    private Run look(String file, String... more) {
        List<String> words = new ArrayList<>(List.of("import", "" + shop, "" + SHEETS.resolve(file)));
        words.addAll(List.of(more));
        return bitterend(words.toArray(String[]::new));
    }

    private static int questions(Run looked) {
        return looked.out().split("\"question\"", -1).length - 1;
    }

    /** Takes a file over with those of the answers that it asks for; how many that were. */
    private int takeOver(Loft loft, String file) {
        Run asked = look(file, "--json");
        List<String> words = new ArrayList<>();
        for (String answer : loft.answers()) {
            String id = answer.substring(0, answer.lastIndexOf('='));
            if (asked.out().contains("\"id\": \"" + id + "\"")) {
                words.addAll(List.of("--answer", answer));
            }
        }
        assertEquals(questions(asked), words.size() / 2, asked.out());
        words.add("--accept");
        Run taken = look(file, words.toArray(String[]::new));
        assertEquals(0, taken.code(), taken.out() + taken.err());
        assertTrue(taken.err().contains("Written: "), taken.err());
        return questions(asked);
    }

    @ParameterizedTest
    @MethodSource("lofts")
    void workbook_becomesThePlan_withAtMostSixQuestions(Loft loft) {
        begin(loft);
        int asked = 0;
        for (String file : loft.files()) {
            asked += takeOver(loft, file);
        }
        assertTrue(asked <= MOST_QUESTIONS, asked + " questions");
        assertEquals(loft.answers().size(), asked);
        Run plan = bitterend("plan", "" + shop, "--day", "2026-11-30", "--until", "2027-01-31", "--time", "500ms");
        assertEquals(0, plan.code(), plan.err());
        assertTrue(plan.out().contains("Planned: all " + loft.pieces() + " pieces"), plan.out());
    }

    @ParameterizedTest
    @MethodSource("lofts")
    void nextImportOfTheSameSheet_asksNothing_andChangesNothing(Loft loft) throws IOException {
        begin(loft);
        loft.files().forEach(file -> takeOver(loft, file));
        String before = Files.readString(shop.resolve("orders.csv"));
        for (String file : loft.files()) {
            Run again = look(file, "--json");
            assertEquals(0, questions(again), again.out());
            assertFalse(again.out().contains("\"is\": \"new\""), again.out());
            assertFalse(again.out().contains("\"is\": \"changed\""), again.out());
            assertTrue(look(file, "--accept").err().contains("All of it is there"), file);
        }
        assertEquals(before, Files.readString(shop.resolve("orders.csv")));
    }

    @Test
    void looking_writesNothing() throws IOException {
        begin(PUFFIN);
        List<String> before = files();
        assertEquals(0, look("puffin-ropes.csv").code());
        assertEquals(before, files());
        assertEquals(3, look("puffin-orders.csv", "--accept").code(), "questions are open");
        assertEquals(before, files());
    }

    private List<String> files() throws IOException {
        List<String> all = new ArrayList<>();
        try (Stream<Path> inside = Files.walk(shop)) {
            for (Path file : inside.filter(Files::isRegularFile).sorted().toList()) {
                all.add(file + Files.readString(file));
            }
        }
        return all;
    }

    @Test
    void changedRow_isShownBeforeAndAfter_andOnlyItsCellIsWritten() throws IOException {
        begin(KITTIWAKE);
        KITTIWAKE.files().forEach(file -> takeOver(KITTIWAKE, file));
        Path orders = shop.resolve("orders.csv");
        String there = Files.readString(orders);
        Files.writeString(orders, there.replace("28.5 m", "27 m").replace(",,,,Fall", ",9,,,Fall"));
        Run changed = look("kittiwake-auftraege.csv", "--accept");
        assertTrue(changed.out().contains("length: 27 m -> 28.5 m"), changed.out());
        assertTrue(changed.out().contains("0 new, 1 changed, 4 as they are"), changed.out());
        assertEquals(
                there.replace(",,,,Fall", ",9,,,Fall"), Files.readString(orders), "what the sheet says nothing of");
    }

    @Test
    void lastImport_isTakenBackWhole_unlessSomebodyChangedAFileSince() throws IOException {
        begin(CORMORANT);
        String ropes = Files.readString(shop.resolve("ropes.csv"));
        String orders = Files.readString(shop.resolve("orders.csv"));
        takeOver(CORMORANT, "cormorant.xlsx");
        String reels = Files.readString(shop.resolve("reels.csv"));
        Files.writeString(shop.resolve("reels.csv"), reels + "\n");
        Run refused = bitterend("import", "" + shop, "--back");
        assertEquals(3, refused.code());
        assertTrue(refused.err().contains("reels.csv changed since the last import"), refused.err());
        Files.writeString(shop.resolve("reels.csv"), reels);
        assertEquals(0, bitterend("import", "" + shop, "--back").code());
        assertEquals(ropes, Files.readString(shop.resolve("ropes.csv")));
        assertEquals(orders, Files.readString(shop.resolve("orders.csv")));
        assertFalse(Files.exists(shop.resolve("mappings.json")));
        assertEquals(3, bitterend("import", "" + shop, "--back").code(), "there is no other");
    }

    @Test
    void importWhoseOrdersBeforeAreGone_isNotTakenBackInPart() throws IOException {
        begin(CORMORANT);
        takeOver(CORMORANT, "cormorant.xlsx");
        List<Path> versions;
        try (Stream<Path> inside = Files.walk(shop)) {
            versions = inside.filter(file -> shop.resolve("orders-before").equals(file.getParent()))
                    .toList();
        }
        assertEquals(1, versions.size());
        Files.delete(versions.get(0));
        List<String> before = files();
        Run back = bitterend("import", "" + shop, "--back");
        assertEquals(3, back.code(), back.err());
        assertEquals(before, files());
    }

    @Test
    void questions_areAskedOneByOneWhereSomebodySits() {
        begin(PUFFIN);
        takeOver(PUFFIN, "puffin-ropes.csv");
        takeOver(PUFFIN, "puffin-reels.csv");
        Run asked = Run.answering(
                List.of("7", "2", "1", "length 8 in"),
                "import",
                "" + shop,
                "" + SHEETS.resolve("puffin-orders.csv"),
                "--ask",
                "--accept");
        assertEquals(0, asked.code(), asked.out() + asked.err());
        assertTrue(asked.err().contains("Expected a number from 1 to 2."), asked.err());
        assertTrue(asked.out().contains("double-braid-eye length 8 in"), asked.out());
    }

    @Test
    void wrongRows_areSaidByTheirCause_andTheOthersAreTaken() throws IOException {
        begin(PUFFIN);
        takeOver(PUFFIN, "puffin-ropes.csv");
        Path sheet = shop.resolveSibling("own.csv");
        StringBuilder rows = new StringBuilder("Order,Rope,Length (ft),Due\n1,Dock 1/2,20,12/13/2026\n");
        for (int order = 2; order < 9; order++) {
            rows.append(order).append(",Dock 1/2,20,soon\n");
        }
        Files.writeString(sheet, rows);
        Run run = bitterend("import", "" + shop, "" + sheet, "--accept");
        assertEquals(4, run.code(), run.out() + run.err());
        assertTrue(run.out().contains("own.csv, row 3, Due: found \"soon\", expected a day with its year"), run.out());
        assertTrue(run.out().contains("and 4 more like these: rows 6 to 9."), run.out());
        assertTrue(Files.readString(shop.resolve("orders.csv")).contains("1,1,,Dock 1/2,20 ft,,,,2026-12-13"));
    }

    private Run own(String name, String text, String... more) throws IOException {
        Path sheet = shop.resolveSibling(name);
        Files.writeString(sheet, text);
        List<String> words = new ArrayList<>(List.of("import", "" + shop, "" + sheet));
        words.addAll(List.of(more));
        return bitterend(words.toArray(String[]::new));
    }

    @Test
    void rowsBelowAnOrderNumberThatCannotBeRead_areNotOfTheOrderAboveIt() throws IOException {
        begin(PUFFIN);
        takeOver(PUFFIN, "puffin-ropes.csv");
        Run run = own(
                "own.csv",
                """
                        Order,Rope,Length (ft),Due
                        W-1,Dock 1/2,20,2026-12-13
                        ,Dock 1/2,21,2026-12-13
                        W&2,Dock 1/2,30,2026-12-13
                        ,Dock 1/2,31,2026-12-13
                        """,
                "--answer",
                "blank order=as above",
                "--accept");
        assertEquals(4, run.code(), run.out() + run.err());
        String orders = Files.readString(shop.resolve("orders.csv"));
        assertTrue(orders.contains("W-1,2,,Dock 1/2,21 ft"), orders);
        assertFalse(orders.contains("31 ft"), orders);
        assertTrue(run.out().contains("own.csv, row 5, Order: "), run.out());
    }

    @Test
    void lineThatTakesTheNumberOfOneThatIsGone_isWarnedOf() throws IOException {
        begin(PUFFIN);
        takeOver(PUFFIN, "puffin-ropes.csv");
        String head = "Order,Rope,Length (ft),Due\n";
        String first = "1,Dock 1/2,20,2026-12-13\n";
        String second = "1,Dock 1/2,35,2026-12-13\n";
        Run both = own("own.csv", head + first + second, "--accept");
        assertFalse(both.out().contains("counted from the top"), both.out());
        Run one = own("own.csv", head + second);
        assertTrue(one.out().contains("length: 20 ft -> 35 ft"), one.out());
        assertTrue(one.out().contains("row 2, line: found \"1/1\""), one.out());
    }

    /** Figures in metres last time and in millimetres now, below the same headings. */
    @Test
    void unitOfLastTime_isSaid_andAskedAgainWhereItWouldBeOutOfProportion() throws IOException {
        begin(KITTIWAKE);
        takeOver(KITTIWAKE, "kittiwake-seile.csv");
        String head = "Order,Rope,Length,Due\n";
        StringBuilder first = new StringBuilder(head);
        for (int order = 1; order < 7; order++) {
            first.append(order).append(",PG10,").append(order + 1).append(".5,14/12/2026\n");
        }
        own("own.csv", first.toString(), "--answer", "unit Length=m", "--accept");
        Run next = own("next.csv", head + "7,PG10,4.25,11/12/2026\n", "--accept");
        String kept = "As last time: days are written day first; the decimal sign is a point; "
                + "figures of Length are in m.";
        assertEquals(0, next.code(), next.out() + next.err());
        assertTrue(oneLine(next.out()).contains(kept), next.out());
        assertTrue(oneLine(next.err()).contains(kept), next.err());
        String thin = head + "8,PG10,4250,14/12/2026\n9,PG10,2500,14/12/2026\n";
        Run asked = own("thin.csv", thin, "--accept");
        assertEquals(3, asked.code(), asked.out() + asked.err());
        assertTrue(oneLine(asked.out()).contains("What are the figures of Length in? Last time it was m"), asked.out());
        assertFalse(asked.out().contains("Length are in m"), asked.out());
        Run answered = own("thin.csv", thin, "--answer", "unit Length=mm", "--accept");
        assertEquals(0, answered.code(), answered.out() + answered.err());
        assertTrue(Files.readString(shop.resolve("orders.csv")).contains("PG10,4250 mm"));
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void unitInTheFormatOfACell_comesBeforeThatOfItsHeading() throws IOException {
        begin(KITTIWAKE);
        takeOver(KITTIWAKE, "kittiwake-seile.csv");
        String cells = row(1, "", "Order", "Rope", "Length (m)", "Due")
                + row(2, "", "1", "PG10").replace("</row>", "<c s=\"1\"><v>4250</v></c></row>");
        Path sheet = shop.resolveSibling("own.xlsx");
        RawBook.of("Work", cells).formats("General", "0\" mm\"").write(sheet);
        Run run = bitterend("import", "" + shop, "" + sheet, "--accept");
        assertEquals(0, run.code(), run.out() + run.err());
        String orders = Files.readString(shop.resolve("orders.csv"));
        assertTrue(orders.contains("PG10,4250 mm"), orders);
    }

    @Test
    void workbookInPlaceOfTheOrders_isNamed() throws IOException {
        begin(PUFFIN);
        takeOver(PUFFIN, "puffin-ropes.csv");
        Files.delete(shop.resolve("orders.csv"));
        RawBook.of("Orders", row(1, "", "order", "line", "rope", "length", "quantity", "due"))
                .write(shop.resolve("orders.xlsx"));
        Run run = own("own.csv", "Order,Rope,Length (ft),Due\n1,Dock 1/2,20,2026-12-13\n", "--accept");
        String out = oneLine(run.out() + run.err());
        assertTrue(out.contains("orders.xlsx: found \"a workbook in place of orders.csv\""), out);
    }

    @Test
    void hiddenSheet_isLeftOutWithAWord() throws IOException {
        begin(PUFFIN);
        takeOver(PUFFIN, "puffin-ropes.csv");
        String rows = row(1, "", "Order", "Rope", "Length (ft)", "Due");
        Path sheet = shop.resolveSibling("own.xlsx");
        RawBook.of("Work", rows + row(2, "", "1", "Dock 1/2", "20", "2026-12-13"))
                .sheet(
                        "Old",
                        "state=\"hidden\"",
                        "<sheetData>" + rows + row(2, "", "2", "Dock 1/2", "30", "2026-12-13") + "</sheetData>")
                .write(sheet);
        Run run = bitterend("import", "" + shop, "" + sheet);
        assertEquals(0, run.code(), run.err());
        assertTrue(oneLine(run.out()).contains("own.xlsx, sheet Old: found \"a hidden sheet\""), run.out());
        assertFalse(run.out().contains("30 ft"), run.out());
    }

    @Test
    void sheetThatIsNotReadToItsEnd_isNotTakenInPart_andHiddenRowsAreTold() throws IOException {
        begin(PUFFIN);
        takeOver(PUFFIN, "puffin-ropes.csv");
        String first =
                row(1, "", "Order", "Rope", "Length (ft)", "Due") + row(2, "", "1", "Dock 1/2", "20", "2026-12-13");
        String hidden = row(3, "hidden=\"1\"", "2", "Dock 1/2", "30", "2026-12-13");
        Path sheet = shop.resolveSibling("own.xlsx");
        RawBook.of("Work", first + hidden).write(sheet);
        Run whole = bitterend("import", "" + shop, "" + sheet);
        assertTrue(whole.out().contains("row 3 hidden"), whole.out());
        RawBook.of("Work", first + row(2, "", "2", "Dock 1/2", "30", "2026-12-13"))
                .write(sheet);
        Run broken = bitterend("import", "" + shop, "" + sheet, "--accept");
        assertEquals(3, broken.code(), broken.out() + broken.err());
        assertTrue(broken.err().contains("row 2 behind row 2"), broken.err());
    }

    private static String row(int number, String attributes, String... cells) {
        StringBuilder row = new StringBuilder("<row r=\"" + number + "\" " + attributes + ">");
        for (String cell : cells) {
            row.append("<c t=\"inlineStr\"><is><t>").append(cell).append("</t></is></c>");
        }
        return row.append("</row>").toString();
    }

    @Test
    void fileThatWouldBeBroken_isNotWritten() throws IOException {
        begin(PUFFIN);
        takeOver(PUFFIN, "puffin-ropes.csv");
        Path reels = shop.resolve("reels.csv");
        String there = "reel,rope,length (ft)\n7,Dock 1/2,100\n";
        Files.writeString(reels, there);
        Run run = look("puffin-reels.csv", "--accept");
        assertEquals(4, run.code(), run.out() + run.err());
        assertEquals(there, Files.readString(reels));
        Files.writeString(reels, "reel,rope,length\n7,Dock 1/2,100 ft\n");
        assertEquals(0, look("puffin-reels.csv", "--accept").code());
        assertEquals(0, bitterend("check", "" + shop).code());
    }

    @Test
    void priceOfAnotherCurrencyOrOfAWholeReel_isNotTakenForOneOfTheShop() throws IOException {
        begin(PUFFIN);
        Run euros = own("own.csv", "Rope,Type,Material,Size (in),Price (EUR/m)\nLine A,3 Strand,Nylon,1/2,1.85\n");
        assertTrue(euros.out().contains("a price in USD, the currency of shop.json"), euros.out());
        Run whole =
                own("two.csv", "Rope,Type,Material,Size (in),Price per 600 ft reel\nLine A,3 Strand,Nylon,1/2,372\n");
        assertTrue(whole.out().contains("For how much rope are the prices"), whole.out());
    }

    @Test
    void answerThatMeansNothing_isRefusedWithWhatWasMeant() {
        begin(PUFFIN);
        Run heading = look("puffin-ropes.csv", "--answer", "Color=colur");
        assertEquals(4, heading.code());
        assertTrue(heading.out().contains("did you mean colour?"), heading.out());
        Run nothing = look("puffin-ropes.csv", "--answer", "Colr=colour");
        assertEquals(3, nothing.code());
        assertTrue(nothing.err().contains("expected a heading of the file, or the name of a question"), nothing.err());
    }

    @Test
    void answerForAllRows_mustBeOne() throws IOException {
        begin(PUFFIN);
        Path sheet = shop.resolveSibling("ropes.csv");
        Files.writeString(sheet, "Rope,Diameter (in),Price per ft\nnylon 3 strand,1/2,0.62\n");
        Run asked = bitterend("import", "" + shop, "" + sheet, "--json");
        assertEquals(1, questions(asked), asked.out());
        Run wrong = bitterend("import", "" + shop, "" + sheet, "--answer", "usualReel of all rows=long", "--accept");
        assertEquals(4, wrong.code());
        assertTrue(wrong.out().contains("usualReel of all rows: found \"long\", expected a length"), wrong.out());
        assertFalse(Files.readString(shop.resolve("ropes.csv")).contains("nylon"), "it is not written");
        Run right = bitterend("import", "" + shop, "" + sheet, "--answer", "usualReel of all rows=600 ft", "--accept");
        assertEquals(0, right.code(), right.out());
        assertTrue(Files.readString(shop.resolve("ropes.csv")).contains("600 ft"));
    }

    @Test
    void heading_isWhatIsAnswered_evenNothing() {
        begin(PUFFIN);
        Run left = look("puffin-ropes.csv", "--answer", "Color=left out");
        assertTrue(left.out().contains("Left out, as nothing in the shop is known by these names: Color."), left.out());
    }

    @Test
    void rackInALedger_isNotImportedOverIt() {
        begin(PUFFIN);
        takeOver(PUFFIN, "puffin-ropes.csv");
        assertEquals(0, bitterend("stock", "open", "" + shop).code());
        Run run = look("puffin-reels.csv", "--accept");
        assertEquals(4, run.code());
        assertTrue(run.out().contains("stock receive books reels"), run.out());
    }

    @Test
    void exampleThatAReelOfTheLedgerIsOf_doesNotGo() throws IOException {
        begin(PUFFIN);
        assertEquals(0, bitterend("stock", "open", "" + shop).code());
        Run came = bitterend("stock", "receive", "" + shop, "R-1", "LAID-14", "600 ft");
        assertEquals(0, came.code(), came.err());
        takeOver(PUFFIN, "puffin-ropes.csv");
        assertTrue(Files.readString(shop.resolve("ropes.csv")).contains("LAID-14,"));
    }

    @Test
    void fileThatIsNone_isRefused() throws IOException {
        begin(PUFFIN);
        assertEquals(3, look("no-such.csv").code());
        Path sheet = shop.resolveSibling("letter.txt");
        Files.writeString(sheet, "Dear loft,\nplease send rope.\n");
        Run run = bitterend("import", "" + shop, "" + sheet);
        assertEquals(4, run.code(), run.out());
        assertTrue(run.out().contains("a row of headings, such as order, rope, length"), run.out());
        assertEquals("Nothing was written.\n", run.err(), "there is nothing to accept");
    }
}
