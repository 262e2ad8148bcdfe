/** What an engine may still spend: steps, time by the clock, and until it is told to stop. */
@NullMarked
package bitterend.packing.effort;

import org.jspecify.annotations.NullMarked;
