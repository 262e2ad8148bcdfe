package bitterend.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.report.DayOnTheBench;
import bitterend.report.Figures;
import bitterend.report.PlanMark;
import bitterend.report.PlanView;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class TagPageTest {
    private static final Figures FIGURES = new Figures(Units.METRIC, new MoneyText("EUR", 2));

    @Test
    void everyPlannedPiece_hasATagWithItsCode() throws ReaderException {
        List<Tag> tags = new Tags(DayOnTheBench.view(), FIGURES, List.of()).all();
        assertEquals(DayOnTheBench.view().planned() + 1, tags.size());
        for (Tag tag : ofPieces(tags)) {
            String text = decoded(tag.code());
            assertTrue(text.startsWith("piece " + tag.title() + " reel "), text);
        }
    }

    /** What a scanner reads off a tag is read back as what the tag is on. */
    @Test
    void codeOfEveryTag_isReadBack() throws ReaderException {
        PlanMark preview = new PlanMark(17, true, List.of());
        for (Tag tag : new Tags(DayOnTheBench.view().marked(preview), FIGURES, List.of()).all()) {
            TagCode code = TagCode.read(decoded(tag.code())).orElseThrow();
            assertEquals(tag.title().replaceFirst("^off ", ""), code.id());
            assertEquals(
                    tag.kind().toUpperCase(java.util.Locale.ROOT), code.kind().name());
        }
    }

    @Test
    void codes_areReadWhateverIsInTheNumbers() {
        for (String[] each : new String[][] {
            {"piece boat reel 3/1.2-leg-1 reel R 7 lot A cut 5 mm plan 2", "PIECE", "boat reel 3/1.2-leg-1"},
            {"PIECE 7/1.1 reel 3 lot", "PIECE", "7/1.1"},
            {"coil off 0392; kept: 3.600 m; plan 3, not issued", "COIL", "0392"},
            {"rest of the reel 0392; measure; keep if 2 m or more", "REST", "0392"},
            {"reel 0392; rope DB12; lot A790; B", "REEL", "0392"},
            {"assembly 7/1.1; 2 legs", "ASSEMBLY", "7/1.1"}
        }) {
            TagCode code = TagCode.read(each[0]).orElseThrow();
            assertEquals(each[1], code.kind().name());
            assertEquals(each[2], code.id());
        }
        for (String other : List.of("", "0392", "piece ", "reel ;", "https://example.org/reel 1")) {
            assertTrue(TagCode.read(other).isEmpty(), other);
        }
    }

    /** Reel, lot and cut length as the plan has them: what a trace of the lot starts from. */
    @Test
    void codeOfATag_namesReelLotAndLength() throws ReaderException {
        PlanView view = DayOnTheBench.view();
        Map<String, String> wanted = new HashMap<>();
        view.plan().draws().forEach(draw -> draw.cuts()
                .forEach(cut -> wanted.put(
                        cut.piece(),
                        "piece " + cut.piece() + " reel " + draw.reel() + " lot "
                                + view.problem().reel(draw.reel()).lot() + " cut "
                                + cut.length().mm() + " mm")));
        for (Tag tag : ofPieces(new Tags(view, FIGURES, List.of()).all())) {
            assertEquals(wanted.get(tag.title()), decoded(tag.code()));
        }
    }

    /** Whoever reads the code with a telephone sees the plan, and whether its sheets are issued. */
    @Test
    void codeOfATag_namesThePlan() throws ReaderException {
        PlanMark preview = new PlanMark(17, true, List.of());
        for (PlanMark mark : List.of(PlanMark.of(17), preview)) {
            for (Tag tag : ofPieces(new Tags(DayOnTheBench.view().marked(mark), FIGURES, List.of()).all())) {
                assertTrue(decoded(tag.code()).endsWith(" mm " + mark.words()), decoded(tag.code()));
            }
        }
    }

    @Test
    void labels_fillThePaper() {
        assertEquals(3, TagPage.Label.USUAL.columns(Paper.A4));
        assertEquals(8, TagPage.Label.USUAL.rows(Paper.A4));
        assertThrows(IllegalArgumentException.class, () -> new TagPage.Label(10, 10));
    }

    @Test
    void tagPage_holdsEveryTagOnce() {
        String html = new TagPage(DayOnTheBench.view(), FIGURES, List.of()).html(TagPage.Label.USUAL, Paper.A4);
        assertEquals(DayOnTheBench.view().planned() + 1, html.split("class=\"tag[ \"]", -1).length - 1);
    }

    /** The number of the piece is the largest on it, 12 points at least and 18 where its words leave the room. */
    @Test
    void numberOfThePiece_isTheLargestOnItsTag() {
        Tag tag = ofPieces(new Tags(DayOnTheBench.view(), FIGURES, List.of()).all())
                .get(0);
        assertTrue(Set.of("largest", "large", "").contains(TagPage.type(tag, TagPage.Label.USUAL)), tag.toString());
        assertEquals("least", TagPage.type(withLines(tag, 40), TagPage.Label.USUAL));
        assertEquals("largest", TagPage.type(withLines(tag, 2), TagPage.Label.USUAL));
        String style = SheetPage.style("tags");
        List<Double> titles = sizes(style, "title b");
        assertTrue(titles.stream().allMatch(size -> size >= 12), titles.toString());
        assertTrue(titles.contains(20.0) && titles.contains(18.0), titles.toString());
        assertTrue(
                Stream.concat(sizes(style, "cut").stream(), sizes(style, "p").stream())
                        .allMatch(size -> size < 12),
                style);
    }

    private static Tag withLines(Tag tag, int lines) {
        return new Tag(
                tag.title(),
                tag.kind(),
                "plan 1, not issued",
                "cut 3 m",
                Collections.nCopies(lines, "a line of words that is as long as most"),
                tag.code());
    }

    private static List<Double> sizes(String style, String what) {
        return Pattern.compile("[. ]" + what + " \\{ font-size: ([0-9.]+)pt")
                .matcher(style)
                .results()
                .map(found -> Double.valueOf(found.group(1)))
                .toList();
    }

    /** What stays on R-104 has a tag of its own: its flaw and the scrap before it are cut off by then. */
    @Test
    void restThatIsKept_hasATagWithItsLengthLotAndPlace() {
        Tag tag = new Tags(DayOnTheBench.view(), FIGURES, List.of())
                .all().stream()
                        .filter(each -> !each.kind().equals("piece"))
                        .findFirst()
                        .orElseThrow();
        assertEquals("R-104", tag.title());
        assertEquals("stays: 60.000 m", tag.measure());
        assertEquals(
                List.of(
                        "may be 0.800 m shorter",
                        "and 2.000 m inner wraps, not to be used",
                        "place bay B3",
                        "DB12, Polyester double braid 12 mm",
                        "lot P22-118",
                        "certificate 3.1 4471",
                        "use by 2031-01-31"),
                tag.lines());
    }

    /** A coil from before a flaw, then a flaw in what stays, told from the new end. */
    @Test
    void coilAndFlawOfWhatStays_areOnTheirTags() {
        PlanView view = DayOnTheBench.withCoil();
        List<Tag> tags = new Tags(view, FIGURES, List.of())
                .all().stream().filter(each -> !each.kind().equals("piece")).toList();
        assertEquals(List.of("off R-1", "R-1"), tags.stream().map(Tag::title).toList());
        assertEquals("kept: 4.000 m", tags.get(0).measure());
        assertTrue(
                tags.get(1).lines().contains("flaw, cut yarn: 1.990 m to 2.090 m from its end"),
                tags.get(1).lines().toString());
    }

    @Test
    void tagOfAPiece_namesCustomerNoteAndWhichOfHowMany() {
        Tag tag = new Tags(DayOnTheBench.ordered(), FIGURES, List.of())
                .all().stream()
                        .filter(each -> each.title().equals("1001/1.1"))
                        .findFirst()
                        .orElseThrow();
        assertTrue(
                tag.lines()
                        .containsAll(List.of(
                                "ketch Brambling: jib sheets, a pair", "order 1001, line 1, due 2026-03-05, 1 of 2")),
                tag.lines().toString());
    }

    private static List<Tag> ofPieces(List<Tag> tags) {
        return tags.stream().filter(tag -> tag.kind().equals("piece")).toList();
    }

    /** Paints the path of the code, ten pixels for a module, and reads it back. */
    private static String decoded(QrCode code) throws ReaderException {
        int scale = 10;
        int size = code.size() * scale;
        byte[] grey = new byte[size * size];
        java.util.Arrays.fill(grey, (byte) 255);
        Matcher bars = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-\\d+z").matcher(code.path());
        while (bars.find()) {
            int x = Integer.parseInt(bars.group(1)) * scale;
            int y = Integer.parseInt(bars.group(2)) * scale;
            int width = Integer.parseInt(bars.group(3)) * scale;
            for (int row = y; row < y + scale; row++) {
                java.util.Arrays.fill(grey, row * size + x, row * size + x + width, (byte) 0);
            }
        }
        return new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(new GreyPicture(grey, size))))
                .getText();
    }
}
