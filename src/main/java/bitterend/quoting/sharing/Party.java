package bitterend.quoting.sharing;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import java.util.List;

/**
 * Who shares in a cost: a line of a request, an order of the day.
 *
 * @param name as printed
 * @param pieces what is cut for it
 */
public record Party(String name, List<Piece> pieces) {
    public Party {
        pieces = List.copyOf(pieces);
    }

    /** The cut lengths of its pieces together, on the rope as ordered. */
    public Length cut() {
        return pieces.stream().map(Piece::cut).reduce(Length.ZERO, Length::plus);
    }
}
