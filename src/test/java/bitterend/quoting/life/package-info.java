/** Revisions of quotes, held against each other by hand. */
@NullMarked
package bitterend.quoting.life;

import org.jspecify.annotations.NullMarked;
