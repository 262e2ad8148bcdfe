/** A shop in steady state, lived through in many futures drawn from its past: which reels suit it, and when to order them. */
@NullMarked
package bitterend.buying.steady;

import org.jspecify.annotations.NullMarked;
