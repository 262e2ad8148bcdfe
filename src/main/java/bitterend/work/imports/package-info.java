/** A loft's own sheets brought into the files of its shop: looked at first, then taken over, and taken back whole. */
@NullMarked
package bitterend.work.imports;

import org.jspecify.annotations.NullMarked;
