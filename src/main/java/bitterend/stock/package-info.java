/** Rope on the rack: reels, flaws, sound runs, and what a length on the rack is worth. */
@NullMarked
package bitterend.stock;

import org.jspecify.annotations.NullMarked;
