/** Quantities with exact arithmetic: lengths, diameters, masses, money; how they are read and printed. */
@NullMarked
package bitterend.measure;

import org.jspecify.annotations.NullMarked;
