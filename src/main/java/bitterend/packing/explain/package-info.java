/** Answers to the questions asked of a plan: why a piece is where it is, what it would cost elsewhere, why it is nowhere. */
@NullMarked
package bitterend.packing.explain;

import org.jspecify.annotations.NullMarked;
