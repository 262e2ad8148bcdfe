package bitterend.cli;

import bitterend.stock.LedgerException;
import bitterend.work.Booking;
import bitterend.work.CrashLog;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.time.Clock;
import java.util.regex.Pattern;

/** What a user sees when something went wrong that is not a problem of the data. Never a stack trace, unless asked for. */
final class Faults {
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]");

    private final Terminal terminal;
    private final TypedCommand typed;

    /** @param typed the command, for the file that a fault of the program is written into */
    Faults(Terminal terminal, TypedCommand typed) {
        this.terminal = terminal;
        this.typed = typed;
    }

    /** What is to be told when something was not booked, and by its kind what the command ends with. */
    static LedgerException of(Booking.Refused refused) {
        return switch (refused.kind()) {
            case NOT_POSSIBLE -> new LedgerException.Refused(refused.why());
            case CONTRADICTORY -> new LedgerException.Contradictory(refused.why());
            case STOCK_CHANGED -> new LedgerException.StockChanged(refused.why());
        };
    }

    /** An error of the machine rather than of the program: one sentence. */
    int report(Error fault, boolean debug) {
        if (debug) {
            fault.printStackTrace(terminal.err());
        }
        String what = fault instanceof OutOfMemoryError
                ? "there is not enough memory for this; give the program more with java -Xmx4g -jar bitterend.jar, or less to"
                        + " do at once"
                : fault instanceof StackOverflowError
                        ? "something in the files is nested too deeply"
                        : "the program cannot go on: " + fault;
        terminal.err().println("error: " + what);
        if (!(fault instanceof OutOfMemoryError)) {
            tellFile(fault);
        }
        return ExitCode.INTERNAL_ERROR.number();
    }

    /** A fault of the program has a file of its own; where no such file can be, the trace is the way. */
    private void tellFile(Throwable fault) {
        new CrashLog(typed.shop(), Clock.systemUTC())
                .write(typed.doing(), fault)
                .ifPresent(file ->
                        terminal.err().println("What is needed to see it again, without a name in it, is in " + file));
    }

    int report(Exception fault, boolean debug) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof Error error) {
                return report(error, debug);
            }
        }
        if (debug) {
            fault.printStackTrace(terminal.err());
        }
        if (fault instanceof UncheckedIOException wrapped && wrapped.getCause() != null) {
            return environment(wrapped.getCause());
        }
        if (fault instanceof IOException io) {
            return environment(io);
        }
        if (fault instanceof LedgerException ledger) {
            return ledger(ledger);
        }
        terminal.err().println("internal error: " + printable(fault.toString()));
        terminal.err()
                .println(
                        "This is a fault in the program, not in your files; nothing you have was changed. Run the command"
                                + " again with --debug and see \"When it breaks\" in DEVELOPERS.md.");
        tellFile(fault);
        return ExitCode.INTERNAL_ERROR.number();
    }

    private int ledger(LedgerException fault) {
        fault.sentence().lines().forEach(line -> terminal.err().println("error: " + printable(line)));
        if (fault instanceof LedgerException.StockChanged) {
            terminal.err().println("Nothing was booked.");
            return ExitCode.STOCK_CHANGED.number();
        }
        if (fault instanceof LedgerException.Contradictory) {
            return ExitCode.BAD_COMMAND_LINE.number();
        }
        return ExitCode.BAD_INPUT.number();
    }

    /** What went wrong with a file or the ledger, in one sentence. */
    static String sentence(Exception fault) {
        if (fault instanceof LedgerException ledger) {
            return ledger.sentence();
        }
        Throwable cause = fault instanceof UncheckedIOException ? fault.getCause() : fault;
        String what = cause instanceof FileSystemException files && files.getFile() != null
                ? files.getFile() + ": " + reason(files)
                : String.valueOf(cause == null ? fault.getMessage() : cause.getMessage());
        return "cannot read or write " + printable(what);
    }

    private int environment(IOException fault) {
        terminal.err().println("error: " + sentence(fault));
        terminal.err()
                .println(
                        "Put that right, such as by room on the disk, the right to write there, or another place; then run the"
                                + " command again.");
        return ExitCode.BAD_INPUT.number();
    }

    private static String reason(FileSystemException fault) {
        String reason = fault.getReason();
        return reason == null ? fault.getClass().getSimpleName().replace("Exception", "") : reason;
    }

    /** Without characters that would move the cursor of a terminal. */
    static String printable(String text) {
        return CONTROL.matcher(text).replaceAll("\uFFFD");
    }
}
