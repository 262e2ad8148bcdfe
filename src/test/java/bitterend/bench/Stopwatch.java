package bitterend.bench;

import bitterend.packing.Effort;
import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Gives every way of packing the same time and says how much of it was taken: by the clock, on all cores, as the program
 * runs, or about so much processor time on one core, for a busy machine. As the engine shares its time out by the clock,
 * that limit is then made as much longer as the machine is busy; a lap that met a machine much busier or idler than that
 * is run again.
 */
final class Stopwatch {
    private static final OperatingSystemMXBean MACHINE =
            ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    private static final double LAP_THAT_TELLS = 0.5;
    private static final double GIVE_OR_TAKE = 0.25;
    private static final int LAPS = 3;

    private final double seconds;
    private final boolean byProcessor;
    private double stretch = 1;

    Stopwatch(double seconds, boolean byProcessor) {
        this.seconds = seconds;
        this.byProcessor = byProcessor;
    }

    /**
     * One packing and what it took.
     *
     * @param result of it
     * @param wall seconds by the clock
     * @param processor seconds of the processor, all threads together
     */
    record Lap<R>(R result, double wall, double processor) {}

    /** Runs something within the limit. */
    <R> Lap<R> lap(long seed, Consumer<Effort.Progress> progress, Function<Effort, R> work) {
        for (int lap = 1; ; lap++) {
            double thought = stretch;
            Lap<R> done = once(effort(seed, progress), work);
            feel(done);
            boolean fair = Math.abs(stretch / thought - 1) <= GIVE_OR_TAKE;
            if (fair || lap == LAPS || done.wall() < seconds * thought / 2) {
                return done;
            }
        }
    }

    /** How busy the machine was. */
    private void feel(Lap<?> lap) {
        if (byProcessor && lap.processor() > LAP_THAT_TELLS) {
            stretch = Math.max(1, lap.wall() / lap.processor());
        }
    }

    private Effort effort(long seed, Consumer<Effort.Progress> progress) {
        int cores = byProcessor ? 1 : Runtime.getRuntime().availableProcessors();
        Duration time = Duration.ofMillis(Math.round(seconds * stretch * 1000));
        return new Effort(time, Long.MAX_VALUE, seed, cores, () -> false, progress);
    }

    private static <R> Lap<R> once(Effort effort, Function<Effort, R> work) {
        long wallFrom = System.nanoTime();
        long processorFrom = MACHINE.getProcessCpuTime();
        R result = work.apply(effort);
        double processor = (MACHINE.getProcessCpuTime() - processorFrom) / 1e9;
        return new Lap<>(result, (System.nanoTime() - wallFrom) / 1e9, processor);
    }
}
