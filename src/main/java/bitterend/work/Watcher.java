package bitterend.work;

import bitterend.packing.Effort;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Whoever waits for an answer that takes its time.
 *
 * @param stop asked often; once true the best answer so far is given
 * @param progress told of every better answer
 */
public record Watcher(BooleanSupplier stop, Consumer<Effort.Progress> progress) {
    /** Nobody, who waits to the end. */
    public static final Watcher NOBODY = new Watcher(() -> false, progress -> {});

    /** One who may stop it, and wants to be told nothing. */
    public static Watcher who(BooleanSupplier stop) {
        return new Watcher(stop, progress -> {});
    }
}
