/**
 * A day's rope and work as numbers, a packing of them that can be changed piece by piece, and what makes use of that: ruin
 * and recreate for the work left undone, and every way to cut a few pieces.
 */
@NullMarked
package bitterend.packing.bench;

import org.jspecify.annotations.NullMarked;
