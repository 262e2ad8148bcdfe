/** The verbs of quotes that are kept: drawn up, sent, revised, answered, held against what was cut. */
@NullMarked
package bitterend.work.quotes;

import org.jspecify.annotations.NullMarked;
