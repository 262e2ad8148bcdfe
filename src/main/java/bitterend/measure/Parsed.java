package bitterend.measure;

import java.util.Optional;
import java.util.function.Function;

/**
 * What reading a text gave: a value, or what was expected instead. Never an exception: people mistype.
 *
 * @param <T> what was to be read
 */
public sealed interface Parsed<T> {
    /**
     * The text was understood.
     *
     * @param content what it says
     * @param <T> what was read
     */
    record Value<T>(T content) implements Parsed<T> {}

    /**
     * The text was not understood.
     *
     * @param expected what would have been right, to follow the words "expected"
     * @param <T> what was to be read
     */
    record Refused<T>(String expected) implements Parsed<T> {}

    static <T> Parsed<T> of(T content) {
        return new Value<>(content);
    }

    static <T> Parsed<T> refused(String expected) {
        return new Refused<>(expected);
    }

    /** The value, if the text was understood. */
    default Optional<T> value() {
        return this instanceof Value<T> read ? Optional.of(read.content()) : Optional.empty();
    }

    /** What was expected, if the text was not understood. */
    default Optional<String> refusal() {
        return this instanceof Refused<T> refused ? Optional.of(refused.expected()) : Optional.empty();
    }

    /** Reads on from a value; a refusal stays what it is. */
    default <R> Parsed<R> then(Function<? super T, Parsed<R>> next) {
        if (this instanceof Value<T> read) {
            return next.apply(read.content());
        }
        return new Refused<>(refusal().orElseThrow());
    }

    /** Converts a value; a refusal stays what it is. */
    default <R> Parsed<R> map(Function<? super T, R> change) {
        return then(content -> of(change.apply(content)));
    }
}
