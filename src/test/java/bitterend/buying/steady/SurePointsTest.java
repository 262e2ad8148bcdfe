package bitterend.buying.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.buying.Study;
import bitterend.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** From where to where a reorder point may be. */
final class SurePointsTest {
    private static final int HISTORIES = Integer.getInteger("coverHistories", 40);
    private static final int DAYS = 10;
    private static final int[] SHARES = {500, 800, 950, 995};

    /** Histories of a year are drawn from a process that is known; the truth is what covers as many futures by 60 years of it. */
    @Test
    void interval_coversThePointOfTheProcess() {
        SteadyStudy truth = study(Orders.past(987, 60 * 52, week -> 2));
        long[] uses = ReorderPoint.uses(truth.demand().asRecorded(), draw(truth), 20_000);
        for (int share : SHARES) {
            int covered = 0;
            for (int history = 0; history < HISTORIES; history++) {
                SteadyStudy study = study(Orders.past(history, 52, week -> 2));
                Figure point = new SurePoints(study).of(rule(study, at(study, share)));
                assertTrue(point.known() && point.low() < point.value() && point.value() < point.high());
                long asked = uses[uses.length * share / 1000];
                covered += point.low() <= asked && asked <= point.high() ? 1 : 0;
            }
            assertTrue(covered * 100 >= HISTORIES * 85, share + ": " + covered + " of " + HISTORIES);
        }
    }

    /** Where every week is alike there is nothing to doubt, beyond the whole metre. */
    @Test
    void alikeWeeks_leaveNoDoubt() {
        SteadyStudy study = study(Orders.level(52, 30));
        Figure point = new SurePoints(study).of(rule(study, 120_000));
        assertEquals(new Figure(120_000, 120_000, 120_000, true), point);
    }

    /** The further back the past goes, the surer the point. */
    @Test
    void longerPast_isSurer() {
        SteadyStudy year = study(Orders.past(3, 52, week -> 2));
        SteadyStudy years = study(Orders.past(3, 260, week -> 2));
        Figure one = new SurePoints(year).of(rule(year, at(year, 950)));
        Figure five = new SurePoints(years).of(rule(years, at(years, 950)));
        assertTrue(five.high() * one.value() < one.high() * five.value(), five + " against " + one);
    }

    private static long at(SteadyStudy study, int share) {
        long[] uses = ReorderPoint.uses(study.demand().asRecorded(), draw(study), 2_000);
        return uses[uses.length * share / 1000];
    }

    private static ReorderPoint.Draw draw(SteadyStudy study) {
        return new ReorderPoint.Draw(
                study.rope().cutting().loss(),
                study.sizes().get(0).lead(),
                ReorderPoint.ANY_PLACE,
                study.size().seed());
    }

    private static Way.Rule rule(SteadyStudy study, long point) {
        return new Way.Rule(study.sizes().get(0), new Length(point), 1);
    }

    private static SteadyStudy study(PastWeeks past) {
        return SteadyStall.study(past, List.of(SteadyStall.offer("200", 200, 62_000, DAYS)), new Study.Size(3, 16, 52));
    }
}
