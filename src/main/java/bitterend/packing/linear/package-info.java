/**
 * Linear programs of the engines, and what may be spent on solving them. {@code double} by nature; whoever takes a value
 * or a dual from here works it out again in whole numbers before anything rests on it.
 */
@NullMarked
package bitterend.packing.linear;

import org.jspecify.annotations.NullMarked;
