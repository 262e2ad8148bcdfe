package bitterend.packing.check;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.packing.Cut;
import bitterend.packing.CutDays;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.GreedyStrategy;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import bitterend.stock.Reel;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * By the checker's own count of days no reel is promised for a day after its last one, or after the last of a piece on it.
 * {@code -Dshops=N} sets how many shops.
 */
final class CutInTimeTest {
    /** Never so few that hardly any is promised. */
    private static final long SHOPS = Math.max(20, Long.getLong("shops", 200));

    @Test
    void promises_areCutInTime() {
        int promised = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = dated(seed);
            CutPlan plan = new DayPlanner(new GreedyStrategy()).plan(shop, Effort.of(Duration.ofSeconds(1)));
            CutDays days = new CutDays(shop);
            LastDay own = new LastDay(shop.calendar());
            Map<String, Piece> pieces = shop.pieces().stream().collect(Collectors.toMap(Piece::id, piece -> piece));
            for (ReelDraw draw : plan.draws()) {
                LocalDate day = days.of(draw);
                String told = "shop " + seed + ": " + draw.reel() + " on " + day;
                boolean later = day.isAfter(shop.day());
                assertTrue(!later || own.isWorking(day), told);
                assertFalse(day.isBefore(shop.day()), told);
                assertFalse(shop.reel(draw.reel()).papers().useBy().isBefore(day), told);
                for (Cut cut : draw.cuts()) {
                    LocalDate last = own.of(Objects.requireNonNull(pieces.get(cut.piece())));
                    assertFalse(later && last.isBefore(day), told + ", " + cut.piece() + " by " + last);
                }
                promised += later ? 1 : 0;
            }
        }
        assertTrue(promised > SHOPS / 2, "hardly any promise: " + promised);
    }

    /** A random shop whose reels are to be used by some day of the next two weeks. */
    private static PackingProblem dated(long seed) {
        PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
        Random random = new Random(seed);
        List<Reel> reels = new ArrayList<>();
        for (Reel reel : shop.reels()) {
            Reel.Papers papers = reel.papers();
            LocalDate useBy = shop.day().plusDays(random.nextInt(14) - 1);
            reels.add(new Reel(
                    reel.id(),
                    reel.rope(),
                    reel.lot(),
                    reel.contents(),
                    reel.flaws(),
                    new Reel.Papers(papers.certificate(), papers.number(), useBy, papers.received()),
                    reel.custody(),
                    reel.full(),
                    reel.where()));
        }
        return shop.withRack(shop.ropes(), shop.values(), reels);
    }
}
