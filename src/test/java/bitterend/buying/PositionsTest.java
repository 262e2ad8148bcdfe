package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.buying.reorder.Position;
import bitterend.buying.reorder.Positions;
import bitterend.demand.Piece;
import bitterend.market.Offer;
import bitterend.market.OnOrder;
import bitterend.measure.Length;
import bitterend.measure.Money;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** From which day on more of a rope is booked than there is and comes by then. */
final class PositionsTest {
    private static final LocalDate LATER = Stall.DAY.plusDays(9);

    private static OnOrder onOrder(String rope, LocalDate expected) {
        return new OnOrder("P-1", "", rope, Offer.Made.plain(Length.ofMetres(50)), 1, 0, expected, new Money(5));
    }

    private static Position of(List<Piece> open, OnOrder... onOrder) {
        return new Positions(List.of(Stall.reel("W", 100)), open, List.of(onOrder), Stall.late(0), Stall.DAY)
                .of(Stall.rope());
    }

    private static Piece piece(String number, long metres, LocalDate due) {
        return Stall.piece("A", number, metres, due);
    }

    @Test
    void rope_isShortFromTheFirstDayThatTakesMoreThanThereIs() {
        Piece first = piece("1.1", 60, Stall.DAY);
        assertEquals(LocalDate.MAX, of(List.of(first, piece("2.1", 40, LATER))).shortFrom(), "to the last metre");
        assertEquals(LATER, of(List.of(piece("2.1", 41, LATER), first)).shortFrom());
        assertEquals(Stall.DAY, of(List.of(piece("1.1", 101, Stall.DAY))).shortFrom());
    }

    /** Fifty metres that come on the day itself are there for it; a day later they are not. */
    @Test
    void ropeThatComesByTheDay_isCountedOn() {
        List<Piece> open = List.of(piece("1.1", 150, LATER));
        assertEquals(LocalDate.MAX, of(open, onOrder(Stall.ROPE, LATER)).shortFrom());
        assertEquals(LATER, of(open, onOrder(Stall.ROPE, LATER.plusDays(1))).shortFrom());
        assertEquals(LATER, of(open, onOrder("OTHER", LATER)).shortFrom(), "another rope");
        assertEquals(List.of(), of(open, onOrder("OTHER", LATER)).coming());
        assertEquals(Length.ofMetres(50), of(open, onOrder(Stall.ROPE, LATER)).comingBy(LATER));
        assertEquals(Length.ofMetres(150), of(open).longest());
    }
}
