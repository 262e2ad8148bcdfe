package bitterend.cli;

import bitterend.report.Tape;
import bitterend.report.page.Ink;
import java.io.Console;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
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
        Charset charset = charset(console);
        Ink ink = isColourful(console, System.getenv()) ? Ink.TERMINAL : Ink.PLAIN;
        return new Terminal(
                new PrintStream(System.out, true, charset),
                new PrintStream(System.err, true, charset),
                charset,
                ink,
                charset.newEncoder().canEncode("\u2502\u253c\u2550\u2506\u2573\u2534") ? Tape.DRAWN : Tape.TYPED,
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

    private static Charset charset(@Nullable Console console) {
        String native_ = System.getProperty("sun.stdout.encoding", "");
        if (console == null || !Charset.isSupported(native_.isEmpty() ? "?" : native_)) {
            return StandardCharsets.UTF_8;
        }
        return Charset.forName(native_);
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
