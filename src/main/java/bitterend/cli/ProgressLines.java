package bitterend.cli;

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

    @Override
    public synchronized void accept(Effort.Progress progress) {
        long now = System.nanoTime();
        if (now - last < PAUSE_NANOS) {
            return;
        }
        last = now;
        err.println(progress.ropes() + ": best " + money.print(progress.cost().rounded()) + ", bound "
                + money.print(progress.bound().rounded())
                + (progress.unplanned() == 0 ? "" : ", " + progress.unplanned() + " not planned") + "; "
                + Math.max(0, (end - now) / 1_000_000_000L) + " s left");
    }
}
