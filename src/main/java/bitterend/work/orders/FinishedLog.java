package bitterend.work.orders;

import bitterend.day.CutPieces;
import bitterend.day.DeliveredPieces;
import bitterend.day.FinishedPieces;
import bitterend.day.Spoiling;
import bitterend.measure.Length;
import bitterend.measure.Written;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.work.orders.MeasureFinished.Boxes;
import bitterend.work.orders.MeasureFinished.Cut;
import bitterend.work.orders.MeasureFinished.Said;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Where it is kept that a piece is made, beside its row of measurements. */
public interface FinishedLog {
    /** A fact of the event: the row of measurements as it was written with it. */
    String ROW = "measured row";

    /** A row of measurements that is to be written. */
    @FunctionalInterface
    interface Row {
        /** Writes it; the row as written. */
        String write();
    }

    /** A shop without a ledger: the row says it all. */
    FinishedLog NONE = new FinishedLog() {
        @Override
        public Optional<Cut> cut(String piece) {
            return Optional.empty();
        }

        @Override
        public Optional<Event> keep(Boxes boxes, String verdict, Row row) {
            row.write();
            return Optional.empty();
        }
    };

    /** What a piece was cut to, and of which rope; nothing when that is not known here. */
    Optional<Cut> cut(String piece);

    /**
     * Writes the row and keeps what became of the piece, or neither.
     *
     */
    Optional<Event> keep(Boxes boxes, String verdict, Row row);

    /**
     * One event of a ledger for one piece: spliced, with what it measures and what was found; or spoiled.
     *
     * @param ledger the ledger
     * @param caller puts into an act who does it, and under which id
     * @param note why, in words; may be empty
     */
    record OfLedger(Ledger ledger, UnaryOperator<Event.Act> caller, String note) implements FinishedLog {
        @Override
        public Optional<Cut> cut(String piece) {
            return ledger.read(
                    stock -> Optional.ofNullable(new CutPieces(stock).cuts().get(piece))
                            .map(cut -> new Cut(
                                    Written.worked(cut.entry().piece().length()),
                                    cut.entry().after().rope())));
        }

        @Override
        public Optional<Event> keep(Boxes boxes, String verdict, Row row) {
            boolean spoiled = boxes.said().equals(Said.SPOILED);
            Event.Act act = caller.apply(Event.Act.of(spoiled ? Event.Kind.SPOILED : Event.Kind.SPLICED, "", note)
                    .withAll(facts(boxes, verdict)));
            return ledger.change(act, books -> {
                if (spoiled) {
                    Spoiling.write(
                            books,
                            boxes.piece(),
                            Length.ZERO,
                            "came out " + boxes.cameOut().kept());
                } else {
                    checkCut(new CutPieces(books).cuts(), boxes.piece());
                }
                if (DeliveredPieces.of(books).contains(boxes.piece())) {
                    throw new LedgerException.Refused("piece " + boxes.piece() + " is delivered");
                }
                books.fact(ROW, row.write());
            });
        }

        private static Map<String, String> facts(Boxes boxes, String verdict) {
            Map<String, String> facts = new HashMap<>(Map.of(
                    "piece " + boxes.piece(),
                    boxes.cameOut().kept(),
                    "cut",
                    boxes.cut().length().kept(),
                    "how",
                    boxes.how().word(),
                    "splicer",
                    boxes.by().splicer(),
                    FinishedPieces.VERDICT,
                    verdict));
            if (boxes.by().minutes() > 0) {
                facts.put(FinishedPieces.MINUTES, Integer.toString(boxes.by().minutes()));
            }
            return facts;
        }

        private static void checkCut(Map<String, Movement> cuts, String piece) {
            if (!cuts.containsKey(piece)) {
                throw new LedgerException.Refused("piece " + piece + " is not cut");
            }
        }
    }
}
