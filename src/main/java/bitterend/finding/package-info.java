/** Located problems: what is wrong, in which file, at which row or pointer, and what was expected instead. */
@NullMarked
package bitterend.finding;

import org.jspecify.annotations.NullMarked;
