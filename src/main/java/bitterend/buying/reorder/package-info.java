/** Which ropes are to be ordered again now: of whom, how many reels, by when, bundled by supplier. */
@NullMarked
package bitterend.buying.reorder;

import org.jspecify.annotations.NullMarked;
