package bitterend.work;

import bitterend.exchange.MeasuredRows;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Undo;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** An event is taken back whole: its movements, its facts, and the row of measurements that was written with it. */
public final class TakeBack {
    private final Path folder;
    private final Ledger ledger;

    /** @param folder the shop folder */
    public TakeBack(Path folder, Ledger ledger) {
        this.folder = folder;
        this.ledger = ledger;
    }

    /**
     * What was taken back.
     *
     * @param event the event that did so
     * @param told what went with it, in sentences
     */
    public record TakenBack(Event event, List<String> told) {
        public TakenBack {
            told = List.copyOf(told);
        }
    }

    /**
     * Takes an event back.
     *
     * @param act who does it, why, and under which id
     */
    public TakenBack event(long number, Event.Act act) {
        List<String> told = new ArrayList<>();
        return MeasuredRows.orAsItWas(folder, () -> {
            Event event = new Undo(ledger, act).event(number, wrong -> told.addAll(rowOf(wrong)));
            return new TakenBack(event, told);
        });
    }

    private List<String> rowOf(Event wrong) {
        List<String> told = new ArrayList<>();
        told.add("event " + wrong.number() + " (" + wrong.act().kind().word() + ") is taken back");
        String row = wrong.fact(FinishedLog.ROW);
        if (!row.isEmpty()) {
            told.add(
                    MeasuredRows.takeOut(folder, row)
                            ? "its row of measured.csv went with it: " + row
                            : "its row of measured.csv is not as it was written; look whether calibrate may still learn"
                                    + " from it: " + row);
        }
        return told;
    }
}
