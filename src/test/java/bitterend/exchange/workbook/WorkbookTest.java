package bitterend.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Workbooks as people and programs save them, and some that nobody should have to read. */
final class WorkbookTest {
    private final Path file;

    WorkbookTest(@TempDir Path folder) {
        this.file = folder.resolve("orders.xlsx");
    }

    @Test
    void numbers_areExactAndWithoutTheNoiseOfTheProgramThatSavedThem() throws IOException {
        assertEquals(
                List.of("12.5", "0.3", "1041", "0.15", "1000000", "-3", "0"),
                cells("", "12.5", "0.30000000000000004", "1041", "0.15", "1E6", "-3", "0.0"));
    }

    @Test
    void numbers_thatNoTableMeansAreTold() throws IOException {
        assertEquals(
                List.of("1E400 a number of at most 30", "NaN a number", "1e a number", "1E99999 a number"),
                wrong("", "1E400", "NaN", "1e", "1E99999"));
    }

    @Test
    void days_areDaysInBothCountings() throws IOException {
        assertEquals(
                List.of("2026-03-02", "1900-01-01", "1900-03-01", "9999-12-31"),
                cells("14", "46083", "1", "61", "2958465"));
        write(new RawBook()
                .from1904()
                .sheet("S", "", "<sheetData>" + styled("0", "44621", "0") + "</sheetData>")
                .formats("14"));
        assertEquals(List.of("2026-03-02", "1904-01-01"), texts(open()));
    }

    @Test
    void days_thatNeverWereAreTold() throws IOException {
        String day = " a day from 1900-01-01 to 9999-12-31";
        assertEquals(
                List.of("60" + day, "-1" + day, "2958466" + day, "0" + day), wrong("14", "60", "-1", "2958466", "0"));
    }

    @Test
    void times_standBehindTheirDay() throws IOException {
        assertEquals(
                List.of("2026-03-02T14:30", "2026-03-02"), cells("dd.mm.yyyy hh:mm", "46083.604166666664", "46083"));
        assertEquals(List.of("14:30", "00:00"), cells("h:mm AM/PM", "0.604166666666667", "0"));
        assertEquals(List.of("36:30"), cells("[h]:mm", "1.520833333333333"));
    }

    @Test
    void formats_areDaysByTheirLettersAlone() throws IOException {
        for (String day : List.of(
                "yyyy\\-mm\\-dd", "[$-407]d. mmmm yyyy;@", "\"am \"d/m/yy", "mmm-yy", "[Red]dd/mm", "17", "58")) {
            assertEquals(Styles.Shown.DAY, day.length() < 3 ? shown(day) : Styles.shown(day), day);
        }
        for (String number : List.of(
                "0.00",
                "#,##0.00\\ \"days\"",
                "0.00E+00",
                "General",
                "[Red]0;[Blue]-0",
                "0\\ \\m",
                "@",
                "# ?/?",
                "0%")) {
            assertEquals(Styles.Shown.NUMBER, Styles.shown(number), number);
        }
    }

    @Test
    void unitOfLengthInAFormat_isTheOneOfItsCells() throws IOException {
        assertEquals(List.of("4250 mm", "2.5 mm", "0 mm"), cells("0.0\" mm\"", "4250", "2.5", "0"));
        assertEquals(List.of("1500 m"), cells("#,##0.00\\ \\m;[Red]-0", "1500"));
        assertEquals(List.of("1.5 m"), cells("0.0,\" m\"", "1500"));
        assertEquals(List.of("12 ft"), cells("General\\'", "12"));
        assertEquals(List.of("7 in"), cells("# ?/?\\\"", "7"));
        for (String none : List.of("0\" pcs\"", "\"m \"0", "0.00\" EUR\"", "[>999]0.0,\" m\";0\" mm\"", "0%")) {
            assertEquals(List.of("12"), cells(none, "12"), none);
        }
    }

