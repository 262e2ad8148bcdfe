package bitterend.day;

import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Standing;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** Which pieces are cut: the last movement of the piece that stands cut it, and did not spoil it. */
public final class CutPieces {
    private final Map<String, Movement> cuts = new TreeMap<>();

    public CutPieces(Ledger.Stock stock) {
        for (Movement movement : Standing.movements(stock.ofPieces())) {
            String piece = movement.entry().origin().piece();
            if (movement.entry().kind() == Kind.CUT) {
                cuts.put(piece, movement);
            } else if (movement.entry().kind() == Kind.SPOILED) {
                cuts.remove(piece);
            }
        }
    }

    /** The movement that cut it, by piece id. */
    public Map<String, Movement> cuts() {
        return Collections.unmodifiableMap(cuts);
    }
}
