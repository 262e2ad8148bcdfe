package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.packing.Packer;
import bitterend.stock.StockValue;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;

/**
 * Learns what a coil is worth: V(x) = the mean cost of the future without a coil of x less that with it, over scenarios
 * that are otherwise the same. The shares V(x) / (price * x) are made rising by pooling neighbours (Ayer and others, Ann.
 * Math. Stat. 26, 1955, 641-647), each length weighing the same, and kept between 0 and 1.
 *
 * <p>One half of the scenarios teaches, the other half judges: it is lived through with the old curve and with the learned
 * one, and what is on the rack at the end is valued by the old curve both times.
 */
public final class Learning {
    /** Shares are kept in thousandths, rounded down. */
    private static final long THOUSAND = 1000;

    private static final int STEPS = 8;

    private final Study study;
    private final Option option;
    private final Simulation simulation;
    private final int threads;

    /** Reels are bought as the option says, which is best the one that suits the past. */
    public Learning(Study study, Option option, Packer packer, int threads, BooleanSupplier cancelled) {
        this.study = study;
        this.option = option;
        this.threads = threads;
        simulation = new Simulation(packer, threads, cancelled, (done, all) -> {});
    }

    /**
     * What was learned, and whether it helps.
     *
     * @param value the learned curve
     * @param saved mean cost of a scenario with the old curve less that with the learned one; negative when it harms
     * @param error standard error of that mean, from chance
     * @param scenarios how many judged
     */
    public record Lesson(LearnedValue value, Cost saved, Cost error, int scenarios) {
        /** Whether the learned curve is cheaper beyond two standard errors. */
        public boolean helps() {
            return saved.compareTo(error.times(2)) > 0;
        }

        /** Whether the learned curve is dearer beyond two standard errors. */
        public boolean harms() {
            return Cost.ZERO.minus(saved).compareTo(error.times(2)) > 0;
        }
    }

    /** The lesson of the study's scenarios; nothing when cancelled before anything was learned. */
    public Optional<Lesson> learn() {
        List<Length> lengths = lengths();
        List<Callable<Optional<long[]>>> tasks = new ArrayList<>();
        for (int scenario = 0; scenario < study.size().scenarios(); scenario += 2) {
            int number = scenario;
            tasks.add(() -> savings(lengths, number));
        }
        List<long[]> savings = SideBySide.all(tasks, threads).stream()
                .flatMap(Optional::stream)
                .toList();
        return savings.isEmpty() ? Optional.empty() : judged(curve(lengths, savings));
    }

    /** From the shortest kept remnant to the usual reel, in steps that grow. */
    private List<Length> lengths() {
        long from = study.rope().worth().keepFrom().mm();
        long to = Math.max(from, study.rope().usualReel().mm());
        TreeSet<Length> lengths = new TreeSet<>();
        for (int step = 0; step <= STEPS; step++) {
            lengths.add(new Length(from + (to - from) * step * step / (STEPS * STEPS)));
        }
        return List.copyOf(lengths);
    }

    /** What a coil of each length saves in one scenario. */
    private Optional<long[]> savings(List<Length> lengths, int scenario) {
        Optional<Outcome> without = simulation.outcome(study, option, List.of(), scenario);
        long[] savings = new long[lengths.size()];
        for (int i = 0; i < savings.length && without.isPresent(); i++) {
            List<Length> coil = List.of(lengths.get(i));
            Optional<Outcome> with = simulation.outcome(study, option, coil, scenario);
            if (with.isEmpty()) {
                return Optional.empty();
            }
            // An outcome counts the coil it begins with as spent; the saving is what comes on top of its value.
            savings[i] = Math.addExact(
                    Math.subtractExact(
                            without.get().cost().millis(), with.get().cost().millis()),
                    study.value().of(lengths.get(i)).millis());
        }
        return without.map(outcome -> savings);
    }

    private LearnedValue curve(List<Length> lengths, List<long[]> savings) {
        long[] shares = new long[lengths.size()];
        for (int i = 0; i < shares.length; i++) {
            int at = i;
            long mean = StandardErrors.mean(
                    savings.stream().mapToLong(each -> each[at]).toArray());
            long price = study.rope().price().of(lengths.get(i)).millis();
            shares[i] = price == 0
                    ? 0
                    : BigInteger.valueOf(mean)
                            .multiply(BigInteger.valueOf(THOUSAND))
                            .divide(BigInteger.valueOf(price))
                            .longValueExact();
        }
        long[] rising = IsotonicRegression.of(shares);
        List<LearnedValue.Knot> knots = new ArrayList<>();
        for (int i = 0; i < rising.length; i++) {
            long share = Math.min(THOUSAND, Math.max(0, rising[i]));
            knots.add(new LearnedValue.Knot(lengths.get(i), new Ratio(share, THOUSAND)));
        }
        return new LearnedValue(study.rope().price(), knots);
    }

    private Optional<Lesson> judged(LearnedValue learned) {
        Study now = study.valuedBy(capped(learned));
        List<Callable<Optional<Long>>> tasks = new ArrayList<>();
        for (int scenario = 1; scenario < study.size().scenarios(); scenario += 2) {
            int number = scenario;
            tasks.add(() -> saved(now, number));
        }
        long[] saved = SideBySide.all(tasks, threads).stream()
                .flatMap(Optional::stream)
                .mapToLong(Long::longValue)
                .toArray();
        if (saved.length < 2) {
            return Optional.empty();
        }
        return Optional.of(new Lesson(
                learned, new Cost(StandardErrors.mean(saved)), StandardErrors.ofChance(saved), saved.length));
    }

    /** Under the same cap as the old curve, so that the two differ in their shares alone. */
    private StockValue capped(LearnedValue learned) {
        return study.value() instanceof CappedValue old ? new CappedValue(learned, old.cheapest()) : learned;
    }

    private Optional<Long> saved(Study now, int scenario) {
        Optional<Cost> old = simulation.costValuedBy(study, study, option, scenario);
        Optional<Cost> learned = simulation.costValuedBy(now, study, option, scenario);
        return old.flatMap(before -> learned.map(after -> before.minus(after).millis()));
    }
}
