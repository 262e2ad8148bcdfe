/**
 * The bench as the constraint solver sees it: pieces to cut, runs of reels, matched sets. The only mutable values of the
 * project live here: the run of a piece, which the solver sets.
 */
@NullMarked
package bitterend.packing.model;

import org.jspecify.annotations.NullMarked;
