package bitterend.packing.search;

import java.util.function.BooleanSupplier;
import org.optaplanner.core.api.solver.Solver;

/** Asks again and again, beside the search, whether it has been called off. */
final class Watch {
    private static final long PAUSE_MS = 25;

    private final Thread thread;
    private volatile boolean over;

    private Watch(Solver<?> solver, BooleanSupplier cancelled) {
        thread = new Thread(() -> look(solver, cancelled), "bench-watch");
        thread.setDaemon(true);
    }

    static Watch over(Solver<?> solver, BooleanSupplier cancelled) {
        Watch watch = new Watch(solver, cancelled);
        watch.thread.start();
        return watch;
    }

    private void look(Solver<?> solver, BooleanSupplier cancelled) {
        while (!over) {
            if (cancelled.getAsBoolean()) {
                solver.terminateEarly();
            }
            try {
                Thread.sleep(PAUSE_MS);
            } catch (InterruptedException e) {
                return;
            }
        }
    }

    void end() {
        over = true;
        thread.interrupt();
    }
}
