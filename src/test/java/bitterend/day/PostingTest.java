package bitterend.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.LengthBook.Account;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.packing.RunDraw.Rest;
import bitterend.stock.Event;
import bitterend.stock.Flaw;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import bitterend.stock.Undo;
import bitterend.store.SqliteLedger;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Posting by hand: a reel of 30 m, lead trim 0.5 m, flaw from 12 to 12.4 m. Two pieces of 5 m before the flaw, 1.46 m of
 * which are kept; one piece of 10 m behind it; cut loss 20 mm; 7.58 m stay on the reel.
 */
final class PostingTest {
    private static final Part MEASURED = part(List.of(), Map.of("A/1.1", mm(5_100)));

    private final Ledger ledger;

    PostingTest(@TempDir Path folder) {
        SqliteLedger.create(
                folder,
                Clock.systemUTC(),
                Event.Act.of(Event.Kind.OPENED, "test", ""),
                books -> books.append(new Entry(
                        Kind.RECEIVED, reel("K1", List.of(new Flaw(mm(12_000), mm(12_400), mm(0), "join"))), "")));
        ledger = SqliteLedger.open(folder, Clock.systemUTC());
    }

    @AfterEach
    void end() {
        assertEquals(List.of(), ledger.verify());
        ledger.close();
    }

    @Test
    void wholeReel_keepsACoilAndTheRest() {
        post(Part.ALL);
        assertEquals(mm(7_580), holding("K1").reel().length());
        assertEquals(mm(1_460), holding("K1-1").reel().length());
        assertEquals("L1", holding("K1-1").reel().lot());
        assertEquals(List.of("K1-1", "K1"), ledger.read(stock -> new Trace(stock).ancestry("K1-1")));
    }

    @Test
    void measuredLonger_leavesLessOfTheRunAndTheRestAsPlanned() {
        post(MEASURED);
        assertEquals(mm(1_360), holding("K1-1").reel().length());
        assertEquals(mm(7_580), holding("K1").reel().length());
        Movement cut = ledger.read(Ledger.Stock::ofPieces).get(0);
        assertEquals(mm(-5_120), cut.by());
        assertEquals("measured 5.100 m, planned 5.000 m", cut.entry().note());
    }

    @Test
    void measuredPieceByPiece_comesToTheSame() {
        post(part(List.of("A/1.1"), Map.of("A/1.1", mm(5_100))));
        assertEquals(mm(30_000 - 500 - 5_120), holding("K1").reel().length());
        post(part(List.of("A/1.2"), Map.of()));
        post(Part.ALL);
        assertEquals(mm(1_360), holding("K1-1").reel().length());
        assertEquals(mm(7_580), holding("K1").reel().length());
    }

    @Test
    void postedPiece_takesNoOtherMeasurementAfterwards() {
        post(Part.ALL);
        assertThrows(LedgerException.Refused.class, () -> post(MEASURED));
    }

    @Test
    void piecesUpToOne_postWhatComesBeforeIt() {
        post(part(List.of("A/1.2"), Map.of()));
        assertEquals(2, ledger.read(Ledger.Stock::ofPieces).size());
        assertEquals(mm(30_000 - 500 - 2 * 5_020), holding("K1").reel().length());
    }

    @Test
    void heldReel_isRefusedAndPostedOnceTheHoldWasTakenBack() {
        Event hold = new Rack(ledger, "Ada").hold("K1", "tag missing");
        LedgerException changed = assertThrows(LedgerException.StockChanged.class, () -> post(Part.ALL));
        assertTrue(changed.sentence().contains("on hold"), changed.sentence());
        assertTrue(changed.sentence().contains("tag missing"), changed.sentence());
        undo(hold);
        post(Part.ALL);
        assertEquals(mm(7_580), holding("K1").reel().length());
    }

    @Test
    void movedReel_isPostedAllTheSame() {
        new Rack(ledger, "Ada").move("K1", "bay 2", "");
        post(Part.ALL);
        assertEquals("bay 2", holding("K1").reel().where().place());
    }

