package bitterend.packing.strategy;

import bitterend.packing.PackingProblem;
import bitterend.packing.search.Profile;
import java.time.Duration;

/** How hard a plan is worked at when nothing else is said. */
public enum EffortLevel {
    /** A good answer while the shop waits. */
    QUICK(Duration.ofSeconds(10)),
    /** As good as a minute buys. */
    THOROUGH(Duration.ofSeconds(60)),
    /** By work, not by the clock: the same input and seed give the same plan on any machine and number of threads. */
    REPRODUCIBLE(Duration.ofDays(1));

    /** Score calculations for each piece under {@link #REPRODUCIBLE}: some seconds for a day of a hundred pieces. */
    private static final long WORK_PER_PIECE = 10_000;

    private final Duration time;

    EffortLevel(Duration time) {
        this.time = time;
    }

    /** The time limit unless another is given. */
    public Duration time() {
        return time;
    }

    /** The limit of work; none where the clock decides. */
    public long work(PackingProblem problem) {
        return this == REPRODUCIBLE ? WORK_PER_PIECE * problem.pieces().size() : Long.MAX_VALUE;
    }

    Profile profile() {
        return switch (this) {
            case QUICK -> Profile.quick();
            case THOROUGH -> Profile.thorough();
            case REPRODUCIBLE -> Profile.reproducible();
        };
    }
}
