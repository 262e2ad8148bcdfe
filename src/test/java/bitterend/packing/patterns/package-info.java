/** Tests of the pattern engine. */
@NullMarked
package bitterend.packing.patterns;

import org.jspecify.annotations.NullMarked;
