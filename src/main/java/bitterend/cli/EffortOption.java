package bitterend.cli;

import bitterend.finding.Findings;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.strategy.EffortLevel;
import bitterend.packing.strategy.FullStrategy;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How hard to look for a better plan. */
final class EffortOption {
    private final long begun = System.nanoTime();

    @Option(
            names = "--effort",
            paramLabel = "LEVEL",
            defaultValue = "quick",
            description = "quick, thorough, or reproducible: the same plan for the same input and seed,"
                    + " whatever the machine. Default: ${DEFAULT-VALUE}.")
    private EffortLevel level = EffortLevel.QUICK;

    @Option(
            names = "--time",
            paramLabel = "TIME",
            converter = DurationText.class,
            description = "Look no longer than this, such as 10s or 2m; else 10s, or 1m when thorough.")
    private @Nullable Duration time;

    @Mixin
    private SeedOption seed = new SeedOption();

    @Option(
            names = "--solver-config",
            paramLabel = "FILE",
            description = "Search as this file says instead; see solver-config/README.md.")
    private @Nullable Path solverConfig;

    /** The packer that was asked for; nothing when its file has errors, which are told. */
    Optional<FullStrategy> strategy(Findings findings) {
        return solverConfig == null
                ? Optional.of(FullStrategy.at(level))
                : FullStrategy.fromFile(solverConfig, findings);
    }

    /** The level in a word. */
    String word() {
        return level.name().toLowerCase(Locale.ROOT);
    }

    Duration time() {
        return time == null ? level.time() : time;
    }

    long seed() {
        return seed.seed;
    }

    /** The effort for a problem, on all cores. What reading the shop took is taken off, up to half of the time. */
    Effort effort(PackingProblem problem, BooleanSupplier cancelled, Consumer<Effort.Progress> progress) {
        return new Effort(
                left(), level.work(problem), seed(), Runtime.getRuntime().availableProcessors(), cancelled, progress);
    }

    private Duration left() {
        Duration half = time().dividedBy(2);
        Duration left = time().minusNanos(System.nanoTime() - begun);
        return left.compareTo(half) < 0 ? half : left;
    }
}
