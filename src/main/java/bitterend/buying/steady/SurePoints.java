package bitterend.buying.steady;

import bitterend.measure.Length;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * How sure reorder points are. A point covers what a share of all futures uses until an order comes; another past would ask for
 * another length to cover as many. Pasts are drawn from the weeks recorded as in {@link Demand}, so that the draws of the
 * futures and the few weeks are in it together.
 */
final class SurePoints {
    private static final int PASTS = 60;
    private static final int FUTURES = 400;
    private static final int OF_ALL = 1000;
    /** Beyond it there are too few futures to tell a share; the doubt is taken to be as large there. */
    private static final int MOST = 995;

    private final SteadyStudy study;
    private final Map<LeadTime, Uses> known = new HashMap<>();

    SurePoints(SteadyStudy study) {
        this.study = study;
    }

    /**
     * What is used until an order comes, each from the least.
     *
     * @param recorded in futures of the weeks as they were
     * @param drawn the same, by the past they are drawn from
     */
    private record Uses(List<Long> recorded, List<List<Long>> drawn) {}

    /** The point with its interval, in millimetres. */
    Figure of(Way.Rule rule) {
        Uses uses = known.computeIfAbsent(rule.size().lead(), this::uses);
        long below =
                uses.recorded().stream().filter(use -> use < rule.point().mm()).count();
        int share = (int) Math.min(MOST, below * OF_ALL / uses.recorded().size());
        long[] points = uses.drawn().stream()
                .mapToLong(drawn -> drawn.get(drawn.size() * share / OF_ALL))
                .toArray();
        return IntervalFormula.times(
                rule.point().mm(), points, Length.ofMetres(1).mm());
    }

    private Uses uses(LeadTime lead) {
        long seed = study.size().seed();
        IntFunction<List<Long>> ofPast = past -> uses(study.demand().drawn(seed, past), lead, FUTURES);
        return new Uses(
                uses(study.demand().asRecorded(), lead, ReorderPoint.FUTURES),
                IntStream.range(0, PASTS).mapToObj(ofPast).toList());
    }

    private List<Long> uses(Demand.Source source, LeadTime lead, int futures) {
        return Arrays.stream(ReorderPoint.uses(
                        source,
                        new ReorderPoint.Draw(
                                study.rope().cutting().loss(),
                                lead,
                                ReorderPoint.ANY_PLACE,
                                study.size().seed()),
                        futures))
                .boxed()
                .toList();
    }
}
