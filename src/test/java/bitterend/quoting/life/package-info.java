/** Prices of requests, built up by hand. */
@NullMarked
package bitterend.quoting.life;

import org.jspecify.annotations.NullMarked;
