package bitterend.exchange.mapping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.Shop;
import bitterend.exchange.ShopFolder;
import bitterend.exchange.form.LocalForm;
import bitterend.exchange.form.OwnSheet;
import bitterend.finding.Findings;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Headings, days, figures, ropes and ends of a sheet, each where it is clear and where it is not. */
final class SheetReadingTest {
    private static final Shop LOFT =
            ShopFolder.read(Path.of("demo-data/gannet-loft")).shop().orElseThrow();

    private LocalForm form = LocalForm.NONE;

    @TempDir
    private Path folder = Path.of("");

    private Understood read(String text, Map<String, String> answers) throws IOException {
        return read(text.getBytes(StandardCharsets.UTF_8), answers);
    }

    private Understood read(byte[] bytes, Map<String, String> answers) throws IOException {
        Path file = folder.resolve("own.csv");
        Files.write(file, bytes);
        OwnSheet sheet = OwnSheet.read(file, new Findings()).get(0);
        Known known = new Known(
                LOFT.catalogue(), LOFT.settings().units(), LOFT.settings().money(), form, Map.of(), Map.of());
        return SheetReading.read(sheet, known, Map.of(), answers);
    }

    private Understood read(String text) throws IOException {
        return read(text, Map.of());
    }

    private static List<String> asked(Understood understood) {
        return understood.questions().stream().map(Question::id).toList();
    }

    private static String first(Understood understood, String member) {
        return understood.rows().get(0).text(member);
    }

    @ParameterizedTest
    @CsvSource({
        "Auftr.-Nr., order",
        "Quantity, quantity",
        "Quantty, quantity",
        "Liefertermin, due",
        "F\u00c4LLIG, due",
        "Required by, due",
        "Lengte (m), length",
        "Finished length in m, length",
        "Our finished length (m), length",
        "B\u00e5t, customer",
        "Weather, ''"
    })
    void heading_isWhatTheTradeCallsIt(String heading, String member) throws IOException {
        Understood read = read("Job;" + heading + ";Boat;Rope\n1;;;DB12\n", Map.of("column Job", "line"));
        assertEquals(member, read.columns().get(1).member());
    }

    @Test
    void days_areOfTheOneFormThatAllOfThemCanHave() throws IOException {
        String rows = "Order,Rope,Length (m),Due\n1,DB12,2,03/04/2026\n2,DB12,2,";
        assertEquals("2026-04-03", first(read(rows + "13/04/2026\n"), "due"));
        assertEquals("2026-03-04", first(read(rows + "04/13/2026\n"), "due"));
        assertEquals(List.of("days"), asked(read(rows + "05/06/2026\n")));
        assertEquals("2026-03-04", first(read(rows + "05/06/2026\n", Map.of("days", "month-first")), "due"));
        assertEquals("2026-04-03", first(read(rows.replace('/', '.') + "14.4.26\n"), "due"));
    }

    @Test
    void placeOfTheShop_saysItWhereItIsStated_andAnAnswerComesBeforeIt() throws IOException {
        form = LocalForm.of("de-DE").value().orElseThrow();
        String rows = "Order;Rope;Length (m);Due\n1;DB12;1,500;03/04/2026\n";
        Understood read = read(rows);
        assertEquals(List.of(), asked(read));
        assertEquals("2026-04-03", first(read, "due"));
        assertEquals("1.500 m", first(read, "length"));
        assertEquals("2026-03-04", first(read(rows, Map.of("days", "month-first")), "due"));
    }

    /** What a day of another form would be is not guessed: the row is wrong. */
    @Test
    void dayOfAnotherForm_isAMistake() throws IOException {
        Understood read = read(
                "Order,Rope,Length (m),Due\n1,DB12,2,13/04/2026\n2,DB12,2,04/13/2026\n", Map.of("days", "day-first"));
        assertEquals(1, read.rows().size());
        assertEquals("row 3", read.wrong().get(0).place());
    }

    @Test
    void decimalSign_isAskedWhereAFigureCouldBeThousands() throws IOException {
        String rows = "Order;Rope;Length (m)\n1;DB12;1,500\n";
        assertEquals(List.of("decimal"), asked(read(rows)));
        assertEquals("1.500 m", first(read(rows, Map.of("decimal", "comma")), "length"));
        assertEquals("1.500 m", first(read(rows + "2;DB12;2,5\n"), "length"));
        assertEquals(List.of(), read(rows, Map.of("decimal", "point")).rows());
    }

