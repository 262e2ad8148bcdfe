/** The load of a run as a row of cells: what is worked out for every exact load, piece after piece. */
@NullMarked
package bitterend.packing.cells;

import org.jspecify.annotations.NullMarked;
