package bitterend.packing;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.measure.Length;
import bitterend.packing.Horizon.Line;
import bitterend.packing.Horizon.Waiting;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is not cut ahead while rope is short. A cut loses 10 mm. */
final class BrakeTest {
    private static final LocalDate MONDAY = Sketch.DAY;
    private static final LocalDate TUESDAY = MONDAY.plusDays(1);
    private static final LocalDate THURSDAY = MONDAY.plusDays(3);
    private static final LocalDate FRIDAY = MONDAY.plusDays(4);
    private static final Brake.Terms NO_URGENT_WORK = new Brake.Terms(4, Map.of(), Map.of());

    /** The order line of the piece of Friday, which may find rope. */
    private static final List<Line> FRIDAYS =
            List.of(new Line(piece("friday", 4_000).piece().source().lineId(), FRIDAY, 1, List.of()));

    private static PackingProblem held(Sketch sketch, Brake.Terms terms) {
        PackingProblem all = sketch.problem();
        return new Brake(all, terms).held(Horizon.near(all, FRIDAY, Set.of()), Set.of());
    }

    private static List<String> ids(PackingProblem problem) {
        return problem.pieces().stream().map(Piece::id).toList();
    }

    private static Sketch week(long houseMm) {
        return new Sketch()
                .with(reel("R1", houseMm))
                .with(reel("P-88:1", 100_000))
                .coming("P-88:1", THURSDAY)
                .with(piece("today", 2_000).due(MONDAY))
                .with(piece("tuesday", 3_000).due(TUESDAY))
                .with(piece("friday", 4_000).due(FRIDAY));
    }

    @Test
    void ropeForAll_holdsNothingBack() {
        assertEquals(List.of("today", "tuesday", "friday"), ids(held(week(9_030), NO_URGENT_WORK)));
    }

    /** 9.029 m less 5.020 m that must be cut before Thursday: not enough for the 4.010 m of Friday. */
    @Test
    void workOfAfterTheArrival_isCutAheadOutOfWhatIsSpareAlone() {
        PackingProblem held = held(week(9_029), NO_URGENT_WORK);
        assertEquals(List.of("today", "tuesday"), ids(held));
        assertEquals(
                List.of(new Waiting(Sketch.ROPE, List.of("friday"), THURSDAY, "P-88", FRIDAYS)),
                held.horizon().waiting());
    }

    /** A millimetre less than what is known until Thursday: nothing is cut ahead, and today's work is never held back. */
    @Test
    void tooLittleUntilTheArrival_holdsAllBackButTodaysWork() {
        assertEquals(List.of("today", "tuesday"), ids(held(week(5_020), NO_URGENT_WORK)));
        assertEquals(List.of("today"), ids(held(week(5_019), NO_URGENT_WORK)));
    }

    /** 0.5 m a day four times over, on the three working days until Thursday: 6 m. */
    @Test
    void urgentWorkThatNobodyKnowsYet_isKeptRopeFor() {
        Brake.Terms urgent = new Brake.Terms(4, Map.of(Sketch.ROPE, new Length(500)), Map.of());
        assertEquals(List.of("today", "tuesday", "friday"), ids(held(week(15_030), urgent)));
        assertEquals(List.of("today", "tuesday"), ids(held(week(15_029), urgent)));
        assertEquals(List.of("today"), ids(held(week(11_019), urgent)));
        assertEquals(
                List.of("today", "tuesday", "friday"),
                ids(held(week(1_000), new Brake.Terms(0, urgent.urgentADay(), Map.of()))));
    }

    @Test
    void firstClassWorkAndWhatIsPinned_isNeverHeldBack() {
        Sketch sketch = week(4_500)
                .with(piece("first", 4_000).due(FRIDAY).priority(1))
                .with(piece("pinned", 4_000).due(FRIDAY))
                .pin("pinned", "R1");
        assertEquals(List.of("today", "first", "pinned"), ids(held(sketch, NO_URGENT_WORK)));
    }

