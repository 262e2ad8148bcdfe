/** What becomes of a quote after it is drawn up: kept, sent, revised, answered. */
@NullMarked
package bitterend.quoting.life;

import org.jspecify.annotations.NullMarked;
