package bitterend.store;

import bitterend.stock.LedgerException;
import java.sql.SQLException;

/** A row that says what no row can say. */
final class Unreadable {
    private Unreadable() {}

    /** Reads a row. */
    @FunctionalInterface
    interface Reading<T> {
        T read() throws SQLException;
    }

    /**
     * What a row says.
     *
     * @param place which row, for people: {@code movement 12}
     * @throws LedgerException.Unreadable when it cannot be what it says
     */
    static <T> T unless(String place, Reading<T> row) throws SQLException {
        try {
            return row.read();
        } catch (LedgerException | Sql.Failed told) {
            throw told;
        } catch (RuntimeException nonsense) {
            throw new LedgerException.Unreadable(
                    "the ledger is damaged: " + place + " cannot be read (" + nonsense.getMessage()
                            + "). Put it aside, and use a backup; how: bitterend stock restore --help",
                    nonsense);
        }
    }
}
