package bitterend.serve;

import io.javalin.config.JavalinConfig;
import io.javalin.http.sse.SseClient;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** Tells every browser that looks on when something of the shop has changed, whoever changed it. */
final class News implements Screen, AutoCloseable {
    static final int MOST_LISTENERS = 64;
    private static final long PAUSE_MILLIS = 1_000;

    private final Shelf shelf;
    private final Queue<SseClient> listeners = new ConcurrentLinkedQueue<>();
    private final ScheduledExecutorService watch = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "news");
        thread.setDaemon(true);
        return thread;
    });
    private String last = "";

    News(Shelf shelf) {
        this.shelf = shelf;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.sse("/news", this::listen);
        var unused = watch.scheduleWithFixedDelay(this::look, PAUSE_MILLIS, PAUSE_MILLIS, TimeUnit.MILLISECONDS);
    }

    private void listen(SseClient listener) {
        if (listeners.size() >= MOST_LISTENERS) {
            listener.close();
            return;
        }
        listener.keepAlive();
        listener.onClose(() -> listeners.remove(listener));
        listeners.add(listener);
    }

    private void look() {
        try {
            String now = shelf.mark();
            if (!last.isEmpty() && !now.equals(last)) {
                listeners.forEach(listener -> listener.sendEvent("changed", "shop"));
            }
            last = now;
        } catch (RuntimeException unreadable) {
            last = "";
        }
    }

    @Override
    public void close() {
        watch.shutdownNow();
        listeners.forEach(SseClient::close);
    }
}
