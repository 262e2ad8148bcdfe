package bitterend.cli;

import bitterend.report.Tape;
import bitterend.report.page.Ink;
import java.io.Console;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import org.jspecify.annotations.Nullable;

/**
 * Where a command writes, and what the reader's terminal can show.
 *
 * @param out results
 * @param err progress and problems
 * @param charset what both are written in
 * @param ink colour or none
 * @param tape the characters that reels are drawn with
 * @param asking where a person answers
 */
record Terminal(PrintStream out, PrintStream err, Charset charset, Ink ink, Tape tape, Asking asking) {
    /** Somebody who can be asked. */
    @FunctionalInterface
    interface Asking {
        /** Where output goes into a pipe or a file nobody can. */
        Asking NOBODY = question -> null;

        /** The answer; null when none will come. */
        @Nullable
        String ask(String question);
    }

    /** Where nobody can be asked. */
    Terminal(PrintStream out, PrintStream err, Charset charset, Ink ink, Tape tape) {
        this(out, err, charset, ink, tape, Asking.NOBODY);
    }

    /** The terminal or pipe this program was started on: UTF-8 into pipes and files, the terminal's own charset else. */
    static Terminal standard() {
        Console console = console();
        Charset charset = charset(console != null, System.getProperties());
        Ink ink = isColourful(console, System.getenv()) ? Ink.TERMINAL : Ink.PLAIN;
        return new Terminal(
                new PrintStream(System.out, true, charset),
                new PrintStream(System.err, true, charset),
                charset,
                ink,
                tape(charset),
                console == null ? Asking.NOBODY : question -> console.readLine("%s", question));
    }

    /** Nothing in a pipe; from Java 22 on a console is given there too, which then says itself that it is no terminal. */
    @SuppressWarnings("SystemConsoleNull")
    private static @Nullable Console console() {
        Console console = System.console();
        if (console == null) {
            return null;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console) ? console : null;
        } catch (ReflectiveOperationException older) {
            return console;
        }
    }

    /**
     * What the terminal shows, as Java names it: since 19 by another property than before. Into pipes and files always UTF-8.
     *
     * @param onTerminal whether a person looks at it
     */
    static Charset charset(boolean onTerminal, Properties properties) {
        String said = properties.getProperty("stdout.encoding", properties.getProperty("sun.stdout.encoding", ""));
        if (!onTerminal) {
            return StandardCharsets.UTF_8;
        }
        try {
            return Charset.forName(said);
        } catch (IllegalArgumentException unknown) {
            return StandardCharsets.UTF_8;
        }
    }

    /** Rope drawn in lines where the terminal has them, else with what every keyboard has. */
    static Tape tape(Charset charset) {
        return charset.newEncoder().canEncode("\u2502\u253c\u2550\u2506\u2573\u2534") ? Tape.DRAWN : Tape.TYPED;
    }

    /** Colour only on a terminal that can show it, and never against the reader's wish (https://no-color.org). */
    static boolean isColourful(@Nullable Console console, Map<String, String> environment) {
        String kind = environment.getOrDefault("TERM", "");
        boolean able = !kind.isEmpty() && !kind.equals("dumb");
        return console != null
                && able
                && environment.getOrDefault("NO_COLOR", "").isEmpty();
    }
}
