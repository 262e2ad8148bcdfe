/** Reels as suppliers offer them and as they are on their way: what can be had, when, and what is paid for it. */
@NullMarked
package bitterend.market;

import org.jspecify.annotations.NullMarked;
