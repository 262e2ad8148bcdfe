package bitterend.day;

import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Origin;
import bitterend.stock.PieceAccount;
import bitterend.stock.PieceAccount.Made;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Which pieces are cut and wanted, and which are spare, as the ledger has it. */
public final class CutPieces {
    private final Map<String, Movement> cuts = new TreeMap<>();
    private final Map<String, Made> good;
    private final Map<String, Made> spares;

    public CutPieces(Ledger.Stock stock) {
        PieceAccount account = PieceAccount.of(stock.ofPieces());
        good = account.good();
        spares = account.spare();
        good.forEach((id, made) -> cuts.put(id, made.made()));
    }

    /** The movement that cut it or gave it, by piece id. */
    public Map<String, Movement> cuts() {
        return Collections.unmodifiableMap(cuts);
    }

    /** Every good piece with the movement that cut its rope, by id. */
    public Map<String, Made> good() {
        return Collections.unmodifiableMap(good);
    }

    /** Every spare piece with the movements that made it and cut it, by the name of its own. */
    public Map<String, Made> spares() {
        return Collections.unmodifiableMap(spares);
    }

    /**
     * The name of a spare piece, however a person names it: by its own name, or by the id it was cut under where only one
     * spare piece was cut under that.
     */
    public String named(String words) {
        List<String> names = spares.entrySet().stream()
                .filter(entry -> entry.getValue().piece().equals(words))
                .map(Map.Entry::getKey)
                .toList();
        if (spares.containsKey(words) || names.isEmpty()) {
            return words;
        }
        if (names.size() > 1) {
            throw new LedgerException.Refused("there are " + names.size() + " spare pieces of " + words
                    + "; say which: '" + String.join("', '", names) + "'");
        }
        return names.get(0);
    }

    /**
     * The origin of a cut that came out too short: the piece is open again, what is in the hand is a spare piece of a name
     * of its own.
     */
    static Origin shortOf(Ledger.Stock stock, Origin cut) {
        long event = stock.head().event() + 1;
        return new Origin("", cut.plan(), cut.step(), cut.piece(), cut.piece() + " short " + event, 0);
    }

    /** The origin of a cut that makes nothing that is ordered: what is in the hand is a spare piece of a name of its own. */
    static Origin spareAtOnce(Ledger.Stock stock, Origin cut) {
        long event = stock.head().event() + 1;
        return new Origin("", cut.plan(), cut.step(), cut.piece(), PieceAccount.spareName(cut.piece(), event), 0);
    }

    /** The origin of a good piece that becomes spare, under a name of its own. */
    public static Origin spareOf(Ledger.Stock stock, String plan, String piece) {
        return new Origin(
                "", plan, "", piece, PieceAccount.spareName(piece, stock.head().event() + 1), 0);
    }
}
