package bitterend.day;

import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Standing;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Minutes that splicers booked for the pieces of an order: all that were worked, those of pieces that were spoiled or spliced
 * again among them.
 *
 * @param minutes all together
 * @param pieces how many pieces they are of
 */
public record BookedMinutes(long minutes, int pieces) {
    /** Those of an order, by its number. */
    public static BookedMinutes of(Ledger.Stock stock, String order) {
        long minutes = 0;
        Set<String> pieces = new HashSet<>();
        for (Event event : Standing.events(stock.events())) {
            List<String> ours = event.named("piece").stream()
                    .filter(piece -> piece.startsWith(order + "/"))
                    .toList();
            if (!ours.isEmpty() && !event.fact(FinishedPieces.MINUTES).isEmpty()) {
                minutes += event.number(FinishedPieces.MINUTES);
                pieces.addAll(ours);
            }
        }
        return new BookedMinutes(minutes, pieces.size());
    }
}
