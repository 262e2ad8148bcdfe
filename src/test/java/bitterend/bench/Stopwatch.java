package bitterend.bench;

import bitterend.packing.Effort;
import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Gives every way of packing the same time and says how much of it was taken. By the clock, on all cores, as the program
 * runs; or by the processor time of the program, on one core, for a busy machine. As the engine shares its time out by
 * the clock, that limit is then as much longer as the machine is busy: by the lap before, and by a moment of spinning.
 */
final class Stopwatch {
    private static final OperatingSystemMXBean MACHINE =
            ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final double LAP_THAT_TELLS = 0.5;
    private static final long MOMENT = 100_000_000;

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
        double slower = byProcessor ? Math.max(stretch, spin()) : 1;
        long wallFrom = System.nanoTime();
        long processorFrom = MACHINE.getProcessCpuTime();
        R result = work.apply(byProcessor ? byProcessor(seed, progress, slower) : byClock(seed, progress));
        double processor = (MACHINE.getProcessCpuTime() - processorFrom) / 1e9;
        double wall = (System.nanoTime() - wallFrom) / 1e9;
        if (processor > LAP_THAT_TELLS) {
            stretch = Math.max(1, wall / processor);
        }
        return new Lap<>(result, wall, processor);
    }

    /** How many seconds a second of the processor takes just now. */
    private static double spin() {
        long wallFrom = System.nanoTime();
        long from = THREADS.getCurrentThreadCpuTime();
        long spent = 0;
        while (spent < MOMENT) {
            spent = THREADS.getCurrentThreadCpuTime() - from;
        }
        return Math.max(1, (System.nanoTime() - wallFrom) / (double) spent);
    }

    private Effort byClock(long seed, Consumer<Effort.Progress> progress) {
        int cores = Runtime.getRuntime().availableProcessors();
        return new Effort(duration(seconds), Long.MAX_VALUE, seed, cores, () -> false, progress);
    }

    private Effort byProcessor(long seed, Consumer<Effort.Progress> progress, double slower) {
        long end = MACHINE.getProcessCpuTime() + Math.round(seconds * 1e9);
        return new Effort(
                duration(seconds * slower), Long.MAX_VALUE, seed, 1, () -> MACHINE.getProcessCpuTime() > end, progress);
    }

    private static Duration duration(double seconds) {
        return Duration.ofMillis(Math.round(seconds * 1000));
    }
}
