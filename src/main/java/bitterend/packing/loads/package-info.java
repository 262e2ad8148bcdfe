/**
 * The load engine: single reels and their runs, with every load of a run that can be cut worked out exactly. It sees what
 * patterns of kinds of reels cannot: matched sets that take one lot or one reel, orders whose splitting over lots is paid
 * for, and which work stays undone. A bound is branched on whether a reel is used, how far a run is loaded, which lot a
 * set takes, and on which lots an order lies; what it proves is a tree with whole numbers at its leaves.
 *
 * <p>{@code double} is for the linear program and for the choice of where to branch; every bound is worked out in whole
 * numbers from rounded duals.
 */
@NullMarked
package bitterend.packing.loads;

import org.jspecify.annotations.NullMarked;