    @Test
    void spoiledPiece_comesBackAsACoilAndDoesNotStopTheRest() {
        post(part(List.of("A/1.1"), Map.of()));
        List<Movement> spoiled = new Spoiling(ledger, "Ada")
                .spoil("A/1.1", mm(4_000), "tuck slipped")
                .movements();
        assertEquals("K1-1", spoiled.get(1).entry().reel());
        assertEquals(Map.of(), ledger.read(stock -> new CutPieces(stock).cuts()));
        post(Part.ALL);
        assertEquals(2, ledger.read(stock -> new CutPieces(stock).cuts()).size());
        assertEquals(mm(1_460), holding("K1-2").reel().length());
        assertThrows(LedgerException.Refused.class, () -> new Spoiling(ledger, "Ada").spoil("A/1.2", mm(5_021), ""));
    }

    @Test
    void pieceThatAnotherPlanCutElsewhere_isNotCutAgain() {
        new Rack(ledger, "Ada").receive(reel("K2", List.of(new Flaw(mm(12_000), mm(12_400), mm(0), "join"))), "");
        new Posting(ledger, "Ada").post(new RecordedPlan("noon", plan("K2"), Map.of("K2", 1L)), Part.ALL);
        LedgerException changed = assertThrows(LedgerException.StockChanged.class, () -> post(Part.ALL));
        assertTrue(changed.sentence().contains("piece A/1.1 was cut already: reel K2"), changed.sentence());
        assertEquals(1, holding("K1").movements());
    }

    @Test
    void whatThePlanDoesNotCut_isRefused() {
        assertThrows(LedgerException.Contradictory.class, () -> post(part(List.of("Z/9.9"), Map.of())));
        assertThrows(LedgerException.Contradictory.class, () -> post(part(List.of(), Map.of("Z/9.9", mm(5)))));
        assertThrows(LedgerException.Contradictory.class, () -> post(part(List.of(), Map.of("A/1.1", mm(0)))));
        assertThrows(
                LedgerException.Contradictory.class, () -> post(part(List.of("A/1.1"), Map.of("A/1.2", mm(5_000)))));
    }

    @Test
    void scrap_isWrittenDownWithItsReason() {
        Found why = new Found(Map.of(), Map.of(), Found.Pieces.NONE, Set.of(), "frayed");
        Part frayed = new Part(List.of(), List.of(), why);
        new Posting(ledger, "Ada").post(new RecordedPlan("morning", plan("K1", Rest.SCRAP), Map.of("K1", 1L)), frayed);
        Movement scrapped = ledger.read(stock -> stock.history("K1")).get(4);
        assertEquals(Kind.SCRAPPED, scrapped.entry().kind());
        assertEquals("frayed", scrapped.entry().note());
        assertEquals(mm(-1_460), scrapped.by());
    }

    @Test
    void undoOfAnEarlierEvent_isRefusedUntilTheLaterOnesAreTakenBack() {
        Rack rack = new Rack(ledger, "Ada");
        Event first = rack.hold("K1", "");
        Event second = rack.release("K1", "");
        LedgerException refused = assertThrows(LedgerException.Refused.class, () -> undo(first));
        assertTrue(refused.sentence().contains("event " + second.number() + ": released on reel K1, by Ada"));
        undo(second);
        assertThrows(LedgerException.Refused.class, () -> undo(second));
        Event undone = undo(first);
        assertThrows(LedgerException.Refused.class, () -> undo(undone));
        assertEquals(Reel.State.FREE, holding("K1").reel().custody().state());
    }

    @Test
    void posting_isTakenBackWholeByPlanAndReel() {
        post(part(List.of("A/1.1"), Map.of()));
        post(Part.ALL);
        Event undone = new Undo(ledger, Event.Act.of(Event.Kind.UNDONE, "Ada", "wrong reel")).posting("morning", "K1");
        assertEquals(mm(30_000), holding("K1").reel().length());
        assertTrue(holding("K1-1").gone());
        assertEquals("wrong reel", undone.act().note());
        assertEquals(Map.of(), ledger.read(stock -> new CutPieces(stock).cuts()));
        post(Part.ALL);
        assertEquals(3, ledger.read(stock -> new CutPieces(stock).cuts()).size());
    }

