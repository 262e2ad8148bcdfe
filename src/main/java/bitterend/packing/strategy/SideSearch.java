package bitterend.packing.strategy;

import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * A search from one start, beside everything else or when its turn comes. It knows no bound, so that what it finds does
 * not hang on when it runs.
 */
final class SideSearch {
    private final PartPacker.Improver improver;
    private final PackingProblem part;
    private final Packing start;
    private volatile boolean calledOff;
    private FutureTask<Packing> task = new FutureTask<>(() -> Packing.EMPTY);

    SideSearch(PartPacker.Improver improver, PackingProblem part, Packing start) {
        this.improver = improver;
        this.part = part;
        this.start = start;
    }

    /** Searches in a thread of its own. */
    void begin(Effort effort) {
        task = new FutureTask<>(() -> now(effort));
        Thread thread = new Thread(task, "side-search");
        thread.setDaemon(true);
        thread.start();
    }

    /** Searches here and now. */
    Packing now(Effort effort) {
        return improver.improve(part, start, effort, Cost.ZERO);
    }

    /** What the search that was begun has found, once it is done. */
    Packing answer() {
        try {
            return task.get();
        } catch (ExecutionException failed) {
            throw new IllegalStateException("the search failed", failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the search was interrupted", stopped);
        }
    }

    /** Nobody waits for its answer any more. */
    void callOff() {
        calledOff = true;
    }

    boolean isCalledOff() {
        return calledOff;
    }
}
