/** Starts that honour every hard rule within milliseconds: best fit by price, and reels filled one after the other. */
@NullMarked
package bitterend.packing.greedy;

import org.jspecify.annotations.NullMarked;
