package bitterend.day;

import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a plan needs to know of the ledger, as it is at one moment.
 *
 * @param reels what is on the rack
 * @param gone reels of which nothing is left
 * @param movements number of movements of every reel
 * @param cut the movement that cut it, of every piece that is cut
 */
public record RackToday(List<Reel> reels, Set<String> gone, Map<String, Long> movements, Map<String, Movement> cut) {
    public RackToday {
        reels = List.copyOf(reels);
        gone = Set.copyOf(gone);
        movements = Map.copyOf(movements);
        cut = Map.copyOf(cut);
    }

    public static RackToday of(Ledger ledger) {
        return ledger.read(stock -> {
            List<Reel> reels = new ArrayList<>();
            Set<String> gone = new TreeSet<>();
            Map<String, Long> movements = new TreeMap<>();
            for (Holding holding : stock.holdings()) {
                movements.put(holding.id(), holding.movements());
                if (holding.gone()) {
                    gone.add(holding.id());
                } else {
                    reels.add(holding.reel());
                }
            }
            return new RackToday(reels, gone, movements, new CutPieces(stock).cuts());
        });
    }
}
