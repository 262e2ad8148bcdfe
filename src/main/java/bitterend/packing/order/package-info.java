/** The order of cutting on a reel, the running marks, and the book of every millimetre. */
@NullMarked
package bitterend.packing.order;

import org.jspecify.annotations.NullMarked;
