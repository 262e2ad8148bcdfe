/** Prices of requests, built up by hand. */
@NullMarked
package bitterend.quoting;

import org.jspecify.annotations.NullMarked;