    @Test
    void formulas_areTheirValues() throws IOException {
        write(RawBook.of(
                "S",
                "<row><c><f>A9*2</f><v>25</v></c><c t=\"str\"><f>B1</f><v>E3</v></c><c t=\"b\"><f>1=1</f><v>1</v></c>"
                        + "<c t=\"str\"><f>\"\"</f><v></v></c><c><f t=\"shared\" si=\"7\"/><v>8</v></c></row>"));
        assertEquals(List.of("25", "E3", "yes", "", "8"), texts(open()));
        write(RawBook.of("S", "<row><c t=\"e\"><f>1/0</f><v>#DIV/0!</v></c><c><f>NOW()</f></c></row>"));
        assertEquals(List.of("#DIV/0! a value", "a formula without a value a value"), wrong(open()));
    }

    @Test
    void texts_areJoinedFromTheirRuns() throws IOException {
        write(RawBook.of("S", "<row><c t=\"s\"><v>0</v></c><c t=\"s\"><v>1</v></c><c t=\"s\"><v>9</v></c></row>")
                .texts(
                        "<r><t>12 mm </t></r><r><t xml:space=\"preserve\">braid</t></r><rPh><t>no</t></rPh>",
                        "<t>a_x000A_b</t>"));
        assertEquals(List.of("12 mm braid", "a\nb", "text 9"), texts(open()));
    }

    @Test
    void rows_keepTheirNumbersAndPlaces() throws IOException {
        write(RawBook.of("Orders", RawBook.row(3, "", "order") + RawBook.row(12, "", "1041")));
        Sheet sheet = open();
        assertEquals(
                List.of(3, 12), sheet.rows().stream().map(Sheet.Row::number).toList());
        assertEquals("sheet Orders, row 12", sheet.place(12));
        assertEquals("1041", sheet.rows().get(1).cells().get(1).text());
        assertEquals(
                "A Z AA XFD",
                Sheet.letters(1) + " " + Sheet.letters(26) + " " + Sheet.letters(27) + " " + Sheet.letters(16384));
    }

    @Test
    void whatIsHiddenOrMerged_isReadAndTold() throws IOException {
        write(
                new RawBook()
                        .sheet(
                                "S",
                                "",
                                "<cols><col min=\"2\" max=\"3\" hidden=\"1\"/></cols><sheetData>"
                                        + RawBook.row(1, "Title") + RawBook.row(3, "order", "line") + hidden(4)
                                        + hidden(5) + hidden(7)
                                        + "</sheetData><autoFilter ref=\"A3:B7\"/><mergeCells><mergeCell ref=\"A1:B1\"/><mergeCell ref=\"A4:A5\"/></mergeCells>"));
        assertEquals(
                List.of("S, row 4 merged cells A4:A5", "S rows 4 to 5, 7 hidden, as by a filter", "S column B hidden"),
                open().toldFrom(3).stream()
                        .map(each -> each.place().substring(6) + " " + each.found())
                        .toList());
    }

    @Test
    void aFileThatIsNoWorkbook_isToldWhatItIs() throws IOException {
        assertEquals(
                "text under the name of a workbook", refused("order,line\n1,2\n".getBytes(StandardCharsets.UTF_8)));
        assertEquals("an empty file", refused(new byte[0]));
        assertEquals("other bytes than those of a workbook", refused(new byte[] {7, 0, 1}));
        assertEquals("a workbook of the old kind, .xls", refused(compound("Workbook")));
        assertEquals("a workbook with a password", refused(compound("EncryptedPackage")));
        byte[] whole = RawBook.of("S", "").bytes();
        assertEquals("a file that is cut short or damaged", refused(Arrays.copyOf(whole, whole.length - 30)));
        assertEquals(
                "a document of the kind .ods or .odt",
                refused(new RawBook()
                        .part("xl/workbook.xml", "none")
                        .part("content.xml", "<a/>")
                        .part("mimetype", "m")
                        .bytes()));
        assertEquals(
                "a packed file that is no workbook",
                refused(new RawBook().part("xl/workbook.xml", "none").bytes()));
    }

