package bitterend.packing;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece.Bond;
import bitterend.measure.Length;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.GreedyStrategy;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Rope of a reel that is held: for others the reel is shorter, and those it is held for come off it. */
final class HeldPiecesTest {
    private static final LocalDate FRIDAY = Sketch.DAY.plusDays(4);

    @Test
    void heldRope_isNotThereForOthers() {
        PackingProblem day = served(new Sketch()
                .with(reel("R1", 80_000).held(50, "G", FRIDAY))
                .with(piece("short", 25_000).order("A"))
                .with(piece("long", 40_000).order("A").priority(1)));
        assertEquals(
                new Length(30_000),
                day.reel("R1").runs().get(0).length(),
                "what is not held: the hold has no piece yet");
        assertEquals(Map.of("short", "R1"), planned(day));
    }

    @Test
    void piecesOfItsOrder_comeOffIt_whateverElseIsUrgent() {
        PackingProblem day = served(new Sketch()
                .with(reel("R1", 60_000).held(50, "G", FRIDAY))
                .with(piece("own", 49_000).order("G").priority(9))
                .with(piece("urgent", 55_000).order("A").priority(1)));
        assertEquals(Map.of("own", "R1"), planned(day));
        assertTrue(new Pin("own", "R1").ofHeldRope("order G").isOfHeldRope());
        assertEquals(
                List.of(new Pin("own", "R1").ofHeldRope("order G")), day.pins(), "it is pinned to what is held for it");
    }

    @Test
    void whatIsHeld_servesTheMostUrgentOfItsOrder_asFarAsItGoes() {
        PackingProblem day = served(new Sketch()
                .with(reel("R1", 100_000).held(50, "G", FRIDAY))
                .with(piece("late", 30_000).order("G").due(FRIDAY))
                .with(piece("soon", 30_000).order("G").due(Sketch.DAY)));
        assertEquals(List.of("soon"), day.pins().stream().map(Pin::piece).toList());
        assertEquals(
                new Length(100_000 - 20_000 + 10),
                day.reel("R1").runs().get(0).length(),
                "20 m less the loss of a cut");
        assertEquals(2, planned(day).size(), "the other one has its place beside what is held");
    }

    @Test
    void hold_endsWithItsDay() {
        Sketch shop = new Sketch()
                .with(reel("R1", 60_000).held(50, "G", Sketch.DAY.minusDays(1)))
                .with(piece("other", 60_000).order("A"));
        assertEquals(Map.of("other", "R1"), planned(served(shop)));
    }

    @Test
    void hold_stillHoldsOnItsLastDay() {
        Sketch shop = new Sketch()
                .with(reel("R1", 60_000).held(50, "G", Sketch.DAY))
                .with(piece("other", 60_000).order("A"));
        assertEquals(Map.of(), planned(served(shop)));
    }

    @Test
    void reelThatIsShorterThanWhatIsHeld_isNeverBelowNothing_andTheFirstComesFirst() {
        PackingProblem day = served(new Sketch()
                .with(reel("R1", 60_000).held(50, "G", FRIDAY).held(40, "H", FRIDAY))
                .with(piece("second", 39_000).order("H"))
                .with(piece("first", 49_000).order("G")));
        assertEquals(Map.of("first", "R1"), planned(day));
    }

    @Test
    void matchedSet_isServedWholeOrNotAtAll() {
        Sketch shop = new Sketch()
                .with(reel("R1", 60_000).lot("1").held(50, "G", FRIDAY))
                .with(reel("R2", 60_000).lot("2"))
                .with(piece("one", 28_000).order("G").set("pair", Bond.ONE_LOT))
                .with(piece("two", 28_000).order("G").set("pair", Bond.ONE_LOT));
        assertEquals(Map.of("one", "R2", "two", "R2"), planned(served(shop)), "56 m are more than is held");
    }

    @Test
    void pieceThatTakesALittleMoreThanIsHeld_isServedByItsFinishedLength() {
        PackingProblem day = new Sketch()
                .with(reel("R1", 60_000).held(50, "G", FRIDAY))
                .with(piece("own", 50_000).order("G").or(Sketch.OTHER_ROPE, 51_000))
                .problem();
        assertEquals(1, HeldPieces.pinned(day, order -> "").pins().size());
    }

    @Test
    void reasonOfWhatIsUndone_saysWhatIsHeldForWhomUntilWhen() {
        PackingProblem day = served(new Sketch()
                .with(reel("R1", 60_000).held(50, "G", FRIDAY))
                .with(piece("other", 40_000).order("A")));
        String why = plan(day).unplanned().get(0).reason().sentence().exact();
        assertTrue(why.contains("of reel R1 50.000 m held for order G until 2026-03-06"), why);
    }

    @Test
    void holdForACustomer_servesAnyOrderOfTheCustomer() {
        PackingProblem day = new Sketch()
                .with(reel("R1", 60_000).held(50, "G", FRIDAY))
                .with(piece("own", 49_000).order("A"))
                .problem();
        bitterend.stock.Reel reel = day.reels().get(0);
        bitterend.stock.Held held = new bitterend.stock.Held(
                new Length(50_000), bitterend.stock.Held.For.CUSTOMER, "ketch Heron", FRIDAY, "");
        PackingProblem forCustomer = day.withRack(
                day.ropes(),
                day.values(),
                List.of(reel.withCustody(reel.custody().holding(List.of(held)))));
        assertEquals(
                0, HeldPieces.pinned(forCustomer, order -> "cutter Tern").pins().size());
        assertEquals(
                1, HeldPieces.pinned(forCustomer, order -> "ketch Heron").pins().size());
    }

    private static PackingProblem served(Sketch shop) {
        return HeldPieces.pinned(shop.problem(), order -> "");
    }

    private static CutPlan plan(PackingProblem day) {
        return new DayPlanner(new GreedyStrategy()).plan(day, Effort.of(Duration.ofSeconds(1)));
    }

    /** The reel of each piece that is planned. */
    private static Map<String, String> planned(PackingProblem day) {
        Map<String, String> reels = new TreeMap<>();
        plan(day).draws().forEach(draw -> draw.cuts().forEach(cut -> reels.put(cut.piece(), draw.reel())));
        return reels;
    }
}
