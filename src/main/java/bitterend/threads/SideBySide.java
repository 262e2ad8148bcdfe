package bitterend.threads;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Runs tasks on several threads. */
public final class SideBySide {
    private SideBySide() {}

    /** As many as there are cores. */
    public static int cores() {
        return Runtime.getRuntime().availableProcessors();
    }

    /**
     * The results of tasks, in their order.
     *
     * @throws IllegalStateException when one of them failed, or the thread was interrupted
     */
    public static <T> List<T> all(List<Callable<T>> tasks, int threads) {
        ExecutorService hands = Executors.newFixedThreadPool(Math.max(1, threads));
        try {
            List<T> results = new ArrayList<>();
            for (Future<T> result : hands.invokeAll(tasks)) {
                results.add(result.get());
            }
            return results;
        } catch (ExecutionException failed) {
            throw new IllegalStateException("a task failed", failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", stopped);
        } finally {
            hands.shutdownNow();
        }
    }
}
