package bitterend.day;

import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The matched sets of which some pieces are cut, and what those came off. A set that was released is begun anew. */
public final class BegunSets {
    private final RackToday rack;
    private final Map<String, List<CutMate>> mates = new HashMap<>();

    /** @param ordered every piece that is ordered, those that are cut included */
    public BegunSets(List<Piece> ordered, RackToday rack) {
        this.rack = rack;
        for (Piece piece : ordered) {
            Movement cut = rack.cut().get(piece.id());
            if (piece.isMatched()
                    && cut != null
                    && !rack.isReleased(piece.matching().set(), cut)) {
                mates.computeIfAbsent(piece.matching().set(), set -> new ArrayList<>())
                        .add(mate(piece, rack.today(cut.entry().after())));
            }
        }
    }

    private CutMate mate(Piece piece, Reel reel) {
        return new CutMate(piece.id(), reel.rope(), reel.lot(), rack.sameReel(reel.id()));
    }

    /** The piece as it is bound to the cut pieces of its set. */
    public Piece bound(Piece piece) {
        String set = piece.matching().set();
        List<CutMate> cut = mates.getOrDefault(set, List.of());
        String released = piece.isMatched() ? rack.released(set) : "";
        return cut.isEmpty() && released.isEmpty() ? piece : piece.begunWith(cut, released);
    }
}
