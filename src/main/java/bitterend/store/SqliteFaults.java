package bitterend.store;

import bitterend.stock.LedgerException;
import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What the database could not do, in a sentence for the user. */
final class SqliteFaults {
    private SqliteFaults() {}

    static LedgerException told(Path file, SQLException fault) {
        SQLiteErrorCode code =
                fault instanceof SQLiteException sqlite ? sqlite.getResultCode() : SQLiteErrorCode.UNKNOWN_ERROR;
        String name = code.name();
        if (name.startsWith("SQLITE_CORRUPT") || name.startsWith("SQLITE_NOTADB")) {
            return new LedgerException.Unreadable(
                    file + " is damaged or no ledger; nothing was changed. Put it aside and use a backup", fault);
        }
        if (name.startsWith("SQLITE_FULL")) {
            return unwritable(file, "the disk is full", fault);
        }
        if (name.startsWith("SQLITE_READONLY") || name.startsWith("SQLITE_PERM")) {
            return unwritable(file, "the file or its folder is read-only", fault);
        }
        if (name.startsWith("SQLITE_CANTOPEN")) {
            return unwritable(file, "it cannot be opened; is the folder there, and may it be written?", fault);
        }
        if (name.startsWith("SQLITE_BUSY") || name.startsWith("SQLITE_LOCKED")) {
            return unwritable(file, "another program has kept it busy for a minute", fault);
        }
        if (name.startsWith("SQLITE_IOERR")) {
            return unwritable(file, "the disk refuses (" + name + ")", fault);
        }
        return new LedgerException(file + ": " + fault.getMessage(), fault);
    }

    private static LedgerException unwritable(Path file, String why, SQLException fault) {
        return new LedgerException.Unwritable(file + ": nothing was booked, " + why, fault);
    }
}
