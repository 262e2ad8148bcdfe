package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;

/** Chooses on the scenarios of even number, reports on the others, and says what cannot be told apart. */
public final class HoldOutComparison {
    /** Less than one minor unit in a scenario is nothing that anybody pays. */
    private static final Cost SMALLEST_STEP = new Cost(Cost.MILLIS_PER_MINOR);

    private final Study study;
    private final List<Scenario> choosing;
    private final List<Scenario> reporting;
    private final int all;

    private HoldOutComparison(Study study, List<Scenario> scenarios) {
        this.study = study;
        choosing = scenarios.stream().filter(each -> each.number() % 2 == 0).toList();
        reporting = scenarios.stream().filter(each -> each.number() % 2 == 1).toList();
        all = scenarios.size();
    }

    /** How many scenarios it takes to say anything: two to choose, two to report. */
    public static boolean isEnough(List<Scenario> scenarios) {
        long odd = scenarios.stream().filter(each -> each.number() % 2 == 1).count();
        return odd >= 2 && scenarios.size() - odd >= 2;
    }

    /** The verdict of these scenarios; there must be {@linkplain #isEnough enough}. */
    public static Verdict of(Study study, List<Scenario> scenarios) {
        if (!isEnough(scenarios) || study.options().isEmpty()) {
            throw new IllegalArgumentException(
                    scenarios.size() + " scenarios, " + study.options().size() + " options");
        }
        return new HoldOutComparison(study, scenarios).verdict();
    }

    private Verdict verdict() {
        int best = IntStream.range(0, study.options().size())
                .boxed()
                .min(Comparator.comparingLong(option -> StandardErrors.mean(costs(choosing, option))))
                .orElseThrow();
        List<Result> results = new ArrayList<>();
        for (int option = 0; option < study.options().size(); option++) {
            results.add(result(option, best));
        }
        results.sort(Comparator.comparing((Result each) -> each.standing() != Standing.CHOSEN)
                .thenComparing(Result::more));
        return new Verdict(study, all, reporting.size(), results, weeksToSettle(results));
    }

    private Result result(int option, int best) {
        long[] costs = costs(reporting, option);
        long[] more = differences(costs, costs(reporting, best));
        Cost chance = StandardErrors.ofChance(more);
        OptionalLong history = StandardErrors.ofHistory(
                more,
                reporting.stream().map(each -> study.weeksOf(each.number())).toList(),
                study.weeks().size());
        Cost mean = new Cost(StandardErrors.mean(more));
        Standing standing = option == best ? Standing.CHOSEN : standing(mean, chance, history);
        return new Result(
                study.options().get(option),
                standing,
                new UnitPrice(Math.max(0, perMetre(sum(costs), useful()))),
                range(option),
                means(option),
                mean,
                chance,
                new Cost(history.orElse(-1)));
    }

    private Standing standing(Cost more, Cost chance, OptionalLong history) {
        if (more.compareTo(margin(chance)) <= 0 || more.compareTo(SMALLEST_STEP) <= 0) {
            return Standing.TIE;
        }
        boolean told = history.isPresent() && more.compareTo(margin(new Cost(history.getAsLong()))) > 0;
        return told ? Standing.DEARER : Standing.TIE_OF_THIN_HISTORY;
    }

    private Cost margin(Cost error) {
        return StandardErrors.margin(error, reporting.size(), study.options().size() - 1);
    }

    private long weeksToSettle(List<Result> results) {
        return results.stream()
                .filter(Result::isTied)
                .filter(result -> result.more().millis() > 0 && result.history().millis() > 0)
                .mapToLong(result ->
                        StandardErrors.weeksToSettle(study.weeks().size(), margin(result.history()), result.more()))
                .min()
                .orElse(0);
    }

    private Result.Range range(int option) {
        long[] prices = values(scenario -> perMetre(
                outcome(scenario, option).cost().millis(), scenario.useful().mm()));
        long[] wastes = values(scenario -> perMetre(
                outcome(scenario, option).waste().mm(), scenario.useful().mm()));
        return new Result.Range(
                new Cost(StandardErrors.percentile(prices, 10)),
                new Cost(StandardErrors.percentile(prices, 90)),
                new Ratio(StandardErrors.percentile(wastes, 10), 1000),
                new Ratio(StandardErrors.percentile(wastes, 90), 1000));
    }

    private Result.Means means(int option) {
        Length useful = new Length(useful() / reporting.size());
        long worth = study.rope().price().of(useful).millis();
        long avoidable = StandardErrors.meanAtMost(
                values(each -> outcome(each, option).avoidable().millis()));
        return new Result.Means(
                useful,
                new Length(StandardErrors.mean(
                        values(each -> outcome(each, option).waste().mm()))),
                StandardErrors.mean(values(each -> 10L * outcome(each, option).coils())),
                StandardErrors.mean(values(each -> 10L * outcome(each, option).reels())),
                worth == 0 ? Ratio.ZERO : new Ratio(avoidable, worth));
    }

    private long useful() {
        return sum(values(each -> each.useful().mm()));
    }

    /** Thousandths per metre of a sum, rounded down; nothing where no rope was used. */
    private static long perMetre(long sum, long usefulMm) {
        return usefulMm == 0 ? 0 : Math.floorDiv(Math.multiplyExact(sum, 1000L), usefulMm);
    }

    private long[] values(ToLongFunction<Scenario> value) {
        return reporting.stream().mapToLong(value).toArray();
    }

    private static long[] costs(List<Scenario> scenarios, int option) {
        return scenarios.stream()
                .mapToLong(each -> outcome(each, option).cost().millis())
                .toArray();
    }

    private static Outcome outcome(Scenario scenario, int option) {
        return scenario.outcomes().get(option);
    }

    private static long[] differences(long[] a, long[] b) {
        return IntStream.range(0, a.length).mapToLong(i -> a[i] - b[i]).toArray();
    }

    private static long sum(long[] values) {
        long sum = 0;
        for (long value : values) {
            sum = Math.addExact(sum, value);
        }
        return sum;
    }
}
