/** Which reels to buy: for the orders in hand, and for work like that of the past. A packer is handed in. */
@NullMarked
package bitterend.buying;

import org.jspecify.annotations.NullMarked;
