package bitterend.buying.steady;

import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongFunction;

/**
 * What a study found: the futures of even number choose, the others report, so that the figures of the chosen one are not
 * flattered by the choice.
 *
 * @param study the question
 * @param scenarios how many futures were worked out
 * @param reporting how many of them report
 * @param pasts from how many pasts those that report draw
 * @param found every option with its best point and number: the chosen one first, then those that may be recommended by cost,
 *     then the others
 */
public record SteadyVerdict(SteadyStudy study, int scenarios, int reporting, int pasts, List<WayFound> found) {
    public static final long PER_TEN_THOUSAND = 10_000;

    /** Below half a year of weeks a history is thin; common practice, no source. */
    public static final int THIN_BELOW_WEEKS = 26;

    private static final int ENOUGH = 2;
    private static final int ENOUGH_PASTS = 8;

    public SteadyVerdict {
        found = List.copyOf(found);
    }

    /** How many futures it takes to say anything: some to choose, some to report. */
    public static boolean isEnough(List<SteadyScenario> scenarios) {
        long odd = scenarios.stream().filter(each -> each.number() % 2 == 1).count();
        return odd >= ENOUGH && scenarios.size() - odd >= ENOUGH;
    }

    /**
     * The way to act on: of the chosen one and those that cannot be told from it the one with the fewest sizes that ties least
     * money; with too few pasts to {@linkplain #tellsTies tell}, the chosen one. One with more late pieces than are allowed gives
     * way to those without.
     */
    public WayFound advised() {
        List<WayFound> ties = found.stream()
                .filter(each -> each.standing() == WayFound.Standing.CHOSEN
                        || (each.standing() == WayFound.Standing.TIE
                                && each.more().known()))
                .toList();
        List<WayFound> inTime = ties.stream()
                .filter(each -> each.late().value() <= study.goal().mostLate())
                .toList();
        List<WayFound> may = inTime.isEmpty() ? ties : inTime;
        Comparator<WayFound> simplest = Comparator.<WayFound>comparingInt(
                        each -> each.way().rules().size())
                .thenComparingLong(each -> each.tied().value());
        return (tellsTies() ? may.stream().min(simplest) : may.stream().findFirst()).orElse(found.get(0));
    }

    /**
     * Whether enough pasts report to say of ways that they tie: with a few, intervals are so wide that nearly all do. Eight; our
     * own choice, no source.
     */
    public boolean tellsTies() {
        return pasts >= ENOUGH_PASTS;
    }

    /** Whether the chosen way keeps to what the shop asks; else none does. */
    public boolean isMet() {
        return found.get(0).standing() == WayFound.Standing.CHOSEN;
    }

    /** The dearest of those that may be recommended: what the wrong choice costs; nothing where none is dearer. */
    public Optional<WayFound> worst() {
        return found.stream()
                .filter(each -> each.standing() == WayFound.Standing.DEARER)
                .max(Comparator.comparingLong(each -> each.more().value()));
    }

    public boolean isThin() {
        return study.demand().past().count() < THIN_BELOW_WEEKS;
    }

    /** Weeks of use that a length lasts, in tenths, rounded down; nothing where none is used. */
    public long weekTenths(long mm) {
        long weekly = study.weekly().mm();
        return weekly == 0 ? 0 : mm * 10 / weekly;
    }

    /** Cost of a metre used over some futures, in 1/1000 minor unit, rounded down; nothing where none was used. */
    static long byMetre(List<Lived> lived) {
        long cost = lived.stream().mapToLong(each -> each.cost().millis()).reduce(0, Math::addExact);
        long used = lived.stream().mapToLong(each -> each.used().mm()).sum();
        return used == 0 ? 0 : Math.floorDiv(Math.multiplyExact(cost, 1_000L), used);
    }

    /** Late pieces in ten thousand over some futures, rounded down. */
    static long late(List<Lived> lived) {
        long pieces = lived.stream().mapToLong(Lived::pieces).sum();
        long late = lived.stream().mapToLong(Lived::late).sum();
        return pieces == 0 ? 0 : late * PER_TEN_THOUSAND / pieces;
    }

    /** The verdict of these futures of these ways; there must be {@linkplain #isEnough enough}. */
    public static SteadyVerdict of(SteadyStudy study, List<Way> ways, List<SteadyScenario> scenarios) {
        if (!isEnough(scenarios) || ways.isEmpty()) {
            throw new IllegalArgumentException(scenarios.size() + " futures, " + ways.size() + " ways");
        }
        return new Choice(study, ways, scenarios).verdict();
    }

    /** Chooses and reports. */
    private static final class Choice {
        private final SteadyStudy study;
        private final List<Way> ways;
        private final List<SteadyScenario> choosing;
        private final List<SteadyScenario> reporting;
        private final int[] groups;
        private final SurePoints points;

