package bitterend.cli;

import bitterend.report.Tape;
import bitterend.report.page.Ink;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;

/**
 * One run of the command line inside the test, with its streams caught.
 *
 * @param code exit code
 * @param out what it printed as its result
 * @param err what it printed as progress and problems
 */
record Run(int code, String out, String err) {
    static Run of(String... args) {
        return answering(List.of(), args);
    }

    /** The same with somebody at the terminal who answers so, then no more; with nobody where there are no answers. */
    static Run answering(List<String> answers, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Iterator<String> next = answers.iterator();
        Terminal.Asking person = question -> {
            stream(err).print(question);
            return next.hasNext() ? next.next() : null;
        };
        int code = Main.run(
                args,
                new Terminal(
                        stream(out),
                        stream(err),
                        StandardCharsets.UTF_8,
                        Ink.PLAIN,
                        Tape.DRAWN,
                        answers.isEmpty() ? Terminal.Asking.NOBODY : person));
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** The same with every part of the plan in force behind what it printed: the screen has only what comes first. */
    Run withParts(String shop) {
        StringBuilder whole = new StringBuilder(out);
        for (String part : List.of("tables", "reasons", "money")) {
            whole.append(of("show", shop, part).out());
        }
        return new Run(code, whole.toString(), err);
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }
}
