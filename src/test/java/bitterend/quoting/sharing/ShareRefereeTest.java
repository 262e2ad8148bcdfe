package bitterend.quoting.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import bitterend.demand.Piece;
import bitterend.packing.strategy.GreedyStrategy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** A linear programming library that shares nothing with our own checks the prices and the stable splits. */
final class ShareRefereeTest {
    /** Never so few that a kind of job which is asked for does not turn up. */
    private static final int JOBS = Math.max(20, Integer.getInteger("shops", 200) / 4);

    private static Job job(long seed) {
        SplittableRandom dice = new SplittableRandom(seed);
        Job job = Job.classical().opening(dice.nextInt(0, 3));
        for (int i = 0; i < dice.nextInt(1, 3); i++) {
            long length = dice.nextInt(8, 16);
            job.reel(length, length + dice.nextInt(0, 3));
        }
        for (int i = 0; i < 3; i++) {
            job.party("P" + i, dice.nextInt(2, 8), dice.nextInt(1, 5));
        }
        return job;
    }

    /** The greatest sum of prices over all loads, every load written down. */
    @Test
    void dualPrices_haveTheGreatestSum() {
        for (long seed = 0; seed < JOBS; seed++) {
            Job job = job(seed);
            NewRope rope = job.rope();
            Map<Long, Integer> demand = new HashMap<>();
            List<Piece> pieces = job.parties().stream()
                    .flatMap(party -> party.pieces().stream())
                    .toList();
            pieces.forEach(piece -> demand.merge(rope.taken(piece.cut()), 1, Integer::sum));
            DualPrices prices = DualProgram.solve(rope, pieces).orElseThrow();
            double ours = prices.of(new Party("", pieces)).doubleValue() / prices.scale();
            assertEquals(referee(rope, demand), ours, 1e-3, "seed " + seed);
        }
    }

    private static double referee(NewRope rope, Map<Long, Integer> demand) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        List<Long> taken = List.copyOf(demand.keySet());
        List<Variable> prices = new ArrayList<>();
        for (Long each : taken) {
            prices.add(model.newVariable("price " + each).lower(0).weight(demand.getOrDefault(each, 0)));
        }
        addLoads(model, rope, taken, demand, prices, new int[taken.size()], 0, 0);
        return model.maximise().getValue();
    }

    private static void addLoads(
            ExpressionsBasedModel model,
            NewRope rope,
            List<Long> taken,
            Map<Long, Integer> demand,
            List<Variable> prices,
            int[] counts,
            int next,
            long sum) {
        if (next == counts.length) {
            if (sum > 0) {
                Expression load =
                        model.newExpression("load " + Arrays.toString(counts)).upper(rope.cost(sum));
                for (int i = 0; i < counts.length; i++) {
                    load.set(prices.get(i), counts[i]);
                }
            }
            return;
        }
        long each = taken.get(next);
        for (int n = 0; n <= demand.getOrDefault(each, 0) && sum + n * each <= rope.room(); n++) {
            counts[next] = n;
            addLoads(model, rope, taken, demand, prices, counts, next + 1, sum + n * each);
        }
        counts[next] = 0;
    }

    @Test
    void stableSplit_existsWhereTheRefereeFindsOne() {
        int none = 0;
        for (long seed = 0; seed < JOBS; seed++) {
            Job job = job(seed);
            RopeShares shared = job.shared(new GreedyStrategy());
            ExpressionsBasedModel model = new ExpressionsBasedModel();
            List<Variable> shares = new ArrayList<>();
            job.parties().forEach(party -> shares.add(model.newVariable(party.name())));
            for (int members = 1; members < 8; members++) {
                Group group = new Group(members);
                long cost = members == 7
                        ? shared.cost().millis()
                        : job.alone(new GreedyStrategy(), group.places().toArray())
                                .found();
                Expression paid = model.newExpression("group " + members).upper(cost);
                group.places().forEach(place -> paid.set(shares.get(place), 1));
                if (members == 7) {
                    paid.lower(cost);
                }
            }
            Optimisation.State state = model.minimise().getState();
            boolean exists = shared.stability() instanceof Stability.Stable;
            none += exists ? 0 : 1;
            assertEquals(state.isFeasible(), exists, "seed " + seed + ": " + state + ", " + shared.stability());
        }
        assertNotEquals(0, none);
        assertNotEquals(JOBS, none);
    }
}
