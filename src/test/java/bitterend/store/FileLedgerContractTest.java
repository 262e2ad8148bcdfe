package bitterend.store;

import bitterend.stock.LedgerPlace;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;

/** The ledger as one file. */
final class FileLedgerContractTest extends LedgerContract {
    @Override
    LedgerPlace newPlace(Path at, Clock clock) {
        try {
            return new SqliteLedgerPlace(Files.createDirectories(at), clock);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    @Override
    LedgerPlace newPlaceOfTheSame(Clock clock) {
        return new SqliteLedgerPlace(folder, clock);
    }

    @Override
    Connection behind() throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(SqliteLedger.NAME));
    }

    @Override
    String hostile() {
        return "'); DROP TABLE movement; -- \"\u0000\n\t\u202e\ud83e\uddf5 \\ % _ <b>";
    }
}
