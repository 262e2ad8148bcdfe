package bitterend.exchange;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.finding.NaturalOrder;
import bitterend.stock.Delivery;
import bitterend.stock.Reel;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The reels of a ledger, where a shop keeps one.
 *
 * @param file name of the ledger
 * @param reels what is on the rack
 * @param gone ids of reels of which nothing is left; pins may still speak of them
 * @param came ids of the reels that came of each order of reels, by its number
 * @param deliveries reels that came, against what was ordered
 */
public record LedgerReels(
        String file, List<Reel> reels, Set<String> gone, Map<String, List<String>> came, List<Delivery> deliveries) {
    public LedgerReels {
        reels = reels.stream()
                .sorted(Comparator.comparing(Reel::id, NaturalOrder.IDS))
                .toList();
        gone = Set.copyOf(gone);
        came = Map.copyOf(came);
        deliveries = List.copyOf(deliveries);
    }

    /** The reels, with an error for each whose rope the catalogue does not have. */
    List<Reel> checked(Ropes ropes, Findings findings) {
        for (Reel reel : reels) {
            if (!ropes.mayKnow(reel.rope())) {
                findings.add(
                        Finding.error(file, "reel " + reel.id(), "rope", reel.rope(), "a rope of " + ropes.file()));
            }
        }
        return reels;
    }
}
