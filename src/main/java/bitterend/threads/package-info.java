/** Work that several threads do at once, with the same outcome as one. */
@NullMarked
package bitterend.threads;

import org.jspecify.annotations.NullMarked;
