/**
 * A day's rope and work as numbers, the state of the rack that can be changed piece by piece, and what makes use of that:
 * ruin and recreate for the work left undone, every way to cut a few pieces, and the mending of lots.
 */
@NullMarked
package bitterend.packing.bench;

import org.jspecify.annotations.NullMarked;
