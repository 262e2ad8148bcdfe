/** The page in the browser: a second front on the same work as the command line, and the only HTTP. */
@NullMarked
package bitterend.serve;

import org.jspecify.annotations.NullMarked;
