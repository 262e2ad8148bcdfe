package bitterend.day;

import bitterend.day.PieceStatus.State;
import java.time.LocalDate;
import java.util.List;

/**
 * How far an order has come.
 *
 * @param order its number
 * @param customer who ordered it; empty when not stated
 * @param due the first day on which a piece of it is wanted that is not delivered, else the last day of all;
 *     {@link LocalDate#MAX} when none was given
 * @param pieces its pieces, by line
 * @param spares spare pieces that were cut for it
 */
public record OrderStatus(
        String order, String customer, LocalDate due, List<PieceStatus> pieces, List<SparePiece> spares) {
    public OrderStatus {
        pieces = List.copyOf(pieces);
        spares = List.copyOf(spares);
    }

    /** How many of its pieces are just as far. */
    public long count(State state) {
        return pieces.stream().filter(piece -> piece.is(state)).count();
    }

    /** Whether all of it is delivered. */
    public boolean isDone() {
        return pieces.stream().allMatch(piece -> piece.is(State.DELIVERED));
    }

    /** Whether it should have been delivered before this day. */
    public boolean isOverdue(LocalDate day) {
        return !isDone() && due.isBefore(day);
    }
}
