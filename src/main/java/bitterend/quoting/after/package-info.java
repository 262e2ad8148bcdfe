/** What a job really took against what was quoted for it, item by item, and what many jobs teach the next quote. */
@NullMarked
package bitterend.quoting.after;

import org.jspecify.annotations.NullMarked;
