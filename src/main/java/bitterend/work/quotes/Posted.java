package bitterend.work.quotes;

import bitterend.day.CutPieces;
import bitterend.day.FinishedPieces;
import bitterend.quoting.after.ThatDay;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Paid;
import bitterend.stock.Standing;
import bitterend.work.ShopNow;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What the ledger has for jobs that are settled, read once for all of them.
 *
 * @param all every movement, those that were taken back among them
 * @param standing the movements that still stand
 * @param good pieces that are cut and good
 * @param minutes booked for each piece
 * @param paid what is known of the price of reels
 * @param then what held on the day of a cut
 */
record Posted(
        List<Movement> all,
        List<Movement> standing,
        Set<String> good,
        Map<String, Long> minutes,
        Map<String, Paid.OfReel> paid,
        ThatDay then) {
    /** Reads the ledger of a shop that keeps one. */
    static Posted of(ShopNow now) {
        return now.at().reading(ledger -> ledger.read(stock -> of(now, stock)));
    }

    private static Posted of(ShopNow now, Ledger.Stock stock) {
        List<Movement> movements = stock.movements();
        List<Event> events = stock.events();
        return new Posted(
                movements,
                Standing.movements(movements),
                new CutPieces(stock).good().keySet(),
                minutes(events),
                Paid.of(stock),
                new WorthThen(now, movements, events));
    }

    private static Map<String, Long> minutes(List<Event> events) {
        Map<String, Long> minutes = new TreeMap<>();
        for (Event event : Standing.events(events)) {
            List<String> pieces = event.named("piece");
            if (!pieces.isEmpty() && !event.fact(FinishedPieces.MINUTES).isEmpty()) {
                long each = event.number(FinishedPieces.MINUTES) / pieces.size();
                pieces.forEach(piece -> minutes.merge(piece, each, Long::sum));
            }
        }
        return minutes;
    }

    /** Whether a piece of an order was ever written down. */
    boolean isNamed(String order) {
        return all.stream()
                .anyMatch(movement -> movement.entry().origin().piece().startsWith(order + "/"));
    }
}
