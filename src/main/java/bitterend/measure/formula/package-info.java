/** Arithmetic on lengths and numbers that a shop writes into its files: checked when it is read, exact when it is worked out. */
@NullMarked
package bitterend.measure.formula;

import org.jspecify.annotations.NullMarked;
