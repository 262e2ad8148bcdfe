package bitterend.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.bench.WeekRope.Ordered;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A shop that lives from day to day: what is cut when, what waits, what comes. */
final class WeekShopTest {
    private static final WeekRope ROPE =
            new WeekRope("1-any", 100, new UnitPrice(310_000), Length.ofMetres(5), Length.ofMetres(40), 0, 500, 3);

    private static WeekShop shop(int reels) {
        return new WeekShop(
                ROPE,
                ROPE.orders(1, 520),
                104,
                new WeekRack(ROPE, new WeekRack.Supply(reels, 5, 0), 1),
                new WeekShop.Planning(50, true, 0));
    }

    private static Ordered piece(int number, int cutBy, int metres) {
        return new Ordered(number, 0, cutBy, Length.ofMetres(metres), false);
    }

    @Test
    void dayByDay_cutsWhatMustBeCut() {
        WeekShop shop = shop(3);
        shop.day(0, List.of(piece(0, 0, 30), piece(1, 1, 30)), WeekPolicy.DAY_BY_DAY);
        assertEquals(List.of(new Length(69_990)), shop.rack().coils());
        shop.day(1, List.of(), WeekPolicy.DAY_BY_DAY);
        assertEquals(2, shop.rack().count().fetches);
    }

    @Test
    void lookingAhead_cutsWhatSharesAReelWithToday() {
        WeekShop shop = shop(3);
        shop.day(0, List.of(piece(0, 0, 30), piece(1, 1, 30)), WeekPolicy.looking(5, 4));
        assertEquals(List.of(new Length(39_980)), shop.rack().coils());
        shop.day(1, List.of(), WeekPolicy.looking(5, 4));
        assertEquals(1, shop.rack().count().fetches);
    }

    @Test
    void whatMustBeCutLater_isAPromiseAndNotCut() {
        WeekShop shop = shop(3);
        shop.day(0, List.of(piece(0, 2, 30)), WeekPolicy.looking(5, 4));
        assertEquals(0, shop.rack().count().fetches);
    }

    @Test
    void pieceWithoutRope_isLateOnceUntilTheReelComes() {
        WeekShop shop = shop(1);
        shop.day(0, List.of(piece(0, 0, 60), piece(1, 0, 60)), WeekPolicy.DAY_BY_DAY);
        for (int day = 1; day < 6; day++) {
            shop.day(day, List.of(), WeekPolicy.DAY_BY_DAY);
        }
        assertEquals(1, shop.rack().count().late);
        assertEquals(5, shop.rack().count().lateDays);
        assertEquals(2, shop.rack().count().fetches);
    }

    @Test
    void orders_areTheSameForADrawAndAFifthIsRush() {
        assertEquals(ROPE.orders(3, 100), ROPE.orders(3, 100));
        List<Ordered> many = ROPE.orders(3, 5_000);
        long rush = many.stream().filter(Ordered::rush).count();
        assertTrue(Math.abs(rush - many.size() / 5) < many.size() / 20, rush + " of " + many.size());
        assertTrue(many.stream().allMatch(each -> each.cutBy() - each.placed() <= (each.rush() ? 1 : 10)));
    }
}
