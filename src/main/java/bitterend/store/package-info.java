/** The stock ledger as one SQLite file; the only room that speaks to a database. */
@NullMarked
package bitterend.store;

import org.jspecify.annotations.NullMarked;
