package bitterend.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.packing.ReelDraw;
import bitterend.report.Mark.Kind;
import bitterend.report.page.Ink;
import bitterend.report.sheet.CutList;
import bitterend.report.sheet.SheetMaker;
import bitterend.report.sheet.SheetPage;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What concerns a piece is said in the row of its cut, on the page and on the sheet. */
final class RowWordsTest {
    private static final Figures FIGURES = new Figures(Units.METRIC, new MoneyText("EUR", 2));

    /** The eye that nobody has checked is on two pieces: the first that is cut stops the bench, the second does not. */
    @Test
    void firstArticle_stopsInItsRowAlone() {
        PlanView view = DayOnTheBench.ordered();
        assertEquals(
                List.of("Stop: splice and measure this one first, 1 more with three-strand-eye waits"),
                row(view, "1001/1.1").urgent());
        assertEquals(List.of(), row(view, "1001/1.2").urgent());
        String sheet = sheet(view);
        assertEquals(2, sheet.split("Stop: splice and", -1).length, "once on the sheet");
        assertTrue(sheet.contains("<b class=\"stop\">Stop: splice and"), sheet);
    }

    @Test
    void customerDueDayAndNote_areInTheRow() {
        PlanView view = DayOnTheBench.ordered();
        String words = "for ketch Brambling, due 2026-03-05: jib sheets, a pair";
        assertEquals(words, row(view, "1001/1.1").wanted());
        assertEquals("due 2026-03-05", row(view, "1001/2.1").wanted());
        assertEquals(2, sheet(view).split("jib sheets, a pair", -1).length, "not again under itself on the sheet");
        String page = page(view);
        assertEquals(2, page.split("jib sheets, a pair", -1).length, "not again under itself on the page");
    }

    @Test
    void setOnTwoReels_pointsAtTheOtherReel() {
        PlanView view = DayOnTheBench.withSet();
        assertEquals(
                List.of("plain, both ends", "set jib sheets: 1001/1.2 off reel R-2"),
                row(view, "1001/1.1").plain());
        assertEquals(
                List.of("plain, both ends", "set jib sheets: 1001/1.1 off reel R-1"),
                row(view, "1001/1.2").plain());
    }

    /** Piece of 31.000 m, then a cut of 10 mm; the flaw keeps rope off until 32.700. */
    @Test
    void flawAndScrapBeforeIt_areOneCut() {
        PlanView view = DayOnTheBench.view();
        List<Mark> marks = view.marks(draw(view, "R-104"));
        List<Mark> flaws =
                marks.stream().filter(mark -> mark.kind() == Kind.FLAW).toList();
        assertEquals(1, flaws.size());
        assertEquals(1_690, flaws.get(0).length().mm());
        assertTrue(marks.stream().noneMatch(mark -> mark.kind() == Kind.SCRAP), marks.toString());
        String words = "cut off and bin 31.010 to 32.700: maker's join";
        assertEquals(
                List.of(words),
                new RowWords(view, FIGURES)
                        .of(draw(view, "R-104"), flaws.get(0))
                        .plain());
        assertTrue(sheet(view).contains(words));
        assertFalse(sheet(view).contains("no piece between"), "said in the row");
    }

    /** A stretch of 0.600 m is cut off when the counter, at zero on the worn end, shows 0.600. */
    @Test
    void leadTrim_isAsTheCounterShowsIt() {
        PlanView view = DayOnTheBench.view();
        ReelDraw draw = draw(view, "R-104");
        Mark trim = view.marks(draw).get(0);
        assertEquals(Kind.LEAD_TRIM, trim.kind());
        assertEquals("0.600", FIGURES.bare(view.reading(draw, trim)));
        assertFalse(page(view).contains("-0.600"));
        assertFalse(sheet(view).contains("-0.600"));
        assertTrue(CutList.csv(view).contains(",-600,600,600,"), CutList.csv(view));
    }

    private static RowWords.Words row(PlanView view, String piece) {
        for (ReelDraw draw : view.draws()) {
            for (Mark mark : view.marks(draw)) {
                if (mark.piece().equals(piece)) {
                    return new RowWords(view, FIGURES).of(draw, mark);
                }
            }
        }
        throw new AssertionError(piece);
    }

    private static ReelDraw draw(PlanView view, String reel) {
        return view.draws().stream()
                .filter(draw -> draw.reel().equals(reel))
                .findFirst()
                .orElseThrow();
    }

    private static String page(PlanView view) {
        return new PlanPage(FIGURES, Tape.TYPED).of(view).text(Ink.PLAIN);
    }

    private static String sheet(PlanView view) {
        return PageText.of(new SheetPage().html(new SheetMaker(view, FIGURES, List.of()).sheet("")));
    }
}
