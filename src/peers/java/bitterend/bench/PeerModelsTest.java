package bitterend.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.bench.peers.AssignmentModel;
import bitterend.bench.peers.CostLines;
import bitterend.bench.peers.GeneralSolver;
import bitterend.bench.peers.ReflectModel;
import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.PlanPrice;
import bitterend.packing.Prices;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.strategy.PeerDay;
import bitterend.shops.BruteForce;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every model of every solver comes to the optimum of shops so small that every way to cut them is tried. */
final class PeerModelsTest {
    private static final int SHOPS = Math.min(40, Integer.getInteger("shops", 200));
    /** Where a process is begun for each. */
    private static final int FEW = Math.max(3, SHOPS / 8);

    /** Beyond so many arcs a tiny shop takes seconds. */
    private static final int MOST_ARCS = 4_000;

    private static final double SECONDS = 20;
    /** A few runs priced by lines in place of curves, and the tolerance of floating point. */
    private static final long NEARLY = 4 * CostLines.TOLERANCE + 200;

    @ParameterizedTest
    @EnumSource(PeerWay.Shape.class)
    void clauseLearning_findsTheOptimum(PeerWay.Shape shape) {
        findsTheOptimum(new PeerWay(GeneralSolver.CP_SAT, shape), SHOPS);
    }

    @ParameterizedTest
    @EnumSource(PeerWay.Shape.class)
    void branchAndCut_findsTheOptimum(PeerWay.Shape shape) {
        findsTheOptimum(new PeerWay(GeneralSolver.MIP, shape), FEW);
    }

    @Test
    void assignment_startsFromAPlanThatKeepsAllItsLimitsAtThePlansPrice() {
        for (long seed = 1; seed <= SHOPS; seed++) {
            PackingProblem shop = plain(RandomShop.of(seed, ShopSize.SMALL));
            Packing greedy = new GreedyPacker(shop).best();
            PlanPrice prices = new PlanPrice(shop);
            if (prices.undone(greedy).isNone()) {
                PeerDay day = new PeerDay(shop);
                AssignmentModel model = new AssignmentModel(day.patterns()).from(day.draws(greedy));
                assertTrue(model.program().holds(model.start()), "seed " + seed);
                long over = prices.of(greedy).millis() - model.program().cost(model.start());
                long runs = greedy.places().values().stream().distinct().count();
                assertTrue(over >= 0 && over <= CostLines.TOLERANCE * runs, "seed " + seed + ": " + over);
            }
        }
    }

    private static void findsTheOptimum(PeerWay way, int shops) {
        int found = 0;
        for (long seed = 1; found < shops; seed++) {
            PackingProblem shop = plain(RandomShop.of(seed, ShopSize.TINY));
            BruteForce.Best optimum = BruteForce.best(shop);
            boolean greedyCutsAll =
                    new PlanPrice(shop).undone(new GreedyPacker(shop).best()).isNone();
            boolean large = way.shape() == PeerWay.Shape.ARCS && isLarge(shop);
            if (!optimum.undone().isNone()
                    || !greedyCutsAll
                    || optimum.packing().equals(Packing.EMPTY)
                    || large) {
                continue;
            }
            PeerTrial trial = new PeerTrial(shop, SECONDS, 1, seed);
            trial.run(way);
            PeerTrial.Tried tried = trial.tried().values().iterator().next();
            String at = way.title() + ", seed " + seed + ": " + tried + " for " + optimum;
            assertTrue(tried.planned() && !tried.refused() && !tried.differs(), at);
            assertTrue(tried.bound().millis() <= optimum.cost().millis(), at);
            boolean whole = way.shape() != PeerWay.Shape.COLUMNS;
            if (whole) {
                long over = tried.cost().minus(optimum.cost()).millis();
                assertTrue(over >= 0 && over < NEARLY, at);
                assertTrue(optimum.cost().minus(tried.bound()).millis() < NEARLY, at);
            }
            found++;
        }
        assertEquals(shops, found);
    }

    private static boolean isLarge(PackingProblem shop) {
        return ReflectModel.of(new PeerDay(shop).patterns(), MOST_ARCS).isEmpty();
    }

    /** The same shop without what no general model is given: sets, lots and an earlier plan that cost something. */
    private static PackingProblem plain(PackingProblem shop) {
        List<Piece> pieces = shop.pieces().stream()
                .map(piece -> new Piece(
                        piece.pieceId(),
                        piece.source(),
                        piece.choices(),
                        Piece.Matching.NONE,
                        piece.certificate(),
                        piece.ownRope(),
                        piece.finished(),
                        piece.ends()))
                .toList();
        Prices prices = shop.prices();
        Prices plain = new Prices(
                prices.opening(), prices.changing(), prices.handling(), Cost.ZERO, Cost.ZERO, prices.ageCredit());
        return new PackingProblem(
                shop.day(), shop.ropes(), pieces, shop.reels(), shop.values(), plain, List.<Pin>of(), Map.of());
    }
}