    @Test
    void setsWaitWhole() {
        Sketch sketch = new Sketch()
                .with(reel("R1", 5_000))
                .with(piece("A", 2_000).due(MONDAY).set("sheets", Bond.ONE_LOT))
                .with(piece("B", 2_000).due(FRIDAY).set("sheets", Bond.ONE_LOT))
                .with(piece("C", 2_000).due(FRIDAY).set("others", Bond.ONE_LOT))
                .with(piece("D", 2_000).due(FRIDAY).set("others", Bond.ONE_LOT));
        assertEquals(List.of("A", "B"), ids(held(sketch, NO_URGENT_WORK)));
    }

    /** Ordered today it is here on Thursday; where nobody offers it all that is known counts. */
    @Test
    void withoutAnOrder_theLeadOfTheOffersCounts() {
        Sketch sketch = new Sketch()
                .with(reel("R1", 5_020))
                .with(piece("today", 2_000).due(MONDAY))
                .with(piece("tuesday", 3_000).due(TUESDAY))
                .with(piece("friday", 4_000).due(FRIDAY));
        Brake.Terms offered = new Brake.Terms(4, Map.of(), Map.of(Sketch.ROPE, THURSDAY));
        PackingProblem held = held(sketch, offered);
        assertEquals(List.of("today", "tuesday"), ids(held));
        assertEquals(
                new Waiting(Sketch.ROPE, List.of("friday"), THURSDAY, "", FRIDAYS),
                held.horizon().waiting().get(0));
        assertEquals(List.of("today"), ids(held(sketch, NO_URGENT_WORK)));
    }

    @Test
    void ropeThatIsKeptOrOnHold_isNotCountedOn() {
        Sketch sketch = week(5_019)
                .with(reel("H", 50_000).onHold())
                .with(reel("K", 50_000).reservedFor("G-7"))
                .with(reel("O", 50_000).ownedBy("Redshank", "G-8"));
        assertEquals(List.of("today"), ids(held(sketch, NO_URGENT_WORK)));
    }

    /** Of 13.03 m four are held for work of after the arrival, which takes them from the house: 9.03 m less its cut are for the others. */
    @Test
    void metresThatAreHeld_areNotCountedOn() {
        Sketch sketch = new Sketch()
                .with(reel("R1", 13_039).held(4, "G-7", FRIDAY))
                .with(reel("P-88:1", 100_000))
                .coming("P-88:1", THURSDAY)
                .with(piece("today", 2_000).due(MONDAY))
                .with(piece("tuesday", 3_000).due(TUESDAY))
                .with(piece("friday", 4_000).due(FRIDAY))
                .with(piece("held", 4_000).due(FRIDAY).order("G-7"));
        PackingProblem all = HeldPieces.pinned(sketch.problem(), order -> "");
        assertEquals(1, all.pins().size());
        Brake brake = new Brake(all, NO_URGENT_WORK);
        assertEquals(
                List.of("today", "tuesday", "held"), ids(brake.held(Horizon.near(all, FRIDAY, Set.of()), Set.of())));
    }

    /** Held for an order that wants nothing of it now: nobody else may cut it. */
    @Test
    void metresThatAreHeldForNobodysPiece_areNotCountedOn() {
        Sketch sketch = new Sketch()
                .with(reel("R1", 13_029).held(4, "G-7", FRIDAY))
                .with(reel("P-88:1", 100_000))
                .coming("P-88:1", THURSDAY)
                .with(piece("today", 2_000).due(MONDAY))
                .with(piece("tuesday", 3_000).due(TUESDAY))
                .with(piece("friday", 4_000).due(FRIDAY));
        assertEquals(List.of("today", "tuesday"), ids(held(sketch, NO_URGENT_WORK)));
    }

    /** The 8 m fit no run of the house: they are told as work undone, and keep no rope from anybody. */
    @Test
    void pieceThatTheHouseCannotGive_staysAndIsNotCounted() {
        Sketch sketch = week(5_020).with(piece("long", 8_000).due(TUESDAY));
        assertEquals(List.of("today", "tuesday", "long"), ids(held(sketch, NO_URGENT_WORK)));
    }

    /** What waits is not looked at by the plan, so that nobody is told that it came since. */
    @Test
    void horizon_doesNotHoldWhatWaits() {
        PackingProblem held = held(week(5_019), NO_URGENT_WORK);
        Piece tuesday = week(5_019).problem().pieces().get(1);
        assertEquals(false, held.horizon().holds(tuesday, held.calendar()));
    }
}
