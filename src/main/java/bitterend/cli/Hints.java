package bitterend.cli;

import bitterend.finding.CommandWord;
import java.io.PrintStream;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Commands within printed words, so that each can be pasted: the program by the name that it was called by, and the shop that
 * was typed. JSON is left as it is.
 */
final class Hints {
    /** What the launcher says it was called by. */
    private static final String CALLED = "bitterend.called";

    private static final Pattern SHOP = Pattern.compile("(bitterend (?:(?:stock|orders|quote) )?[a-z-]+) SHOP\\b");
    private static final Pattern PROGRAM =
            Pattern.compile("(?<![\\w./-])bitterend (?=(?:" + String.join("|", Main.commands()) + ")\\b)");

    private final String program;
    private String shop = "";

    /** Hints to be pasted where this program was started. */
    Hints() {
        this(called());
    }

    /** {@code program} is how it was called. */
    Hints(String program) {
        this.program = program;
    }

    /** The launcher by its path, a jar by the command that starts it; by its own name where neither is known. */
    private static String called() {
        String launcher = System.getProperty(CALLED, "");
        String jar = System.getProperty("java.class.path", "");
        if (!launcher.isEmpty()) {
            return CommandWord.of(launcher);
        }
        return jar.endsWith("bitterend.jar") && !jar.contains(java.io.File.pathSeparator)
                ? "java -jar " + CommandWord.of(jar)
                : "bitterend";
    }

    /** The shop folder as it was typed; empty where none was. */
    void of(String typed) {
        shop = typed;
    }

    /** The words with their commands as they can be typed here. */
    String typed(String words) {
        if (words.startsWith("{")) {
            return words;
        }
        String here = shop.isEmpty()
                ? words
                : SHOP.matcher(words).replaceAll("$1 " + Matcher.quoteReplacement(CommandWord.of(shop)));
        return PROGRAM.matcher(here).replaceAll(Matcher.quoteReplacement(program) + " ");
    }

    /** The terminal, whatever is printed on it passing through here. */
    Terminal over(Terminal terminal) {
        return new Terminal(
                over(terminal.out(), terminal),
                over(terminal.err(), terminal),
                terminal.charset(),
                terminal.ink(),
                terminal.tape(),
                terminal.asking());
    }

    private PrintStream over(PrintStream stream, Terminal terminal) {
        return new PrintStream(stream, true, terminal.charset()) {
            @Override
            public void print(String words) {
                stream.print(typed(words));
            }

            @Override
            public void println(String words) {
                stream.println(typed(words));
            }
        };
    }
}
