package bitterend.packing.check;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.demand.Piece.Bond;
import bitterend.packing.CutPlan;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.packing.Sketch;
import bitterend.shops.PlanWriter;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import bitterend.store.SqliteLedger;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** P1 of a set is cut off W1; the plan, which knows nothing of it, cuts P2 off another reel. */
final class LedgerSetsTest {
    private static final Reel W1 = reel("W1", 9_000).lot("S1").reel();
    private static final Reel W2 = reel("W2", 9_000).lot("S1").reel();
    private static final Reel W3 = reel("W3", 9_000).lot("S2").reel();

    private final Ledger ledger;

    LedgerSetsTest(@TempDir Path folder) {
        SqliteLedger.create(
                folder, Clock.systemUTC(), Event.Act.of(Event.Kind.OPENED, "Ada", ""), books -> List.of(W1, W2, W3)
                        .forEach(each -> books.append(new Movement.Entry(Movement.Kind.RECEIVED, each, ""))));
        ledger = SqliteLedger.open(folder, Clock.systemUTC());
        book(Event.Kind.CUT, new Movement.Entry(Movement.Kind.CUT, W1, false, "", Movement.Origin.ofPiece("", "P1")));
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    @Test
    void restOfASet_offAnotherLot_isAFault_whateverThePlanWasTold() {
        assertEquals(List.of(), faults(Bond.ONE_LOT, W2));
        assertEquals(
                List.of("BEGUN_SET at P2: off W3 it would not match P1, which the ledger has as cut off W1, lot S1"),
                faults(Bond.ONE_LOT, W3));
    }

    @Test
    void restOfASetToTheReel_offAnotherReelOfTheLot_isAFault() {
        assertEquals(List.of(), faults(Bond.ONE_REEL, W1));
        assertEquals(1, faults(Bond.ONE_REEL, W2).size());
    }

    @Test
    void releasedSet_isBoundByLaterCutsOnly() {
        ledger.change(Event.Act.of(Event.Kind.SET_RELEASED, "Ada", "").with("set S", ""), books -> {});
        assertEquals(List.of(), faults(Bond.ONE_LOT, W3));
    }

    @Test
    void sparePiece_bindsNothing() {
        book(
                Event.Kind.MADE_SPARE,
                new Movement.Entry(Movement.Kind.MADE_SPARE, W1, false, "", Movement.Origin.ofPiece("", "P1")));
        assertEquals(List.of(), faults(Bond.ONE_LOT, W3));
    }

    private void book(Event.Kind kind, Movement.Entry entry) {
        ledger.change(Event.Act.of(kind, "Ada", ""), books -> books.append(entry));
    }

    private List<String> faults(Bond bond, Reel off) {
        PackingProblem day = new Sketch()
                .with(reel(off.id(), 9_000).lot(off.lot()))
                .with(piece("P1", 1_000).set("S", bond))
                .with(piece("P2", 1_000).set("S", bond), off.id(), 1)
                .problem();
        CutPlan plan = PlanWriter.write(day, new Packing(Map.of("P2", new RunId(off.id(), 1))));
        return LedgerSets.faults(plan, day.pieces(), LedgerSets.Book.of(ledger)).stream()
                .map(Fault::toString)
                .toList();
    }
}
