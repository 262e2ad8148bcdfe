package bitterend.packing;

import static bitterend.packing.PieceSketch.piece;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When a reel is cut; the day of a sketch is {@link Sketch#DAY}. */
final class CutDaysTest {
    private static final LocalDate DAY = Sketch.DAY;

    @Test
    void reel_isCutOnTheFirstDayOnWhichOneOfItsPiecesMustBe() {
        CutDays days = new CutDays(new Sketch()
                .with(piece("A", 1_000).due(DAY.plusDays(60)))
                .with(piece("B", 1_000).due(workingDay(30)))
                .problem());
        assertEquals(workingDay(30), days.of(draw("A", "B")));
        assertFalse(days.isToday(draw("A", "B")));
    }

    @Test
    void whatIsOverdueOrHasNoDay_isCutToday() {
        CutDays days = new CutDays(new Sketch()
                .with(piece("overdue", 1_000).due(DAY.minusDays(3)))
                .with(piece("undated", 1_000).due(LocalDate.MAX))
                .with(piece("later", 1_000).due(workingDay(30)))
                .problem());
        assertTrue(days.isToday(draw("later", "undated")));
        assertEquals(DAY, days.of(draw("overdue")));
    }

    /** Wanted on a Sunday: nobody cuts then, so on the Friday before. */
    @Test
    void pieceOfADayOff_isCutOnTheWorkingDayBefore() {
        LocalDate sunday = DAY.plusDays(30);
        while (sunday.getDayOfWeek().getValue() != 7) {
            sunday = sunday.plusDays(1);
        }
        CutDays days =
                new CutDays(new Sketch().with(piece("A", 1_000).due(sunday)).problem());
        assertEquals(sunday.minusDays(2), days.of(draw("A")));
    }

    /** A promise for Thursday would cut rope that is to be used by Tuesday: it is cut by then, on a working day. */
    @Test
    void reelThatIsToBeUsedBefore_isCutOnItsLastWorkingDay() {
        LocalDate thursday = DAY.plusDays(3);
        assertEquals(DAY.plusDays(1), promised(DAY.plusDays(1), thursday));
        assertEquals(DAY, promised(DAY, thursday));
        assertEquals(thursday, promised(thursday, thursday));
        assertEquals(DAY.plusDays(4), promised(DAY.plusDays(6), DAY.plusDays(9)));
    }

    private static LocalDate promised(LocalDate useBy, LocalDate due) {
        CutDays days = new CutDays(new Sketch()
                .with(ReelSketch.reel("R", 9_000).useBy(useBy))
                .with(piece("A", 1_000).due(due))
                .problem());
        assertEquals(useBy.isBefore(due), days.isForItsUseBy(draw("A")));
        return days.of(draw("A"));
    }

    private static LocalDate workingDay(int ahead) {
        LocalDate date = DAY.plusDays(ahead);
        while (date.getDayOfWeek().getValue() > 5) {
            date = date.plusDays(1);
        }
        return date;
    }

    private static ReelDraw draw(String... pieces) {
        List<Cut> cuts = new ArrayList<>();
        for (String piece : pieces) {
            cuts.add(new Cut(piece, Length.ZERO, new Length(1_000)));
        }
        RunDraw run = new RunDraw(1, Length.ZERO, new Length(9_000), cuts, Length.ZERO, RunDraw.Rest.SCRAP);
        return new ReelDraw("R", Length.ZERO, List.of(run), Length.ZERO, LengthBook.EMPTY, Cost.ZERO);
    }
}
