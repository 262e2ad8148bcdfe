/** What the command line and the page in the browser show alike: what the work answers, put together for a reader. */
@NullMarked
package bitterend.front;

import org.jspecify.annotations.NullMarked;
