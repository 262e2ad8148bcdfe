package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Looks at what commands print: JSON is one document and nothing else, and no line of text is wider than a terminal. */
final class AnswersInForm {
    private static final int TERMINAL = 80;

    /** They take no system of units, or refuse it: no figure that they print depends on it. */
    private static final Set<String> ONE_SYSTEM = Set.of(
            "init",
            "import",
            "quote show",
            "quote list",
            "quote sent",
            "quote accept",
            "quote decline",
            "quote back",
            "stock open",
            "stock backup",
            "stock restore",
            "stock move-ledger",
            "stock export");

    /** A finding with its place is one line, which other programs pick out. */
    private static final Pattern FINDING = Pattern.compile("(error|warning|left out): .*");

    /** Its rows are those of a file. */
    private static final String EXPORT = "stock export";

    private final List<String> wrong = new ArrayList<>();

    /** What a command is asked with: units are not asked of what has no figure in them. */
    static List<String> forms(String command) {
        return ONE_SYSTEM.contains(command)
                ? List.of("", " --json")
                : List.of(" --units metric", " --units imperial", " --json");
    }

    /** Looks at an answer of a shop. */
    void look(String words, Run run, DayInTheShop day) {
        if (run.code() != 0 && run.code() != 4) {
            wrong.add(words + " ends with " + run.code() + ": " + run.err());
        }
        if (!words.endsWith(" --json") && !words.startsWith(EXPORT)) {
            narrow(words, named(run.out(), day));
        } else if (words.endsWith(" --json") && !isOneDocument(run.out())) {
            wrong.add(words + " prints no JSON, or more: " + run.out());
        }
        narrow(words + ", beside its result", named(run.err(), day));
    }

    private static String named(String text, DayInTheShop day) {
        return text.replace(day.shop().toString(), "SHOP").replace(day.out().toString(), "OUT");
    }

    static boolean isOneDocument(String text) {
        try {
            return new ObjectMapper()
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .readTree(text)
                    .isObject();
        } catch (IOException none) {
            return false;
        }
    }

    /** Looks at the width of every line. */
    void narrow(String what, String text) {
        text.lines()
                .filter(line -> line.codePointCount(0, line.length()) > TERMINAL)
                .filter(line -> !FINDING.matcher(line).matches())
                .forEach(line -> wrong.add(what + ": " + line));
    }

    List<String> wrong() {
        return wrong;
    }

    void assertRight() {
        assertEquals("", String.join("\n", wrong));
    }
}
