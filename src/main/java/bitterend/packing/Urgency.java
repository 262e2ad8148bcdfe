package bitterend.packing;

import bitterend.demand.Piece;
import java.time.LocalDate;

/** How much it matters that a piece is planned, as a whole number. */
public final class Urgency {
    private Urgency() {}

    /**
     * 10 less the priority, four times that for what is due by the day itself, twice that for what is due within a week.
     * Always positive.
     */
    public static long weight(Piece piece, LocalDate day) {
        LocalDate due = piece.source().due();
        int haste = !due.isAfter(day) ? 4 : !due.isAfter(day.plusDays(7)) ? 2 : 1;
        return (10L - piece.source().priority()) * haste;
    }
}
