package bitterend.buying.steady;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.buying.Share;
import bitterend.buying.Study;
import bitterend.market.Offer;
import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * Whether intervals cover what they say: histories are drawn from a process that is known, each is studied, and it is counted how
 * often the truth, from a history of 60 years, is inside.
 */
final class IntervalCoverTest {
    private static final int HISTORIES = Integer.getInteger("coverHistories", 40);
    private static final int TRUE_WEEKS = 60 * 52;
    private static final List<Offer> OFFERS =
            List.of(SteadyStall.offer("100", 100, 33_500, 10), SteadyStall.offer("200", 200, 62_000, 10));

    @Test
    void intervals_coverTheTruth_ofAYearAlikeAllTheYear() {
        covers(week -> 2, 52, DemandShape.LEVEL);
    }

    @Test
    void intervals_coverTheTruth_ofTwoYearsWithASeason() {
        covers(Orders.seasonal(2), 104, new DemandShape(true, 1000));
    }

    private static void covers(IntToDoubleFunction mean, int weeks, DemandShape shape) {
        Map<String, Figure> truth = figures(Orders.past(987, TRUE_WEEKS, mean), shape, 400);
        Map<String, Integer> covered = new LinkedHashMap<>();
        for (int history = 0; history < HISTORIES; history++) {
            figures(Orders.past(history, weeks, mean), shape, 200).forEach((name, figure) -> {
                long value = java.util.Objects.requireNonNull(truth.get(name)).value();
                covered.merge(name, figure.low() <= value && value <= figure.high() ? 1 : 0, Integer::sum);
            });
        }
        int all = covered.values().stream().mapToInt(Integer::intValue).sum();
        // 95 of 100 are nominal; were it 90 for one figure, fewer than 30 of 40 would come once in a hundred times
        covered.forEach((name, count) ->
                assertTrue(count * 100 >= HISTORIES * 75, name + ": " + count + " of " + HISTORIES + ", " + covered));
        assertTrue(all * 100 >= HISTORIES * 90 * covered.size(), covered + " of " + HISTORIES);
    }

    private static Map<String, Figure> figures(PastWeeks past, DemandShape shape, int scenarios) {
        SteadyStudy found = SteadyStall.study(past, OFFERS, new Study.Size(3, scenarios, 52));
        SteadyStudy study = new SteadyStudy(
                found.rope(),
                new Demand(found.demand().past(), shape),
                found.sizes(),
                found.worth(),
                found.keeping(),
                found.goal(),
                found.size(),
                found.day(),
                found.notBought(),
                found.leftOut(),
                found.unheld(),
                found.start());
        List<Way> ways = new ArrayList<>();
        for (SizeOnOffer size : study.sizes()) {
            ways.add(new Way(List.of(new Way.Rule(size, Length.ofMetres(160), 1))));
        }
        SteadyVerdict verdict =
                SteadyVerdict.of(study, ways, SteadyStall.simulation(study).scenarios(ways, Share.ALL));
        WayFound small = SteadyStall.of(verdict, "100");
        WayFound large = SteadyStall.of(verdict, "200");
        Map<String, Figure> figures = new LinkedHashMap<>();
        figures.put("cost of 100", small.byMetre());
        figures.put("cost of 200", large.byMetre());
        figures.put("late of 100", small.late());
        figures.put("late of 200", large.late());
        figures.put("stock of 200", large.stock());
        figures.put("tied of 100", small.tied());
        boolean turned = !verdict.found().get(0).equals(large);
        Figure more = !turned ? small.more() : large.more();
        figures.put("more of 100", turned ? new Figure(-more.value(), -more.high(), -more.low(), more.known()) : more);
        return figures;
    }
}
