package bitterend.store;

import bitterend.stock.LedgerException;
import bitterend.stock.LoftAddress;
import java.sql.SQLException;

/** What the server could not do, in a sentence for the user. */
final class ServerFaults {
    private ServerFaults() {}

    /** The same of what was to be booked: then nothing was. */
    static LedgerException unwritten(LoftAddress at, SQLException fault) {
        LedgerException told = told(at, fault);
        return told instanceof LedgerException.Unwritable
                ? new LedgerException.Unwritable(
                        at.text() + ": nothing was booked, "
                                + told.sentence().substring(at.text().length() + 2),
                        fault)
                : told;
    }

    static LedgerException told(LoftAddress at, SQLException fault) {
        String state = state(fault);
        String who = "the server at " + at.serverText();
        return switch (state) {
            case "28000", "28P01" -> unwritable(at, who + " refuses the user or the password" + password(), fault);
            case "08004" -> unwritable(at, who + " wants a password or another way to be let in" + password(), fault);
            case "3D000" -> unwritable(at, who + " has no database " + at.database(), fault);
            case "42501" -> unwritable(
                    at, who + " does not give this user the right (" + first(fault) + "); its owner can", fault);
            case "55P03" -> unwritable(at, "another program has kept the loft busy for a minute", fault);
            case "40001", "40P01" -> unwritable(at, "another program was quicker; do it once more", fault);
            case "53100" -> unwritable(at, "the disk of the server is full", fault);
            case "53300" -> unwritable(at, who + " has no room for one more connection; try again soon", fault);
            case "25006" -> unwritable(at, who + " is a copy that can only be read", fault);
            case "25P03" -> unwritable(at, "the program rested for a minute in the middle and was given up", fault);
            case "22021", "22P05" -> new LedgerException.Refused(
                    at.text() + ": nothing was booked, a text has a character that the server cannot keep");
            case "42P01", "42703", "3F000" -> new LedgerException.Unreadable(
                    at.text() + " is damaged or no ledger (" + first(fault) + "); put a copy of the server's back",
                    fault);
            default -> other(at, who, fault);
        };
    }

    private static LedgerException other(LoftAddress at, String who, SQLException fault) {
        if (isLost(fault)) {
            String starting =
                    state(fault).startsWith("57P") ? who + " is being stopped or started" : who + " does not answer";
            return unwritable(at, starting + " (" + first(fault) + ")", fault);
        }
        return new LedgerException(at.text() + ": " + first(fault), fault);
    }

    private static String password() {
        return ", see \"Several lofts on one server\" in docs/stock.md";
    }

    /** Whether the server went away, or never was there. */
    static boolean isLost(SQLException fault) {
        return state(fault).startsWith("08") || state(fault).startsWith("57P");
    }

    /** Whether somebody else made the same loft at the same moment. */
    static boolean isThere(SQLException fault) {
        return state(fault).equals("42P06")
                || state(fault).equals("42P07")
                || state(fault).equals("23505");
    }

    private static String state(SQLException fault) {
        return String.valueOf(fault.getSQLState());
    }

    /** What the server or its driver says, in one line; never what was bound to a statement. */
    private static String first(SQLException fault) {
        return String.valueOf(fault.getMessage()).lines().findFirst().orElse("").replaceFirst("^(FATAL|ERROR): ", "");
    }

    private static LedgerException unwritable(LoftAddress at, String why, SQLException fault) {
        return new LedgerException.Unwritable(at.text() + ": " + why, fault);
    }
}
