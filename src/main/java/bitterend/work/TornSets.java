package bitterend.work;

import bitterend.demand.Piece;
import bitterend.packing.CutPlan;
import bitterend.packing.check.LedgerSets;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Sets of which other pieces were cut since a plan was made, off rope that those of the plan would not match. */
public final class TornSets {
    private TornSets() {}

    /**
     * What bars reels of the plan.
     *
     * @param ordered every piece that is ordered
     * @param book what the ledger says
     */
    static List<Remark> of(CutPlan plan, List<Piece> ordered, LedgerSets.Book book) {
        Map<String, String> reels = new HashMap<>();
        plan.draws().forEach(draw -> draw.cuts().forEach(cut -> reels.put(cut.piece(), draw.reel())));
        return LedgerSets.faults(plan, ordered, book).stream()
                .map(fault ->
                        Remark.barring(reels.getOrDefault(fault.where(), ""), fault.where() + ": " + fault.sentence()))
                .toList();
    }

    /**
     * Refuses to book these reels of a plan where that would tear a set by what the ledger says at that moment.
     *
     * @throws LedgerException.StockChanged when it would
     */
    public static void refuse(CutPlan plan, Set<String> reels, List<Piece> ordered, Ledger.Stock stock) {
        List<String> torn = of(plan, ordered, LedgerSets.Book.of(stock)).stream()
                .filter(remark -> reels.contains(remark.reel()))
                .map(Remark::sentence)
                .toList();
        if (!torn.isEmpty()) {
            throw new LedgerException.StockChanged(String.join("\n", torn));
        }
    }
}
