package bitterend.day;

import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Origin;
import bitterend.stock.Standing;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** Which pieces are cut and wanted, and which are spare: what the last movement of the piece that stands says. */
public final class CutPieces {
    private final Map<String, Movement> cuts = new TreeMap<>();
    private final Map<String, Movement> spares = new TreeMap<>();

    public CutPieces(Ledger.Stock stock) {
        for (Movement movement : Standing.movements(stock.ofPieces())) {
            add(movement);
        }
    }

    private void add(Movement movement) {
        String piece = movement.entry().origin().piece();
        switch (movement.entry().kind()) {
            case CUT -> cuts.put(piece, movement);
            case CUT_SHORT -> spares.put(movement.entry().origin().was(), movement);
            case SPOILED -> cuts.remove(piece);
            case MADE_SPARE -> {
                cuts.remove(piece);
                spares.put(piece, movement);
            }
            case GIVEN -> {
                spares.remove(movement.entry().origin().was());
                cuts.put(piece, movement);
            }
            case BACK_ON_RACK -> spares.remove(piece);
            default -> {}
        }
    }

    /** The movement that cut it or gave it, by piece id. */
    public Map<String, Movement> cuts() {
        return Collections.unmodifiableMap(cuts);
    }

    /**
     * The origin of a cut that came out too short: the piece is open again, what is in the hand is a spare piece of a name
     * of its own.
     */
    static Origin shortOf(Ledger.Stock stock, Origin cut) {
        long event = stock.head().event() + 1;
        return new Origin("", cut.plan(), cut.step(), cut.piece(), cut.piece() + " short " + event, 0);
    }

    /** The movement that made it spare, of every spare piece, by its name: the id it was cut under, or one of its own. */
    public Map<String, Movement> spares() {
        return Collections.unmodifiableMap(spares);
    }
}
