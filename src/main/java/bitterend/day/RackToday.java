package bitterend.day;

import bitterend.finding.NaturalOrder;
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
 * @param parents the reel that each coil was cut off, by coil
 */
public record RackToday(
        List<Reel> reels,
        Set<String> gone,
        Map<String, Long> movements,
        Map<String, Movement> cut,
        Map<String, String> parents) {
    /** Of a shop that keeps no ledger. */
    public static final RackToday NONE = new RackToday(List.of(), Set.of(), Map.of(), Map.of(), Map.of());

    public RackToday {
        reels = List.copyOf(reels);
        gone = Set.copyOf(gone);
        movements = Map.copyOf(movements);
        cut = Map.copyOf(cut);
        parents = Map.copyOf(parents);
    }

    /** A reel, then every other reel and coil that was rope of the same reel when it came. */
    List<String> sameReel(String reel) {
        String first = asReceived(reel);
        List<String> same = new ArrayList<>(List.of(reel));
        movements.keySet().stream()
                .filter(other -> !other.equals(reel) && asReceived(other).equals(first))
                .sorted(NaturalOrder.IDS)
                .forEach(same::add);
        return same;
    }

    private String asReceived(String reel) {
        String first = reel;
        for (String parent = parents.get(first); parent != null; parent = parents.get(first)) {
            first = parent;
        }
        return first;
    }

    /** Whether a person let the set go on without matching this cut. */
    boolean isReleased(String set, Movement cut) {
        return false;
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
            return new RackToday(reels, gone, movements, new CutPieces(stock).cuts(), parents(stock));
        });
    }

    /** What the first movement of each coil says. */
    private static Map<String, String> parents(Ledger.Stock stock) {
        Map<String, String> parents = new TreeMap<>();
        for (Movement movement : stock.movements()) {
            String parent = movement.entry().origin().parent();
            if (movement.count() == 1 && !parent.isEmpty()) {
                parents.put(movement.entry().reel(), parent);
            }
        }
        return parents;
    }
}
