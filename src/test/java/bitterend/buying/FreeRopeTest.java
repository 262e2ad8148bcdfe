package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.buying.reorder.Positions;
import bitterend.demand.Piece;
import bitterend.market.OnOrder;
import bitterend.measure.Length;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class FreeRopeTest {
    /** 30 m are booked by order A. */
    private static final List<Piece> OPEN = List.of(Stall.piece("A", "1.1", 30, LocalDate.MAX));

    /** What lasts by {@code buy} and what is left by {@code reorder} begin with the same rope. */
    @Test
    void rackIsCountedAlike_whoeverAsks() {
        List<Reel> rack = List.of(
                Stall.reel("FREE", 50),
                Stall.reel("SCRAP", 2),
                Stall.reel("OF-A", 100).withCustody(Reel.Custody.FREE.reservedFor("A")),
                Stall.reel("OF-A-TOO", 100).withCustody(Reel.Custody.FREE.reservedFor("A")),
                Stall.reel("OF-B", 100).withCustody(Reel.Custody.FREE.reservedFor("B")),
                Stall.reel("HELD", 70).withCustody(Reel.Custody.FREE.onHold()));
        Length free = new FreeRope(rack, OPEN, Stall.DAY).of(Stall.rope());
        assertEquals(Length.ofMetres(80), free, "50 m, and of what is kept for A what A has booked");
        Orders orders = Stall.orders(OPEN, rack, StockValue.NOTHING, List.of(Stall.offer("X", 100, 1)));
        assertEquals(
                free,
                new Covers(orders, Map.of())
                        .of(ReelSet.EMPTY.with("X", 1))
                        .get(0)
                        .free());
        List<OnOrder> none = List.of();
        assertEquals(
                free,
                new Positions(rack, OPEN, none, Stall.late(0), Stall.DAY)
                        .of(Stall.rope())
                        .free());
    }
}
