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

    /** How far the engines are, on one line; a bound of nothing says nothing. */
    static String line(Effort.Progress progress, MoneyText money, long secondsLeft) {
        String bound = progress.bound().rounded().minor() > 0
                ? money.print(progress.bound().rounded())
                : "not known yet";
        return progress.ropes() + ": best " + money.print(progress.cost().rounded()) + ", bound " + bound
                + (progress.unplanned() == 0 ? "" : ", " + progress.unplanned() + " not planned") + "; "
                + secondsLeft + " s left";
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
