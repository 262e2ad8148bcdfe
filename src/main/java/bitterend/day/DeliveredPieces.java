package bitterend.day;

import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which cut pieces have gone out: they are no spare pieces, whatever becomes of their order in the order book. */
public final class DeliveredPieces {
    private DeliveredPieces() {}

    /** Their ids. */
    public static Set<String> of(Ledger.Stock stock) {
        Map<String, Movement> cuts = new CutPieces(stock).cuts();
        Set<String> delivered = new HashSet<>();
        stock.standing(Event.Kind.DELIVERED).forEach(event -> delivered.addAll(ofThisCut(event, cuts)));
        return delivered;
    }

    /** The pieces of an event that were not cut again since. */
    static List<String> ofThisCut(Event event, Map<String, Movement> cuts) {
        return event.named("piece").stream()
                .filter(piece -> {
                    Movement cut = cuts.get(piece);
                    return cut != null && cut.event() < event.number();
                })
                .toList();
    }
}
