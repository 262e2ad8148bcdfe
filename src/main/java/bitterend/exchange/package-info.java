/**
 * The files of a shop folder, read with every problem located, and the documents written for people and programs. With
 * {@code exchange.form} the only package that knows JSON and CSV libraries.
 */
@NullMarked
package bitterend.exchange;

import org.jspecify.annotations.NullMarked;
