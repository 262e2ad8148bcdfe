package bitterend.packing;

import bitterend.measure.Cost;
import java.time.Duration;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * How hard an engine may try.
 *
 * @param time wall-clock limit
 * @param work limit in units of the engine's own work, for results that repeat; {@link Long#MAX_VALUE} for none
 * @param seed seed of every random choice
 * @param threads how many groups of ropes may be packed side by side
 * @param cancelled asked often; once true the best answer so far is returned
 * @param progress told of every better answer
 */
public record Effort(
        Duration time, long work, long seed, int threads, BooleanSupplier cancelled, Consumer<Progress> progress) {

    /**
     * Where an engine stands.
     *
     * @param ropes the group of ropes in words
     * @param cost the best cost so far
     * @param bound the best bound so far; zero when none is known
     * @param unplanned pieces not planned so far
     */
    public record Progress(String ropes, Cost cost, Cost bound, int unplanned) {}

    /** So much time, one thread, seed 0, no one listening. */
    public static Effort of(Duration time) {
        return new Effort(time, Long.MAX_VALUE, 0, 1, () -> false, progress -> {});
    }
}
