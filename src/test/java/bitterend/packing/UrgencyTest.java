package bitterend.packing;

import static bitterend.packing.PieceSketch.piece;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.packing.ShopCalendar.Ahead;
import bitterend.packing.check.UndoneWork;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class UrgencyTest {
    /** A Friday. */
    private static final LocalDate FRIDAY = LocalDate.of(2026, 12, 18);

    private static final ShopCalendar USUAL = ShopCalendar.USUAL;

    @Test
    void classOf_priorityOneAndOverdueWorkComeFirst() {
        assertEquals(1, classOf(FRIDAY.minusDays(1), 9, USUAL));
        assertEquals(1, classOf(LocalDate.MAX, 1, USUAL));
        assertEquals(2, classOf(FRIDAY, 2, USUAL));
    }

    /** Nobody cuts on a Saturday or Sunday: what is due then must be cut today. */
    @Test
    void classOf_whatIsDueAtTheWeekendMustBeCutOnFriday() {
        assertEquals(2, classOf(FRIDAY.plusDays(1), 5, USUAL));
        assertEquals(2, classOf(FRIDAY.plusDays(2), 5, USUAL));
        assertEquals(4, classOf(FRIDAY.plusDays(9), 5, USUAL));
    }

    @Test
    void classOf_theNextWorkingDayAfterAFridayIsMonday() {
        assertEquals(3, classOf(FRIDAY.plusDays(3), 5, USUAL));
        assertEquals(4, classOf(FRIDAY.plusDays(4), 5, USUAL));
    }

    @Test
    void classOf_aClosedDayIsNoWorkingDay() {
        ShopCalendar closed = new ShopCalendar(Set.of(FRIDAY.plusDays(3)), USUAL.next(), USUAL.soon());
        assertEquals(3, classOf(FRIDAY.plusDays(4), 5, closed));
        assertEquals(4, classOf(FRIDAY.plusDays(5), 5, closed));
    }

    @Test
    void classOf_sevenDaysEndTheFourthClass() {
        assertEquals(4, classOf(FRIDAY.plusDays(7), 5, USUAL));
        assertEquals(4, classOf(FRIDAY.plusDays(9), 5, USUAL));
        assertEquals(5, classOf(FRIDAY.plusDays(10), 5, USUAL));
        assertEquals(5, classOf(LocalDate.MAX, 2, USUAL));
    }

    @Test
    void classOf_theShopSetsTheLimitsOfTheThirdAndFourthClass() {
        ShopCalendar own = new ShopCalendar(Set.of(), new Ahead(4, false), new Ahead(10, true));
        assertEquals(3, classOf(FRIDAY.plusDays(4), 5, own));
        assertEquals(4, classOf(FRIDAY.plusDays(5), 5, own));
        assertEquals(4, classOf(FRIDAY.plusDays(14), 5, own));
        assertEquals(5, classOf(FRIDAY.plusDays(17), 5, own));
    }

    /** Due on Wednesday, two working days of finishing with the weekend between: to be cut on the Monday before it at the latest. */
    @Test
    void classOf_finishingTakesWorkingDaysOffTheDueDay() {
        LocalDate wednesday = FRIDAY.plusDays(5);
        assertEquals(4, new Urgency(shop(FRIDAY, finished(wednesday, 1), USUAL)).classOf(finished(wednesday, 1)));
        assertEquals(3, new Urgency(shop(FRIDAY, finished(wednesday, 2), USUAL)).classOf(finished(wednesday, 2)));
        assertEquals(2, new Urgency(shop(FRIDAY, finished(wednesday, 3), USUAL)).classOf(finished(wednesday, 3)));
        assertEquals(1, new Urgency(shop(FRIDAY, finished(wednesday, 4), USUAL)).classOf(finished(wednesday, 4)));
        assertEquals(
                5, new Urgency(shop(FRIDAY, finished(LocalDate.MAX, 4), USUAL)).classOf(finished(LocalDate.MAX, 4)));
    }

    private static Piece finished(LocalDate due, int finishing) {
        return new Sketch()
                .with(piece("P", 1_000).due(due).priority(5).finishing(finishing))
                .problem()
                .pieces()
                .get(0);
    }

    @Test
    void of_aSetIsInTheClassOfItsMostUrgentPieceWithTheSumOfItsPieces() {
        PackingProblem shop = new Sketch()
                .with(piece("A", 1_000).set("S", Bond.ONE_LOT).priority(9))
                .with(piece("B", 1_000).set("S", Bond.ONE_LOT).priority(1))
                .problem();
        assertEquals(Undone.of(1, 10), new PlanPrice(shop).undone(Packing.EMPTY));
    }

    @Test
    void weight_isTenLessThePriority() {
        assertEquals(9, Urgency.weight(due(FRIDAY, 1)));
        assertEquals(1, Urgency.weight(due(FRIDAY, 9)));
    }

    @Test
    void undone_noWeightOfALaterClassOutweighsAnEarlierOne() {
        Undone rush = Undone.of(1, 1);
        Undone many = Undone.of(5, Long.MAX_VALUE);
        assertTrue(many.isLessThan(rush));
        assertTrue(Undone.of(3, 5).plus(many).isLessThan(Undone.of(3, 6)));
        assertTrue(Undone.NONE.isLessThan(many));
        assertEquals(rush, rush.plus(many).minus(many));
    }

    @Test
    void classAndWeight_areReadAlikeByTheChecker() {
        Random random = new Random(5);
        for (int i = 0; i < 20_000; i++) {
            LocalDate day = FRIDAY.plusDays(random.nextInt(30));
            ShopCalendar calendar = new ShopCalendar(
                    Set.of(day.plusDays(1 + random.nextInt(3)), day.plusDays(4 + random.nextInt(3))),
                    new Ahead(random.nextInt(4), random.nextBoolean()),
                    new Ahead(random.nextInt(12), random.nextBoolean()));
            LocalDate due = random.nextInt(9) == 0 ? LocalDate.MAX : day.plusDays(random.nextInt(20) - 3);
            int finishing = Math.max(0, random.nextInt(10) - 5);
            Piece piece = new Sketch()
                    .with(piece("P", 1_000)
                            .due(due)
                            .priority(1 + random.nextInt(9))
                            .finishing(finishing))
                    .problem()
                    .pieces()
                    .get(0);
            PackingProblem shop = shop(day, piece, calendar);
            assertEquals(new Urgency(shop).of(piece), new UndoneWork(shop).of(piece), day + " " + due + calendar);
        }
    }

    private static int classOf(LocalDate due, int priority, ShopCalendar calendar) {
        Piece piece = due(due, priority);
        return new Urgency(shop(FRIDAY, piece, calendar)).classOf(piece);
    }

    private static Piece due(LocalDate due, int priority) {
        return new Sketch()
                .with(piece("P", 1_000).due(due).priority(priority))
                .problem()
                .pieces()
                .get(0);
    }

    private static PackingProblem shop(LocalDate day, Piece piece, ShopCalendar calendar) {
        return new PackingProblem(
                day, Map.of(), List.of(piece), List.of(), Map.of(), Prices.NONE, List.of(), Map.of(), calendar);
    }
}
