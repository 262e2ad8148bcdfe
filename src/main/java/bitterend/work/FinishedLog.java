package bitterend.work;

import bitterend.day.CutPieces;
import bitterend.day.Spoiling;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.work.MeasureFinished.Boxes;
import bitterend.work.MeasureFinished.Said;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Where it is kept that a piece is made, beside its row of measurements. */
public interface FinishedLog {
    /** A shop without a ledger: the row says it all. */
    FinishedLog NONE = (boxes, verdict, row) -> row.run();

    /** Writes the row and keeps what became of the piece, or neither. */
    void keep(Boxes boxes, String verdict, Runnable row);

    /**
     * Events of a ledger: spliced with what it measures, and passed where it passes or somebody accepts it; or spoiled.
     *
     * @param ledger the ledger
     * @param caller puts into an act who does it, and under which id
     */
    record OfLedger(Ledger ledger, UnaryOperator<Event.Act> caller) implements FinishedLog {
        @Override
        public void keep(Boxes boxes, String verdict, Runnable row) {
            if (boxes.said().equals(Said.SPOILED)) {
                new Spoiling(ledger, caller)
                        .spoil(boxes.piece(), Length.ZERO, "came out " + LengthText.exact(boxes.cameOut()));
                row.run();
                return;
            }
            Event.Act spliced = caller.apply(Event.Act.of(Event.Kind.SPLICED, "", verdict))
                    .withAll(Map.of(
                            "piece " + boxes.piece(),
                            LengthText.exact(boxes.cameOut()),
                            "cut",
                            LengthText.exact(boxes.cut()),
                            "how",
                            boxes.how().word(),
                            "splicer",
                            boxes.splicer()));
            ledger.change(spliced, books -> {
                if (!new CutPieces(books).cuts().containsKey(boxes.piece())) {
                    throw new LedgerException.Refused("piece " + boxes.piece() + " is not cut");
                }
                row.run();
            });
            if (verdict.equals(MeasureFinished.PASSED) || boxes.said().word().equals(Said.ACCEPTED)) {
                Event.Act passed = Event.Act.of(Event.Kind.PASSED, "", verdict);
                ledger.change(passed.by(spliced.who()).with("piece " + boxes.piece(), ""), books -> {});
            }
        }
    }
}