    @Test
    void unit_isOfTheHeading_ofTheCell_orAsked() throws IOException {
        assertEquals("250 cm", first(read("Order,Rope,Length (cm)\n1,DB12,250\n"), "length"));
        assertEquals("2.5 m", first(read("Order,Rope,Length (cm)\n1,DB12,2.5 m\n"), "length"));
        Understood bare = read("Order,Rope,Length\n1,DB12,250\n");
        assertEquals(List.of("unit Length"), asked(bare));
        assertEquals(List.of("row 2"), bare.waiting());
    }

    @ParameterizedTest
    @CsvSource({
        "DB12, DB12",
        "db 12, DB12",
        "'double braid polyester 12 mm, grey', DB12-G",
        "12 mm braid on braid polyester white, DB12",
        "'20mm nylon double braid, dyed black', DN20"
    })
    void rope_isMetByWhatIsSaidOfIt(String text, String id) throws IOException {
        Understood read = read("Order;Rope;Length (m)\n1;" + text + ";2\n");
        assertEquals(List.of(), asked(read));
        assertEquals(id, first(read, "rope"));
    }

    /** Two colours, a word that means nothing, a size that no rope has. */
    @ParameterizedTest
    @ValueSource(strings = {"12 mm double braid polyester", "Superline 12 mm double braid grey", "DB13", "33 mm nylon"})
    void rope_isAskedWhereItIsNotClear(String text) throws IOException {
        Understood read = read("Order;Rope;Length (m)\n1;" + text + ";2\n");
        assertEquals(List.of("rope " + text), asked(read));
        assertEquals(List.of(), read.rows());
        Understood answered = read("Order;Rope;Length (m)\n1;" + text + ";2\n", Map.of("rope " + text, "DB12-G"));
        assertEquals("DB12-G", first(answered, "rope"));
        Understood out = read("Order;Rope;Length (m)\n1;" + text + ";2\n", Map.of("rope " + text, "left out"));
        assertEquals(List.of("row 2"), out.passed());
    }

    /** The loft has one rope of 20 mm, which is of nylon: a line of 20 mm need not be. */
    @ParameterizedTest
    @ValueSource(strings = {"20 mm line", "20mm rope"})
    void ropeThatIsMetByItsSizeAlone_isAskedOnce(String text) throws IOException {
        String rows = "Order;Rope;Length (m)\n1;" + text + ";2\n2;" + text + ";3\n";
        Understood read = read(rows);
        assertEquals(List.of("rope " + text), asked(read));
        assertEquals("DN20", read.questions().get(0).choices().get(0));
        assertTrue(read.questions().get(0).words().endsWith("DN20 is met by its size alone."));
        assertEquals("DN20", first(read(rows, Map.of("rope " + text, "DN20")), "rope"));
    }

    @Test
    void diameterBesideTheIdOfARope_isAMistakeWhereItIsOfAnother() throws IOException {
        String rows = "Order,Rope,Diameter%s,Length (m)\n1,DB12,%s,2\n";
        Understood read = read(rows.formatted(" (mm)", "14"));
        assertEquals(List.of(), read.rows());
        assertEquals("row 2", read.wrong().get(0).place());
        assertEquals("12 mm, the diameter of DB12", read.wrong().get(0).expected());
        for (String same : List.of("12", "12 mm", "1/2", "1/2 in", "various")) {
            assertEquals("DB12", first(read(rows.formatted("", same)), "rope"), same);
        }
    }

    @Test
    void wordsThatASpreadsheetWouldRun_areTakenWithAWarning() throws IOException {
        Understood read = read("Order,Rope,Length (m),Customer,Note\n1,DB12,2,=HYPERLINK(1),fore\n");
        assertEquals("=HYPERLINK(1)", first(read, "customer"));
        assertEquals(1, read.wrong().size());
        assertFalse(read.wrong().get(0).isError());
        assertEquals("row 2", read.wrong().get(0).place());
    }

    @ParameterizedTest
    @CsvSource({
        "soft eye 30 cm, double-braid-eye length 30 cm",
        "Augsplei\u00df 0.3 m, double-braid-eye length 0.3 m",
        "whipped, whipped",
        "verschwei\u00dft, sealed",
        "double-braid-eye length 90 mm pin 20 mm, double-braid-eye length 90 mm pin 20 mm"
    })
    void end_isMadeAsIsUsualOnTheRope(String text, String end) throws IOException {
        Understood read = read("Order;Rope;Length (m);End 1\n1;DB12;2;" + text + "\n");
        assertEquals(List.of(), asked(read));
        assertEquals(end, first(read, "end a"));
    }

