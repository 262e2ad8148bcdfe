package bitterend.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Golden;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.packing.ReelDraw;
import bitterend.packing.WorkingDays;
import bitterend.report.page.Ink;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class PlanPageTest {
    private static final MoneyText EURO = new MoneyText("EUR", 2);

    private static String page(Units units, Ink ink, Tape tape) {
        return new PlanPage(new Figures(units, EURO), tape)
                .of(DayOnTheBench.view())
                .text(ink);
    }

    @Test
    void page_readsAsTheGoldenFile() {
        Golden.check("report/plan-metric.txt", page(Units.METRIC, Ink.PLAIN, Tape.DRAWN));
        Golden.check("report/plan-imperial.txt", page(Units.IMPERIAL, Ink.PLAIN, Tape.TYPED));
    }

    @Test
    void screen_readsAsTheGoldenFile() {
        Golden.check("report/plan-screen-metric.txt", screen(DayOnTheBench.view(), Units.METRIC));
        Golden.check("report/plan-screen-imperial.txt", screen(DayOnTheBench.view(), Units.IMPERIAL));
    }

    /** However much there is to say: what does not fit is counted. */
    @ParameterizedTest
    @CsvSource({"0, 1, 0", "3, 5, 1", "40, 2, 0", "60, 30, 25", "25, 90, 300", "26, 0, 2"})
    void screen_keepsToTwentyLinesAndOneForEachReel(int reels, int undone, int leftOut) {
        PlanView view = DayOnTheBench.crowded(reels, undone, leftOut);
        for (Units units : Units.values()) {
            List<String> lines = screen(view, units).lines().toList();
            int shown = Math.min(25, view.plan().draws().size());
            assertTrue(lines.size() <= 20 + shown, () -> String.join("\n", lines));
            lines.forEach(line -> assertTrue(line.codePointCount(0, line.length()) <= 80, line));
        }
    }

    /** What is most urgent comes first on the screen and in the tables; the same reels in both. */
    @Test
    void reels_comeInTheOrderOfTheirMostUrgentPiece() {
        PlanView view = DayOnTheBench.crowded(40, 2, 0);
        List<String> order = view.draws().stream().map(ReelDraw::reel).toList();
        WorkingDays working = new WorkingDays(view.problem().calendar());
        List<LocalDate> due = view.draws().stream()
                .map(draw -> working.cutBy(Objects.requireNonNull(
                        view.pieces().get(draw.cuts().get(0).piece()))))
                .toList();
        assertEquals(due.stream().sorted().toList(), due);
        assertEquals(
                order.subList(0, 25),
                screen(view, Units.METRIC)
                        .lines()
                        .filter(line -> line.startsWith("2026-") || line.startsWith("today"))
                        .map(line -> line.replaceAll(".*(R-[0-9]+).*", "$1"))
                        .toList());
    }

    /** What is spliced and measured first is dated where it is not for today, and is left to a page that lists it itself. */
    @Test
    void firsts_areDatedUnlessTheyAreOfToday() {
        PlanView view = DayOnTheBench.ordered();
        FirstArticle first = FirstArticle.of(view).get(0);
        assertTrue(first.day().isAfter(view.plan().day()), first.toString());
        assertTrue(
                screen(view, Units.METRIC)
                        .contains(
                                "Splice and measure first: 1001/1.1 (three-strand-eye, DB12, " + first.day() + ").\n"),
                screen(view, Units.METRIC));
        String beside = new PlanPage(new Figures(Units.METRIC, EURO), Tape.DRAWN)
                .screenBesideFirsts(view, "")
                .text(Ink.PLAIN);
        assertFalse(beside.contains("first"), beside);
    }

    /** A word of the table that says nothing by itself is explained below it, and only where it stands there. */
    @Test
    void firstInTheTable_isExplained() {
        String explained = "First: on that reel is work of priority 1, the last to be left undone.\n";
        PlanView plain = DayOnTheBench.view();
        assertFalse(screen(plain, Units.METRIC).contains(explained));
        String urgent = screen(DayOnTheBench.urgent(), Units.METRIC);
        assertTrue(urgent.contains("\nfirst, "), urgent);
        assertTrue(urgent.contains(explained), urgent);
    }

    private static String screen(PlanView view, Units units) {
        return new PlanPage(new Figures(units, EURO), Tape.DRAWN)
                .screen(view, "Every cut (or week, reasons, money, a reel): bitterend show a-shop tables")
                .text(Ink.PLAIN);
    }

    @Test
    void page_isNeverWiderThanEightyColumns() {
        for (Units units : Units.values()) {
            page(units, Ink.PLAIN, Tape.DRAWN)
                    .lines()
                    .forEach(line -> assertTrue(line.codePointCount(0, line.length()) <= 80, line));
        }
    }

    @Test
    void typedTape_staysWithinAscii() {
        assertTrue(page(Units.METRIC, Ink.PLAIN, Tape.TYPED).chars().allMatch(c -> c < 128));
    }

    @Test
    void colour_changesNoWord() {
        String coloured = page(Units.METRIC, Ink.TERMINAL, Tape.DRAWN);
        String plain = page(Units.METRIC, Ink.PLAIN, Tape.DRAWN);
        assertFalse(coloured.equals(plain));
        assertEquals(plain, coloured.replaceAll("\u001B\\[[0-9]*m", ""));
    }

    @Test
    void marks_endWithWhatStaysOnTheReel() {
        PlanView view = DayOnTheBench.view();
        for (ReelDraw draw : view.plan().draws()) {
            Mark rest = view.marks(draw).stream()
                    .filter(mark -> mark.kind() == Mark.Kind.STAYS || mark.kind() == Mark.Kind.SCRAP)
                    .reduce((first, last) -> last)
                    .orElseThrow();
            assertEquals(draw.leftOnReel(), rest.left());
        }
    }
}
