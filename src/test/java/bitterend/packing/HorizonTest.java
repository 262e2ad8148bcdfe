package bitterend.packing;

import static bitterend.packing.PieceSketch.piece;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which pieces a plan looks at that looks so far ahead. */
final class HorizonTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);
    private static final LocalDate FRIDAY = MONDAY.plusDays(4);

    @Test
    void near_leavesWhatNeedNotBeCutYetForLater() {
        PackingProblem near = Horizon.near(
                new Sketch()
                        .with(piece("today", 1_000).due(MONDAY))
                        .with(piece("friday", 1_000).due(FRIDAY))
                        .with(piece("later", 1_000).due(FRIDAY.plusDays(3)))
                        .with(piece("undated", 1_000).due(LocalDate.MAX))
                        .with(piece("overdue", 1_000).due(MONDAY.minusDays(30)))
                        .problem(),
                FRIDAY,
                Set.of());
        assertEquals(List.of("today", "friday", "undated", "overdue"), ids(near));
        assertEquals(new Horizon(FRIDAY, 1), near.horizon());
    }

    /** Due the Monday after, with one day of finishing: to be cut on Friday. */
    @Test
    void near_goesByTheDayOfTheCut() {
        PackingProblem near = Horizon.near(
                new Sketch()
                        .with(piece("spliced", 1_000).due(FRIDAY.plusDays(3)).finishing(1))
                        .with(piece("plain", 1_000).due(FRIDAY.plusDays(3)))
                        .problem(),
                FRIDAY,
                Set.of());
        assertEquals(List.of("spliced"), ids(near));
    }

    /** Nobody cuts on a Sunday: what is due then is cut on the Friday before, and looked at by then. */
    @Test
    void near_hasWhatIsDueAtTheWeekendBehindIt() {
        PackingProblem near = Horizon.near(
                new Sketch()
                        .with(piece("sunday", 1_000).due(FRIDAY.plusDays(2)))
                        .with(piece("monday", 1_000).due(FRIDAY.plusDays(3)))
                        .problem(),
                FRIDAY,
                Set.of());
        assertEquals(List.of("sunday"), ids(near));
        assertEquals(FRIDAY, new CutDays(near).lastFor(near.pieces().get(0)));
    }

    @Test
    void near_takesAMatchedSetWhole() {
        PackingProblem near = Horizon.near(
                new Sketch()
                        .with(piece("A", 1_000).due(MONDAY).set("sheets", Bond.ONE_LOT))
                        .with(piece("B", 1_000).due(FRIDAY.plusDays(9)).set("sheets", Bond.ONE_LOT))
                        .with(piece("C", 1_000).due(FRIDAY.plusDays(9)).set("others", Bond.ONE_LOT))
                        .problem(),
                MONDAY,
                Set.of());
        assertEquals(List.of("A", "B"), ids(near));
        assertEquals(1, near.horizon().later());
    }

    /** Thursday's urgent piece is looked at from Monday on, but not where Monday is planned alone. */
    @Test
    void today_isWhatMustBeCutOnTheDayAlone() {
        PackingProblem near = Horizon.near(
                new Sketch()
                        .with(piece("today", 1_000).due(MONDAY))
                        .with(piece("urgent", 1_000).due(FRIDAY).priority(1))
                        .with(piece("mate", 1_000).due(FRIDAY).set("sheets", Bond.ONE_LOT))
                        .with(piece("sheet", 1_000).due(MONDAY).set("sheets", Bond.ONE_LOT))
                        .with(piece("bench", 1_000).due(FRIDAY))
                        .with(piece("later", 1_000).due(FRIDAY.plusDays(30)))
                        .problem(),
                FRIDAY,
                Set.of());
        PackingProblem today = Horizon.today(near, Set.of("bench"));
        assertEquals(List.of("today", "mate", "sheet", "bench"), ids(today));
        assertEquals(new Horizon(MONDAY, 2, FRIDAY, List.of()), today.horizon());
        assertEquals(false, today.horizon().holds(near.pieces().get(1), near.calendar()));
    }

    /** What is left of a set whose other leg is cut keeps its lot; priority 1 comes before any day. */
    @Test
    void near_keepsWhatIsBegunAndWhatComesFirst() {
        PackingProblem near = Horizon.near(
                new Sketch()
                        .with(piece("mate", 1_000)
                                .due(FRIDAY.plusDays(60))
                                .begun("sheets", Bond.ONE_LOT, "A", "L1", "R1"))
                        .with(piece("rush", 1_000).due(FRIDAY.plusDays(60)).priority(1))
                        .with(piece("other", 1_000).due(FRIDAY.plusDays(60)))
                        .problem(),
                FRIDAY,
                Set.of());
        assertEquals(List.of("mate", "rush"), ids(near));
    }

    /** What a sheet at the bench holds is cut by it, whenever it is due. */
    @Test
    void near_keepsWhatIsPinned() {
        PackingProblem all = new Sketch()
                .with(ReelSketch.reel("R1", 10_000))
                .with(piece("pinned", 1_000).due(FRIDAY.plusDays(9)))
                .with(piece("free", 1_000).due(FRIDAY.plusDays(9)))
                .with(piece("bench", 1_000).due(FRIDAY.plusDays(9)))
                .problem();
        PackingProblem near = Horizon.near(all.withPins(List.of(new Pin("pinned", "R1"))), MONDAY, Set.of("bench"));
        assertEquals(List.of("pinned", "bench"), ids(near));
    }

    private static List<String> ids(PackingProblem problem) {
        return problem.pieces().stream().map(Piece::id).toList();
    }
}
