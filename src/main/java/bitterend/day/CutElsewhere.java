package bitterend.day;

import bitterend.finding.CommandWord;
import bitterend.packing.ReelDraw;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Pieces of a part that were cut already, off whichever reel, and not by the step that is posted now. */
final class CutElsewhere {
    private final Map<String, Movement> cut;
    private final RecordedPlan plan;
    private final Part part;

    CutElsewhere(Ledger.Stock stock, RecordedPlan plan, Part part) {
        cut = new CutPieces(stock).cuts();
        this.plan = plan;
        this.part = part;
    }

    /**
     * Those of them that are said to have been cut a second time: spare pieces.
     *
     * @throws LedgerException.StockChanged when of one that is not said
     */
    Set<String> spare(List<ReelDraw> draws) {
        Set<String> spare = new HashSet<>();
        List<String> again = new ArrayList<>();
        for (ReelDraw draw : draws) {
            for (String piece : part.pieces(draw)) {
                Movement before = cut.get(piece);
                if (before != null && !plan.facts().same().areOf(plan.id(), before)) {
                    if (part.found().wasCut(piece)) {
                        spare.add(piece);
                    } else {
                        again.add("piece " + piece + " was cut already: " + ReelSince.told(before) + advice(piece));
                    }
                }
            }
        }
        if (!again.isEmpty()) {
            throw new LedgerException.StockChanged(String.join("\n", again));
        }
        return spare;
    }

    private static String advice(String piece) {
        String word = CommandWord.of(piece);
        return "\n  to book what else was cut here: stock post ... --skipped " + word
                + "\n  if it was cut here too, and is a spare piece: stock post ... --was-cut " + word;
    }
}
