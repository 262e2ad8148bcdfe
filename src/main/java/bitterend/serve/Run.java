package bitterend.serve;

import bitterend.front.ProgressWords;
import bitterend.measure.MoneyText;
import bitterend.work.Watcher;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Something that is worked out while people look on: how far it is, a line for each part of it, and a stop that keeps the best
 * so far.
 *
 * @param <T> what comes of it
 */
final class Run<T> {
    private final String id = Keys.random();
    private final AtomicBoolean stop = new AtomicBoolean();
    private final Map<String, String> lines = new LinkedHashMap<>();
    private @Nullable T made;
    private String fault = "";

    /** What is worked out; it ends early when it is told to. */
    interface Work<T> {
        T work(Ear ear);
    }

    /**
     * Who hears how far it is.
     *
     * @param stop asked often; once true the best so far is wanted
     * @param told a part of it by name, and how far that is
     */
    record Ear(BooleanSupplier stop, BiConsumer<String, String> told) {
        /** The same for engines. */
        Watcher watcher(MoneyText money) {
            return new Watcher(stop, best -> told.accept(best.ropes(), ProgressWords.of(best, money)));
        }
    }

    /**
     * Works it out, to its end.
     *
     * @param noted notes what went wrong; the sentence for who looks on
     */
    void work(Work<T> work, Function<Throwable, String> noted) {
        try {
            T all = work.work(new Ear(stop::get, this::told));
            synchronized (this) {
                made = all;
            }
        } catch (RuntimeException | Error wrong) {
            String sentence = noted.apply(wrong);
            synchronized (this) {
                fault = sentence;
            }
        }
    }

    private synchronized void told(String part, String line) {
        lines.put(part, line);
    }

    /** What a page calls it that shows it: nobody stops or keeps what he has not looked at. */
    String id() {
        return id;
    }

    /** The best so far is good enough. */
    void stop() {
        stop.set(true);
    }

    /** How far it is. */
    synchronized List<String> lines() {
        return new ArrayList<>(lines.values());
    }

    /** What came of it; nothing before its end. */
    synchronized Optional<T> made() {
        return Optional.ofNullable(made);
    }

    /** What kept it from its end; empty for nothing. */
    synchronized String fault() {
        return fault;
    }

    synchronized boolean isOver() {
        return made != null || !fault.isEmpty();
    }
}
