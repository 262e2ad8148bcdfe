package bitterend.packing.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelSketch;
import bitterend.packing.Sketch;
import bitterend.shops.PlanWriter;
import bitterend.stock.worth.CoilTerms;
import bitterend.stock.worth.CoilValue;
import bitterend.stock.worth.PastCuts;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** The checker works out what coils are worth by code of its own; whatever is wrong with a curve is found. */
final class CurveCheckTest {
    private static final CoilTerms TERMS = CoilTerms.of(
            new UnitPrice(310_000),
            Length.ofMetres(200),
            Length.ofMetres(200),
            new CoilTerms.Holding(Ratio.percent(12), new Cost(10_000), Length.ofMetres(1)));

    @Test
    void curve_isConfirmedOnRandomRopes() {
        Random random = new Random(11);
        for (int rope = 0; rope < 30; rope++) {
            assertEquals(List.of(), faults(value(random)));
        }
    }

    @Test
    void plantedStep_isFound() {
        for (int step : new int[] {300, 1_000, 2_000}) {
            int raisedFrom = step;
            CoilValue planted = planted(value(new Random(5)), steps -> {
                for (int i = raisedFrom; i < steps.length; i++) {
                    steps[i] += 2;
                }
                return steps;
            });
            assertEquals(List.of(Check.CURVE), faults(planted));
        }
    }

    @Test
    void plantedRack_isFound() {
        CoilValue sound = value(new Random(5));
        CoilValue planted =
                new CoilValue(sound.past(), TERMS, sound.own(), sound.rack().plus(new Length(1_000)), sound.steps());
        assertEquals(List.of(Check.CURVE), faults(planted));
    }

    @Test
    void plantedOwnPrice_isFoundEvenWhereTheCurveFollowsFromIt() {
        CoilValue sound = value(new Random(5));
        for (long off : new long[] {-1_000, 1_000}) {
            UnitPrice own = new UnitPrice(sound.own().millisPerMetre() + off);
            CurveFormula formula = new CurveFormula(sound.past(), TERMS);
            double[] worth = formula.worth((double) own.millisPerMetre(), sound.rack());
            long[] steps = new long[worth.length];
            for (int i = 0; i < steps.length; i++) {
                steps[i] = (long) worth[i];
            }
            assertEquals(
                    List.of(Check.CURVE),
                    faults(new CoilValue(sound.past(), TERMS, own, sound.rack(), steps)),
                    "" + off);
        }
    }

    @Test
    void curveThatCountsNoHolding_isRefused() {
        CoilTerms free = CoilTerms.of(
                TERMS.price(), TERMS.reel(), TERMS.reel(), new CoilTerms.Holding(Ratio.ZERO, Cost.ZERO, Length.ZERO));
        assertEquals(List.of(Check.CURVE), faults(CoilValue.of(past(new Random(5)), free, Length.ZERO)));
    }

    private static CoilValue planted(CoilValue sound, UnaryOperator<long[]> fault) {
        return new CoilValue(sound.past(), TERMS, sound.own(), sound.rack(), fault.apply(sound.steps()));
    }

    private static CoilValue value(Random random) {
        return CoilValue.of(past(random), TERMS, new Length(random.nextInt(400_000)));
    }

    private static PastCuts past(Random random) {
        List<Length> cuts = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            cuts.add(new Length(1_000 + random.nextInt(40_000)));
        }
        return PastCuts.of(cuts, new Length(10), 4 + random.nextInt(20), PastCuts.Source.HISTORY);
    }

    private static List<Check> faults(CoilValue value) {
        PackingProblem problem =
                new Sketch().value(value).with(ReelSketch.reel("A", 20_000)).problem();
        return PlanChecker.check(problem, PlanWriter.write(problem, Packing.EMPTY)).stream()
                .map(Fault::check)
                .toList();
    }
}
