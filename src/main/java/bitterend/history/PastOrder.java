package bitterend.history;

import bitterend.demand.Piece;
import java.time.LocalDate;
import java.util.List;

/**
 * An order of the past, whole: its pieces were wanted together and are drawn together.
 *
 * @param order order number
 * @param day the day it was placed
 * @param pieces what was cut for it, by id
 */
public record PastOrder(String order, LocalDate day, List<Piece> pieces) {
    public PastOrder {
        pieces = List.copyOf(pieces);
    }
}
