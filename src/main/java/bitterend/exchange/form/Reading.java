package bitterend.exchange.form;

import bitterend.measure.Parsed;

/**
 * How the text of one field is understood.
 *
 * @param <T> what it becomes
 */
@FunctionalInterface
public interface Reading<T> {
    /** The value, or what was expected; the text is stripped and not empty. */
    Parsed<T> read(String text);
}
