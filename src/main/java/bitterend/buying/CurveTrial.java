package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.packing.Packer;
import bitterend.threads.SideBySide;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;

/**
 * What it costs a shop to keep a curve of its own: the same scenarios are tried with the coil curve and with that one. What
 * is on the rack at the end is valued coil by coil by the coil curve both times.
 */
public final class CurveTrial {
    private final Study study;
    private final Option option;
    private final Simulation simulation;
    private final int threads;

    /** Any reel of the study may be bought; coils are worth what the study says, which is the coil curve. */
    public CurveTrial(Study study, Packer packer, int threads, BooleanSupplier cancelled) {
        this.study = study;
        option = study.options().get(study.options().size() - 1);
        this.threads = threads;
        simulation = new Simulation(packer, threads, cancelled, (done, all) -> {});
    }

    /**
     * What was found.
     *
     * @param dearer mean cost of a scenario with the other curve less that with the coil curve; negative when it is cheaper
     * @param error standard error of that mean, from chance
     * @param scenarios how many there were
     */
    public record Found(Cost dearer, Cost error, int scenarios) {
        /** Whether the difference is larger than two standard errors. */
        public boolean isClear() {
            Cost size = dearer.millis() < 0 ? Cost.ZERO.minus(dearer) : dearer;
            return size.compareTo(error.times(2)) > 0;
        }
    }

    /** The trial of a curve; nothing when cancelled before two scenarios were through. */
    public Optional<Found> of(RackWorth other) {
        Study theirs = study.valuedBy(other);
        List<Callable<Optional<Long>>> tasks = new ArrayList<>();
        for (int scenario = 0; scenario < study.size().scenarios(); scenario++) {
            int number = scenario;
            tasks.add(() -> dearer(theirs, number));
        }
        long[] dearer = SideBySide.all(tasks, threads).stream()
                .flatMap(Optional::stream)
                .mapToLong(Long::longValue)
                .toArray();
        return dearer.length < 2
                ? Optional.empty()
                : Optional.of(new Found(
                        new Cost(StandardErrors.mean(dearer)), StandardErrors.ofChance(dearer), dearer.length));
    }

    private Optional<Long> dearer(Study theirs, int scenario) {
        Optional<Cost> coils = simulation.costValuedBy(study, study, option, scenario);
        Optional<Cost> other = simulation.costValuedBy(theirs, study, option, scenario);
        return other.flatMap(with -> coils.map(without -> with.minus(without).millis()));
    }
}
