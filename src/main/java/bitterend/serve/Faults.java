package bitterend.serve;

import bitterend.work.CrashLog;
import io.javalin.http.Context;
import java.io.PrintStream;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Faults that no screen foresaw, a line each where the program was started: the page shows a number by which the line is found,
 * and no more of it. A line says which page was asked for, or what was worked out behind one, and where the program was; nothing of what was typed.
 */
final class Faults {
    private static final String OURS = "bitterend.";

    private final PrintStream out;
    private final Clock clock;
    private final CrashLog log;

    /** @param log where more of a fault of the program itself is written than a line holds */
    Faults(PrintStream out, Clock clock, CrashLog log) {
        this.out = out;
        this.clock = clock;
        this.log = log;
    }

    /** Writes a fault of a page down; the sentence for who stands before it. */
    String noted(Context request, Throwable fault) {
        return noted(request.method() + " " + Sent.oneLine(request.path()), fault);
    }

    /**
     * Writes a fault down; the sentence for who asked for it.
     *
     * @param what what was being done
     */
    String noted(String what, Throwable fault) {
        String number =
                Keys.random().replaceAll("[^A-Za-z0-9]", "").substring(0, 6).toLowerCase(Locale.ROOT);
        String file = Wrong.isOfTheProgram(fault)
                ? log.write(new CrashLog.Doing("serve " + what, Long.toString(PlanRun.SEED), List.of()), fault)
                        .map(written -> "; more of it, without a name, in " + written)
                        .orElse("")
                : "";
        synchronized (out) {
            out.println(clock.instant().truncatedTo(ChronoUnit.SECONDS) + " fault " + number + ": " + what + ": "
                    + kinds(fault) + file);
            out.flush();
        }
        return Wrong.sentence(fault) + " Where the program was started a line with the number " + number
                + " says more.";
    }

    /** What it is and where, down to what it came of. */
    private static String kinds(Throwable fault) {
        StringBuilder line = new StringBuilder();
        for (Throwable each = fault; each != null; each = each.getCause()) {
            line.append(line.length() == 0 ? "" : ", of ")
                    .append(each.getClass().getName())
                    .append(Arrays.stream(each.getStackTrace())
                            .filter(frame -> frame.getClassName().startsWith(OURS))
                            .findFirst()
                            .map(frame -> " at " + frame)
                            .orElse(""));
        }
        return line.toString();
    }
}