    /** Parts with some bytes changed, cut out or doubled: read or refused, and nothing else. */
    @Test
    void bytesChangedAnywhere_areReadOrRefused() throws IOException {
        long seed = Long.getLong("seed", 20261129);
        Random random = new Random(seed);
        RawBook whole = new RawBook()
                .sheet(
                        "S",
                        "",
                        "<cols><col min=\"2\" max=\"3\" hidden=\"1\"/></cols><sheetData>"
                                + RawBook.row(1, "order", "line") + styled("1", "46083", "2")
                                + "</sheetData><mergeCells><mergeCell ref=\"A1:B1\"/></mergeCells>")
                .texts("<t>a</t>", "<r><t>b</t></r>")
                .formats("General", "yyyy-mm-dd");
        PrintStream terminal = System.err;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
        try {
            for (int round = 0; round < 2_000; round++) {
                Files.write(file, whole.changed(random));
                Findings findings = new Findings();
                Optional<Workbook> book = Workbook.open(file, findings);
                assertEquals(book.isEmpty(), findings.hasErrors(), "seed " + seed + ", round " + round);
            }
        } catch (RuntimeException fault) {
            throw new AssertionError("seed " + seed, fault);
        } finally {
            System.setErr(terminal);
        }
        assertFalse(printed.toString(StandardCharsets.UTF_8).contains("Fatal Error"));
    }

    @Test
    void parts_mayBeInWideLetters() throws IOException {
        byte[] utf16 = RawBook.of("Blöcke", RawBook.row(1, "ø 12 mm")).bytes(StandardCharsets.UTF_16);
        Files.write(file, utf16);
        assertEquals(List.of("ø 12 mm"), texts(open()));
        assertEquals("sheet Blöcke", open().place());
    }

    private byte[] compound(String stream) {
        byte[] bytes = new byte[1024];
        System.arraycopy(new byte[] {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0}, 0, bytes, 0, 4);
        byte[] name = stream.getBytes(StandardCharsets.UTF_16LE);
        System.arraycopy(name, 0, bytes, 512, name.length);
        return bytes;
    }

    private String refused(byte[] bytes) throws IOException {
        Files.write(file, bytes);
        Findings findings = new Findings();
        assertTrue(Workbook.open(file, findings).isEmpty());
        Finding only = findings.sorted().get(0);
        assertEquals("orders.xlsx", only.file());
        return only.found();
    }

    private static String hidden(int row) {
        return RawBook.row(row, "1041", "1").replace("<row ", "<row hidden=\"1\" ");
    }

    private Styles.Shown shown(String builtIn) throws IOException {
        return cells(builtIn, "1000").get(0).contains("-") ? Styles.Shown.DAY : Styles.Shown.NUMBER;
    }

    private static String styled(String style, String... values) {
        return Arrays.stream(values)
                .map(value -> "<c s=\"" + style + "\"><v>" + value + "</v></c>")
                .collect(Collectors.joining("", "<row>", "</row>"));
    }

    private List<String> cells(String format, String... values) throws IOException {
        write(RawBook.of("S", styled("1", values)).formats("General", format));
        return texts(open());
    }

    private List<String> wrong(String format, String... values) throws IOException {
        write(RawBook.of("S", styled("1", values)).formats("General", format));
        return wrong(open());
    }

    private static List<String> texts(Sheet sheet) {
        return sheet.rows().get(0).texts();
    }

    private static List<String> wrong(Sheet sheet) {
        return sheet.rows().get(0).cells().stream()
                .filter(cell -> cell.kind() == Cell.Kind.WRONG)
                .map(cell -> cell.text() + " " + cell.wanted().split(" digits|[;,]")[0])
                .toList();
    }

    private void write(RawBook book) throws IOException {
        book.write(file);
    }

    private Sheet open() {
        Findings findings = new Findings();
        Workbook book = Workbook.open(file, findings).orElseThrow(() -> new AssertionError(findings.sorted()));
        assertEquals(List.of(), findings.sorted());
        return book.sheets().get(0);
    }
}