        Choice(SteadyStudy study, List<Way> ways, List<SteadyScenario> scenarios) {
            this.study = study;
            this.ways = ways;
            points = new SurePoints(study);
            choosing = scenarios.stream().filter(each -> each.number() % 2 == 0).toList();
            reporting =
                    scenarios.stream().filter(each -> each.number() % 2 == 1).toList();
            groups = reporting.stream()
                    .mapToInt(each -> SteadySimulation.groupOf(each.number()))
                    .toArray();
        }

        SteadyVerdict verdict() {
            Map<List<String>, Integer> options = new LinkedHashMap<>();
            for (int way = 0; way < ways.size(); way++) {
                options.merge(ways.get(way).offers(), way, this::better);
            }
            List<Integer> bests = List.copyOf(options.values());
            int chosen = bests.stream().reduce(this::preferred).orElseThrow();
            List<WayFound> found = new ArrayList<>();
            for (int way : bests) {
                found.add(found(way, chosen, bests.size() - 1));
            }
            found.sort(Comparator.comparing(
                            (WayFound each) -> each.way().equals(ways.get(chosen)) ? 0 : each.isSuitable() ? 1 : 2)
                    .thenComparingLong(each -> each.byMetre().value()));
            int pasts = (int) Arrays.stream(groups).distinct().count();
            return new SteadyVerdict(study, choosing.size() + reporting.size(), reporting.size(), pasts, found);
        }

        /** Of two ways the cheaper, if both are in time; else the one with fewer late pieces. */
        private int better(int a, int b) {
            long lateA = Math.max(study.goal().mostLate(), late(chosenBy(a)));
            long lateB = Math.max(study.goal().mostLate(), late(chosenBy(b)));
            if (lateA != lateB) {
                return lateA < lateB ? a : b;
            }
            return byMetre(chosenBy(b)) < byMetre(chosenBy(a)) ? b : a;
        }

        /** The same, but first of all no order may bring too much. */
        private int preferred(int a, int b) {
            long tooMuchA = beyondMost(ways.get(a));
            long tooMuchB = beyondMost(ways.get(b));
            return tooMuchA == tooMuchB ? better(a, b) : tooMuchA < tooMuchB ? a : b;
        }

        private long beyondMost(Way way) {
            return Math.max(
                    0,
                    way.usual().order().mm()
                            - study.weekly().mm() * study.goal().mostWeeks());
        }

        private List<Lived> chosenBy(int way) {
            return choosing.stream().map(each -> each.lived().get(way)).toList();
        }

        private WayFound found(int way, int chosen, int rivals) {
            Figure more = IntervalFormula.difference(costs(way), costs(chosen), 1_000, groups, rivals);
            long weeks = (long) reporting.size() * study.size().weeks();
            long pieces = Arrays.stream(values(way, Lived::pieces)).sum();
            Figure late = IntervalFormula.share(
                            values(way, Lived::late), values(way, Lived::pieces), PER_TEN_THOUSAND, groups)
                    .reaching(pieces == 0 ? 0 : Math.min(PER_TEN_THOUSAND, 1 + 3 * PER_TEN_THOUSAND / weeks));
            return new WayFound(
                    ways.get(way),
                    ways.get(way).rules().stream().map(points::of).toList(),
                    standing(way, chosen, more),
                    IntervalFormula.ratio(costs(way)[0], costs(way)[1], 1_000, groups, 1),
                    more,
                    late,
                    IntervalFormula.mean(values(way, each -> each.stock().mm()), groups, 1)
                            .notNegative(),
                    IntervalFormula.mean(values(way, each -> each.tied().millis()), groups, 1)
                            .notNegative(),
                    year(way));
        }

        private WayFound.Standing standing(int way, int chosen, Figure more) {
            if (beyondMost(ways.get(way)) > 0) {
                return WayFound.Standing.TOO_MUCH;
            }
            if (late(chosenBy(way)) > study.goal().mostLate()) {
                return WayFound.Standing.LATE;
            }
            if (way == chosen) {
                return WayFound.Standing.CHOSEN;
            }
            return more.known() && more.low() > 0 ? WayFound.Standing.DEARER : WayFound.Standing.TIE;
        }

        private WayFound.Year year(int way) {
            long weeks = (long) reporting.size() * study.size().weeks();
            return new WayFound.Year(
                    new Length(sum(way, each -> each.used().mm()) * PastWeeks.PLACES / weeks),
                    new Length(Math.max(0, sum(way, each -> each.scrap().mm())) * PastWeeks.PLACES / weeks),
                    sum(way, Lived::reels) * 10 * PastWeeks.PLACES / weeks,
                    sum(way, Lived::coils) * 10 / reporting.size());
        }

        private long[][] costs(int way) {
            return new long[][] {
                values(way, each -> each.cost().millis()),
                values(way, each -> each.used().mm())
            };
        }

        private long[] values(int way, ToLongFunction<Lived> value) {
            return reporting.stream()
                    .mapToLong(each -> value.applyAsLong(each.lived().get(way)))
                    .toArray();
        }

        private long sum(int way, ToLongFunction<Lived> value) {
            return Arrays.stream(values(way, value)).reduce(0, Math::addExact);
        }
    }
}
