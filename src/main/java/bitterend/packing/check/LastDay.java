package bitterend.packing.check;

import bitterend.demand.Piece;
import bitterend.packing.ShopCalendar;
import java.time.LocalDate;

/**
 * The last day on which a piece may be cut, by the checker's own count: its due day, one working day earlier for each of
 * finishing; where nobody works then, the day before.
 */
record LastDay(ShopCalendar calendar) {
    LocalDate of(Piece piece) {
        LocalDate date = piece.source().due();
        int left = date.equals(LocalDate.MAX) ? 0 : piece.source().finishing();
        while (left > 0) {
            date = date.minusDays(1);
            left -= isWorking(date) ? 1 : 0;
        }
        while (!date.equals(LocalDate.MAX) && !isWorking(date)) {
            date = date.minusDays(1);
        }
        return date;
    }

    boolean isWorking(LocalDate date) {
        return date.getDayOfWeek().getValue() <= 5 && !calendar.closed().contains(date);
    }
}
