package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.threads.SideBySide;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Works out the scenarios of a study, side by side. The answer does not depend on the number of threads, nor on how the
 * scenarios are shared out: packings are limited by work, never by a clock.
 */
public final class Simulation {
    /** About 15 ms for 12 lengths and 40 pieces; forty times as much closes the gap by 0.006 % of the rope only. */
    private static final long WORK_OF_A_PACKING = 100_000;

    private static final Duration AGES = Duration.ofDays(365);

    /** By the very study, not by what it says: comparing two would take longer than it saves. */
    private final IdentityHashMap<Study, Curves> curves = new IdentityHashMap<>();

    private final Packer packer;
    private final int threads;
    private final BooleanSupplier cancelled;
    private final Listener listener;

    /** {@code cancelled} is asked often; once true, the scenarios worked out so far are returned. */
    public Simulation(Packer packer, int threads, BooleanSupplier cancelled, Listener listener) {
        this.packer = packer;
        this.threads = threads;
        this.cancelled = cancelled;
        this.listener = listener;
    }

    /** Told after every scenario; calls may come from any thread. */
    @FunctionalInterface
    public interface Listener {
        /** So many scenarios of so many are worked out. */
        void worked(int done, int all);
    }

    /** The scenarios of a share, by number; fewer when cancelled. */
    public List<Scenario> scenarios(Study study, Share share) {
        int[] numbers = IntStream.range(0, study.size().scenarios())
                .filter(share::holds)
                .toArray();
        AtomicInteger done = new AtomicInteger();
        List<Callable<Optional<Scenario>>> tasks = new ArrayList<>();
        for (int number : numbers) {
            tasks.add(() -> {
                Optional<Scenario> scenario = scenario(study, number);
                listener.worked(done.incrementAndGet(), numbers.length);
                return scenario;
            });
        }
        return SideBySide.all(tasks, threads).stream()
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingInt(Scenario::number))
                .toList();
    }

    private Optional<Scenario> scenario(Study study, int number) {
        List<Outcome> outcomes = new ArrayList<>();
        for (Option option : study.options()) {
            Optional<Outcome> outcome = outcome(study, option, List.of(), number);
            if (outcome.isEmpty()) {
                return Optional.empty();
            }
            outcomes.add(outcome.get());
        }
        Length useful = Length.ZERO;
        for (int week : study.weeksOf(number)) {
            useful = study.weeks().get(week).stream().reduce(useful, Length::plus);
        }
        return Optional.of(new Scenario(number, useful, outcomes));
    }

    /** One scenario lived through with one option, from these coils; nothing when cancelled on the way. */
    Optional<Outcome> outcome(Study study, Option option, List<Length> coils, int number) {
        return lived(study, option, coils, number).map(rack -> rack.outcome(coils));
    }

    /** What a scenario costs from an empty rack when what is there at the end is valued as another study does. */
    Optional<Cost> costValuedBy(Study study, Study other, Option option, int number) {
        return lived(study, option, List.of(), number).map(rack -> rack.costValuedBy(other.worth()));
    }

    private Curves curves(Study study) {
        synchronized (curves) {
            return curves.computeIfAbsent(study, Curves::new);
        }
    }

    private Optional<SimulatedRack> lived(Study study, Option option, List<Length> coils, int number) {
        Effort effort = new Effort(AGES, WORK_OF_A_PACKING, study.size().seed(), 1, cancelled, progress -> {});
        SimulatedRack rack = new SimulatedRack(study, curves(study), option, coils, packer, effort);
        for (int week : study.weeksOf(number)) {
            rack.cut(study.weeks().get(week));
            if (cancelled.getAsBoolean()) {
                return Optional.empty();
            }
        }
        return Optional.of(rack);
    }
}
