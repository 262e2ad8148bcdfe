/** Who caused how much of the rope drawn: shares by dual prices on new reels, and stable splits, all in exact numbers. */
@NullMarked
package bitterend.quoting.sharing;

import org.jspecify.annotations.NullMarked;
