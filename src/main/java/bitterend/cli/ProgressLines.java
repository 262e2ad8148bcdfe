package bitterend.cli;

import bitterend.front.ProgressWords;
import bitterend.measure.MoneyText;
import bitterend.packing.Effort;
import java.io.PrintStream;
import java.time.Duration;
import java.util.function.Consumer;

/** Tells on the error stream, at most twice a second, how far the engines are. */
final class ProgressLines implements Consumer<Effort.Progress> {
    private static final long PAUSE_NANOS = Duration.ofMillis(500).toNanos();

    private final PrintStream err;
    private final MoneyText money;
    private final long start = System.nanoTime();
    private final long end;
    private long last = start;

    ProgressLines(PrintStream err, MoneyText money, Duration time) {
        this.err = err;
        this.money = money;
        end = start + time.toNanos();
    }

    /** How far the engines are, and for how long they may go on. */
    static String line(Effort.Progress progress, MoneyText money, long secondsLeft) {
        return ProgressWords.of(progress, money) + "; " + secondsLeft + " s left";
    }

    @Override
    public synchronized void accept(Effort.Progress progress) {
        long now = System.nanoTime();
        if (now - last < PAUSE_NANOS) {
            return;
        }
        last = now;
        err.println(line(progress, money, Math.max(0, (end - now) / 1_000_000_000L)));
    }
}
