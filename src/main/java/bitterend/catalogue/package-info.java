/** What a shop knows of its ropes, ends, eyes and thimbles. */
@NullMarked
package bitterend.catalogue;

import org.jspecify.annotations.NullMarked;
