package bitterend.day;

import static bitterend.packing.PieceSketch.piece;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.PieceSketch;
import bitterend.packing.ReelDraw;
import bitterend.packing.Sketch;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The work of a plan against the hours of the bench. The day of a sketch, {@link Sketch#DAY}, is a Monday. */
final class BenchDaysTest {
    private static final LocalDate MONDAY = Sketch.DAY;
    private static final LocalDate TUESDAY = MONDAY.plusDays(1);
    private static final LocalDate THURSDAY = MONDAY.plusDays(3);

    private final Sketch sketch = new Sketch();
    private final List<ReelDraw> plan = new ArrayList<>();

    /** Two reels of 4 min, three cuts of 3 min, 60 and 30 min of splicing: 107 of 120 min. */
    @Test
    void day_isFetchingCuttingAndSplicing() {
        reel("R1", piece("A", 1_000).due(MONDAY).minutes(60), piece("B", 1_000).due(MONDAY));
        reel("R2", piece("C", 1_000).due(MONDAY).minutes(30));
        List<BenchDay> days = days(BenchSketch.everyDay(120));
        assertEquals(
                List.of(new BenchDay(MONDAY, 120, 8, 9, 90, 0, List.of(), List.of(), BenchDay.Earlier.NONE)), days);
        assertEquals(107, days.get(0).used());
    }

    /** What is due first is spliced first; 60 min go into the next day: 93 less 4 and 6 is 83, of which A takes 50. */
    @Test
    void splicing_goesByDueDayAndOnIntoTheNextDay() {
        reel(
                "R1",
                piece("late", 1_000).due(THURSDAY).minutes(93),
                piece("A", 1_000).due(MONDAY).minutes(50));
        List<BenchDay> days = days(BenchSketch.everyDay(93));
        assertEquals(83, days.get(0).splicing());
        assertEquals(60, days.get(1).splicing());
        assertEquals(2, days.size());
        assertTrue(days.stream().noneMatch(BenchDay::isTooFull));
    }

    /** 100 min of splicing due today, room for 120 - 4 - 9 = 107 without the two that are cut ahead, who bring 20 more. */
    @Test
    void dayThatIsTooFull_saysWhatMayWaitAndWhatIsLate() {
        reel(
                "R1",
                piece("A", 1_000).order("A").due(MONDAY).minutes(118),
                piece("thursday", 1_000).due(THURSDAY).minutes(10),
                piece("tuesday", 1_000).due(TUESDAY).minutes(10));
        BenchDay today = days(BenchSketch.everyDay(120)).get(0);
        assertEquals(118 - 107, today.over());
        assertEquals(List.of("thursday", "tuesday"), today.leave(), "what is needed last in front; 4 would make room");
        assertEquals(List.of("A/1"), today.late());
    }

    @Test
    void lateWork_isCountedOnce() {
        reel("R1", piece("A", 1_000).due(MONDAY).minutes(200));
        List<BenchDay> days = days(BenchSketch.everyDay(100));
        assertEquals(List.of(200 - 93, 0, 0), days.stream().map(BenchDay::over).toList());
        assertEquals(200, days.stream().mapToInt(BenchDay::splicing).sum());
    }

    /** Nobody works on Saturday: what is due then is done by Friday, or late on Friday, as the cuts go by Friday too. */
    @Test
    void dueAtTheWeekend_isDoneByTheLastWorkingDayBefore() {
        reel("R1", piece("A", 1_000).order("A").due(MONDAY.plusDays(5)).minutes(600));
        List<BenchDay> days = days(BenchSketch.everyDay(100));
        assertEquals(List.of("A/1"), days.get(4).late());
        assertEquals(600 - 93, days.get(4).over(), "its reel is cut on Friday");
        assertEquals(List.of(), days.get(5).late());
    }

    /** Nothing is cut on Monday; Tuesday's two reels bring more than Tuesday holds. */
    @Test
    void dayBefore_withRoom_mayTakeAReelOfIt() {
        reel("R1", piece("now", 1_000).order("N").due(MONDAY).minutes(10));
        reel("R2", piece("A", 1_000).order("A").due(TUESDAY).minutes(70));
        reel("R3", piece("B", 1_000).order("B").due(TUESDAY).minutes(70));
        List<BenchDay> days = days(BenchSketch.everyDay(100));
        assertEquals(BenchDay.Earlier.NONE, days.get(0).earlier());
        assertEquals(54, days.get(1).over());
        assertEquals(List.of("B/1"), days.get(1).late());
        assertEquals(new BenchDay.Earlier(MONDAY, List.of("R3")), days.get(1).earlier());
    }

    /** Nobody works on Tuesday: what is left waits for Wednesday. */
    @Test
    void dayWithoutHours_hasNoRoom() {
        Map<DayOfWeek, Integer> hours = new EnumMap<>(BenchSketch.everyDay(50));
        hours.put(DayOfWeek.TUESDAY, 0);
        reel(
                "R1",
                piece("A", 1_000).due(THURSDAY).minutes(60),
                piece("now", 1_000).due(MONDAY));
        List<BenchDay> days = days(hours);
        assertEquals(List.of(40, 0, 20), days.stream().map(BenchDay::splicing).toList());
    }

    @Test
    void shopWithoutHours_isToldNothing() {
        reel("R1", piece("A", 1_000).due(MONDAY).minutes(60));
        assertEquals(List.of(), days(Map.of()));
        assertFalse(BenchHours.NONE.areStated());
        assertEquals(0, BenchHours.NONE.finishing(10_000));
    }

    /** Four hours on Friday, eight on the other days: 7 h 12 min a day in the mean. */
    @Test
    void finishing_isTheDaysThatTheLabourOfALineFills() {
        Map<DayOfWeek, Integer> hours = new EnumMap<>(BenchSketch.everyDay(480));
        hours.put(DayOfWeek.FRIDAY, 240);
        BenchHours bench = new BenchHours(hours, 3, 4);
        assertEquals(0, bench.finishing(0));
        assertEquals(0, bench.finishing(432));
        assertEquals(1, bench.finishing(433));
        assertEquals(1, bench.finishing(864));
        assertEquals(9, bench.finishing(4_320));
    }

    /**
     * Work that is given day by day can be done in time if and only if between any two days there is room for all that is cut
     * after the first and due by the second; counted here by every pair of days.
     */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void earliestDueDayFirst_isInTimeWheneverAnyOrderIs(int seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 100; i++) {
            plan.clear();
            Sketch shop = new Sketch();
            int pieces = 1 + random.nextInt(6);
            List<int[]> work = new ArrayList<>();
            for (int n = 0; n < pieces; n++) {
                int must = random.nextInt(5);
                int finishing = random.nextInt(must + 1);
                int minutes = 10 * random.nextInt(9);
                work.add(new int[] {must - finishing, must, minutes});
                plan.add(BenchSketch.reel(
                        shop,
                        "R" + n,
                        piece("P" + n, 1_000)
                                .order("O" + n)
                                .due(MONDAY.plusDays(must))
                                .finishing(finishing)
                                .minutes(minutes)));
            }
            int room = 40 + random.nextInt(60);
            BenchHours hours = new BenchHours(BenchSketch.everyDay(room), 0, 0);
            boolean inTime = new BenchDays(hours, shop.problem(), plan, List.of())
                    .days().stream().noneMatch(BenchDay::isTooFull);
            assertEquals(
                    isThereRoom(work, room),
                    inTime,
                    work.stream().map(java.util.Arrays::toString).toList() + ", " + room);
        }
    }

    private static boolean isThereRoom(List<int[]> work, int room) {
        for (int from = 0; from < 5; from++) {
            for (int to = from; to < 5; to++) {
                int asked = 0;
                for (int[] each : work) {
                    asked += each[0] >= from && each[1] <= to ? each[2] : 0;
                }
                if (asked > room * (to - from + 1)) {
                    return false;
                }
            }
        }
        return true;
    }

    private void reel(String id, PieceSketch... pieces) {
        plan.add(BenchSketch.reel(sketch, id, pieces));
    }

    private List<BenchDay> days(Map<DayOfWeek, Integer> hours) {
        return new BenchDays(new BenchHours(hours, 3, 4), sketch.problem(), plan, List.of()).days();
    }
}
