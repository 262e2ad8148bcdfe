package bitterend.work;

import bitterend.demand.Piece;
import bitterend.measure.Sentence;
import bitterend.packing.CutPlan;
import bitterend.packing.check.LedgerSets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Sets of which other pieces were cut since a plan was made, off rope that those of the plan would not match. */
final class TornSets {
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
                .map(fault -> Remark.barring(
                        reels.getOrDefault(fault.where(), ""),
                        fault.where(),
                        Sentence.of(fault.where() + ": " + fault.sentence())))
                .toList();
    }
}
