/** Published cases and random jobs, shared out. */
@NullMarked
package bitterend.quoting.sharing;

import org.jspecify.annotations.NullMarked;