    @Test
    void spoilWithItsCoil_isTakenBackWhole() {
        post(part(List.of("A/1.1"), Map.of()));
        Event spoiled = new Spoiling(ledger, "Ada").spoil("A/1.1", mm(4_000), "");
        new Rack(ledger, "Ada").move("K1-1", "bay 2", "");
        assertThrows(LedgerException.Refused.class, () -> undo(spoiled));
        undo(spoiled.number() + 1);
        undo(spoiled);
        assertTrue(holding("K1-1").gone());
        assertEquals(1, ledger.read(stock -> new CutPieces(stock).cuts()).size());
    }

    @Test
    void idSentTwice_countsOnceAndGivesTheFirstResult() {
        Event.Act tick = Event.Act.of(Event.Kind.POSTED, "Ada", "").withId("tick 7");
        Posting posting = new Posting(ledger, act -> act.by("Ada").withId(tick.id()));
        RecordedPlan plan = new RecordedPlan("morning", plan("K1"), Map.of("K1", 1L));
        List<Movement> first =
                posting.post(plan, part(List.of("A/1.1"), Map.of())).written();
        assertEquals(first, posting.post(plan, Part.ALL).written());
        assertThrows(
                LedgerException.Refused.class,
                () -> new Rack(ledger, act -> act.by("Ada").withId("tick 7")).hold("K1", ""));
    }

    private Event undo(Event event) {
        return undo(event.number());
    }

    private Event undo(long number) {
        return new Undo(ledger, Event.Act.of(Event.Kind.UNDONE, "Ada", "")).event(number);
    }

    private void post(Part part) {
        new Posting(ledger, "Ada").post(new RecordedPlan("morning", plan("K1"), Map.of("K1", 1L)), part);
    }

    private Holding holding(String reel) {
        return ledger.read(stock -> stock.findHolding(reel)).orElseThrow();
    }

    private static Part part(List<String> upTo, Map<String, Length> measured) {
        return new Part(List.of(), upTo, Found.measured(measured));
    }

    private static Reel reel(String id, List<Flaw> flaws) {
        Reel.Contents contents = new Reel.Contents(mm(30_000), mm(0), mm(500), mm(0), Reel.Known.METERED);
        return new Reel(
                id, "braid", "L1", contents, flaws, Reel.Papers.NONE, Reel.Custody.FREE, true, Reel.Where.UNKNOWN);
    }

    private static CutPlan plan(String reel) {
        return plan(reel, Rest.REMNANT);
    }

    private static CutPlan plan(String reel, Rest restOfFirstRun) {
        RunDraw first = new RunDraw(
                1,
                mm(0),
                mm(11_500),
                List.of(new Cut("A/1.1", mm(0), mm(5_000)), new Cut("A/1.2", mm(5_020), mm(10_020))),
                mm(1_460),
                restOfFirstRun);
        RunDraw last = new RunDraw(
                2, mm(11_900), mm(29_500), List.of(new Cut("A/1.3", mm(11_900), mm(21_900))), mm(7_580), Rest.ON_REEL);
        LengthBook book = LengthBook.EMPTY
                .with(Account.BEFORE, mm(30_000))
                .with(Account.PIECES, mm(20_000))
                .with(Account.CUT_LOSS, mm(60))
                .with(Account.LEAD_TRIM, mm(500))
                .with(Account.FLAWS, mm(400))
                .with(Account.KEPT, mm(1_460))
                .with(Account.LEFT, mm(7_580));
        ReelDraw draw = new ReelDraw(reel, mm(500), List.of(first, last), mm(7_580), book, Cost.ZERO);
        return new CutPlan(LocalDate.of(2026, 3, 2), List.of(draw), List.of(), book, Cost.ZERO, List.of());
    }

    private static Length mm(long mm) {
        return new Length(mm);
    }
}
