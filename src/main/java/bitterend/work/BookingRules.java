package bitterend.work;

import bitterend.day.Found;
import bitterend.demand.Piece;
import bitterend.finding.CommandWord;
import bitterend.packing.check.LedgerSets;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Asked while a part of a plan is booked and no one else can book: what the ledger says at that moment of the sets and the
 * reels of the pieces that are meant. Of these, pieces that were cut all the same are spare pieces.
 *
 * @param plan the plan
 * @param ordered every piece that is ordered
 * @param meant the pieces that are booked
 * @param found what was found at the bench
 */
public record BookingRules(Verdict.Passed plan, List<Piece> ordered, Set<String> meant, Found found)
        implements Function<Ledger.Stock, Set<String>> {

    /** @throws LedgerException.StockChanged when a piece is barred that was not said to be cut all the same */
    @Override
    public Set<String> apply(Ledger.Stock stock) {
        Map<String, Reel> reels = new HashMap<>();
        for (Holding holding : stock.holdings()) {
            reels.put(holding.id(), holding.reel());
        }
        List<Remark> bars = new ArrayList<>(TornSets.of(plan.plan(), ordered, LedgerSets.Book.of(stock)));
        bars.addAll(ReelRules.of(plan, reels));
        bars.removeIf(bar -> !meant.contains(bar.piece()));
        List<String> unsaid = bars.stream()
                .filter(bar -> !found.wasCut(bar.piece()))
                .map(bar -> bar.sentence().exact() + "\n  if it was cut all the same: stock post ... --was-cut "
                        + CommandWord.of(bar.piece()))
                .toList();
        if (!unsaid.isEmpty()) {
            throw new LedgerException.StockChanged(String.join("\n", unsaid));
        }
        Set<String> spare = new HashSet<>();
        bars.forEach(bar -> spare.add(bar.piece()));
        return spare;
    }
}
