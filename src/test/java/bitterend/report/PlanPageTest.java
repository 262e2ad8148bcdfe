package bitterend.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Golden;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.packing.ReelDraw;
import bitterend.report.page.Ink;
import org.junit.jupiter.api.Test;

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