    @Test
    void end_isAskedWhereItsSizeIsNotSaid_onceForAllRows() throws IOException {
        String rows = "Order;Rope;Length (m);End 1\n1;DB12;2;eye\n2;TS14;2;eye\n";
        assertEquals(List.of("end eye"), asked(read(rows)));
        Understood read = read(rows, Map.of("end eye", "length 200 mm"));
        assertEquals("double-braid-eye length 200 mm", read.rows().get(0).text("end a"));
        assertEquals("three-strand-eye length 200 mm", read.rows().get(1).text("end a"));
    }

    @Test
    void bothEnds_mayShareAColumn() throws IOException {
        String rows = "Order;Rope;Length (m);Ends\n1;DB12;2;%s\n";
        Understood two = read(rows.formatted("eye 20 cm / sealed"));
        assertEquals("double-braid-eye length 20 cm", first(two, "end a"));
        assertEquals("sealed", first(two, "end b"));
        assertEquals("double-braid-eye length 20 cm", first(read(rows.formatted("eye 20 cm both ends")), "end b"));
        assertEquals(List.of("ends eye 20 cm"), asked(read(rows.formatted("eye 20 cm"))));
    }

    @Test
    void sheet_isReadInWindowsLettersAndInUtf16() throws IOException {
        String text = "Auftrag;Seil;L\u00e4nge (m)\n1;DB12;2,5\n";
        assertEquals("2.5 m", first(read(text.getBytes(Charset.forName("windows-1252")), Map.of()), "length"));
        assertEquals("2.5 m", first(read(("\ufeff" + text).getBytes(StandardCharsets.UTF_16LE), Map.of()), "length"));
        assertEquals("2.5 m", first(read(text.replace(';', '\t')), "length"));
    }

    @Test
    void requiredMember_thatNoColumnSays_isAskedAmongThoseLeftOver() throws IOException {
        Understood read = read("Order,Rope,Span,Weather\n1,DB12,2 m,fine\n");
        assertEquals(List.of("column for length"), asked(read));
        assertEquals(List.of("Span", "Weather"), read.questions().get(0).choices());
        assertEquals("2 m", first(read("Order,Rope,Span\n1,DB12,2 m\n", Map.of("Span", "length")), "length"));
    }

    @Test
    void settled_isAllThatASheetLikeItNeeds() throws IOException {
        Understood read = read("Order,Rope,Length (m),Due\n1,DB12,2,13/04/2026\n");
        Understood next = read("Order,Rope,Length (m),Due\n1,DB12,2,03/04/2026\n", read.settled());
        assertEquals(List.of(), asked(next));
        assertEquals("2026-04-03", first(next, "due"));
        assertTrue(next.settled().containsKey("column Order"));
    }

    /** A fraction is of an inch, whatever stands behind it. */
    @ParameterizedTest
    @CsvSource({"1/2 double braid, 1/2 in", "9/16 3 strand, 9/16 in", "1 1/4 laid, 1 1/4 in"})
    void fractionAlone_isOfAnInch(String text, String diameter) {
        assertEquals(diameter, RopeWords.of(text).diameter());
    }

    @Test
    void unitAmongTheWordsOfAHeading_isThatOfItsFigures() {
        assertEquals("Metres", Heading.of("Metres left").unit());
        assertEquals("", Heading.of("Length left").unit());
        assertEquals("", Heading.of("In stock").unit());
    }

    @Test
    void typesThatAreRopesOfTheShop_areTheRope() throws IOException {
        String id = LOFT.catalogue().ropes().get(0).id();
        Understood understood = read("Reel,Type,Metres left\nR900," + id + ",95.4\nR901," + id + ",20\n");
        assertEquals(List.of(), asked(understood));
        assertEquals(id, first(understood, "rope"));
        assertEquals("95.4 m", first(understood, "length"));
    }

    @Test
    void columnOfEyes_isNotLeftOut() throws IOException {
        String id = LOFT.catalogue().ropes().get(0).id();
        Understood understood = read("Order,Ln,Rope,Length (m),Eye\nJ-1,1," + id + ",12,Auge 300 mm\n");
        assertTrue(
                asked(understood).stream().anyMatch(question -> question.startsWith("end")),
                asked(understood)::toString);
    }
}
