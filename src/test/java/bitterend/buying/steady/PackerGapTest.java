package bitterend.buying.steady;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.buying.steady.WeekPackerTest.Weekly;
import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Prices;
import bitterend.packing.RunLoad;
import bitterend.packing.strategy.StudyStrategy;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The quick packer against the engine that packed the weeks of older studies, on random weeks. */
final class PackerGapTest {
    private static final String ROPE = SteadyStall.rope().id();

    @Test
    void quickPacker_costsLittleMoreThanTheEngine() {
        long ours = 0;
        long engine = 0;
        long rope = 0;
        int weeks = 30;
        for (int seed = 0; seed < weeks; seed++) {
            Weekly week = Weekly.random(1_000 + seed, 16, 6);
            Weekly plenty = new Weekly(week.coils(), 8, week.pieces(), week.worth());
            ours += plenty.packed().total();
            engine += engine(plenty);
            for (int piece : week.pieces()) {
                rope += WeekPackerTest.PRICE.of(new Length(piece)).millis();
            }
        }
        long perMillion = (ours - engine) * 1_000_000 / rope;
        assertTrue(perMillion < 3_500, perMillion + " millionths of the rope");
    }

    private static long engine(Weekly week) {
        StockValue worth = new StockValue() {
            @Override
            public Cost of(Length length) {
                return new Cost(week.worth().of((int) length.mm()));
            }

            @Override
            public Cost unopened(Length length) {
                Cost price = WeekPackerTest.PRICE.of(length);
                return price.compareTo(of(length)) > 0 ? price : of(length);
            }
        };
        Rope rope = SteadyStall.rope();
        List<Reel> reels = new ArrayList<>();
        for (int coil : week.coils()) {
            reels.add(reel("coil " + reels.size(), coil, false));
        }
        for (int i = 0; i < week.reels(); i++) {
            reels.add(reel("reel " + i, WeekPackerTest.REEL, true));
        }
        List<Piece> pieces = new ArrayList<>();
        for (int each : week.pieces()) {
            Length length = new Length(each);
            pieces.add(new Piece(
                    "piece " + pieces.size(),
                    new Piece.Source("week", "1", LocalDate.MAX, 5),
                    List.of(new Piece.RopeChoice(ROPE, length)),
                    Piece.Matching.NONE,
                    "",
                    false,
                    length,
                    ""));
        }
        Prices prices = new Prices(
                new Cost(WeekPackerTest.OPENING),
                new Cost(WeekPackerTest.CHANGING),
                Cost.ZERO,
                Cost.ZERO,
                Cost.ZERO,
                Cost.ZERO);
        PackingProblem problem = new PackingProblem(
                LocalDate.EPOCH, Map.of(ROPE, rope), pieces, reels, Map.of(ROPE, worth), prices, List.of(), Map.of());
        Effort effort = new Effort(Duration.ofDays(1), 100_000, 1, 1, () -> false, progress -> {});
        Map<String, RunLoad[]> loads = new PlanPrice(problem)
                .loads(new StudyStrategy().pack(problem, effort).packing());
        long cost = 0;
        for (Reel reel : reels) {
            RunLoad[] load = loads.get(reel.id());
            if (load != null) {
                Length left = load[0].leftOf(reel.length(), rope.cutting().loss());
                Cost whole = reel.full() ? worth.unopened(reel.length()) : worth.of(reel.length());
                cost += whole.minus(worth.of(left)).millis()
                        + WeekPackerTest.CHANGING
                        + (reel.full() ? WeekPackerTest.OPENING : 0);
            }
        }
        return cost;
    }

    private static Reel reel(String id, int mm, boolean full) {
        return new Reel(
                id,
                ROPE,
                "",
                new Reel.Contents(new Length(mm), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(),
                Reel.Papers.NONE,
                Reel.Custody.FREE,
                full,
                Reel.Where.UNKNOWN);
    }
}
