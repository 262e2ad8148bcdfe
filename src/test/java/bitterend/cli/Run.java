package bitterend.cli;

import bitterend.report.Tape;
import bitterend.report.page.Ink;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * One run of the command line inside the test, with its streams caught.
 *
 * @param code exit code
 * @param out what it printed as its result
 * @param err what it printed as progress and problems
 */
record Run(int code, String out, String err) {
    static Run of(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code =
                Main.run(args, new Terminal(stream(out), stream(err), StandardCharsets.UTF_8, Ink.PLAIN, Tape.DRAWN));
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }
}
