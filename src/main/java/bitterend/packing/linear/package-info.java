/**
 * Linear programs of the engines, behind {@link Simplex}. {@code double} by nature; whoever takes a value or a dual from
 * here works it out again in whole numbers before anything rests on it.
 */
@NullMarked
package bitterend.packing.linear;

import org.jspecify.annotations.NullMarked;
