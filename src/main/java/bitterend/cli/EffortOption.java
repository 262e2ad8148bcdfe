package bitterend.cli;

import bitterend.finding.Findings;
import bitterend.packing.strategy.EffortLevel;
import bitterend.work.plans.PlanSearch;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
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

    @Mixin
    private ThreadsOption threads = new ThreadsOption();

    @Option(
            names = "--solver-config",
            paramLabel = "FILE",
            description = "Search as this file says instead; see solver-config/README.md.")
    private @Nullable Path solverConfig;

    /** What was asked for; nothing when its file has errors, which are told. */
    Optional<PlanSearch> search(Findings findings) {
        return PlanSearch.of(level, time(), seed.seed, solverConfig, findings)
                .map(search -> search.since(begun).on(threads.count()));
    }

    Duration time() {
        return time == null ? level.time() : time;
    }
}
