/** A plan meets the ledger: posting what was cut, spoiled work, planning again in the middle of a day, tracing a piece. */
@NullMarked
package bitterend.day;

import org.jspecify.annotations.NullMarked;
