package bitterend.report.page;

import bitterend.finding.Unseen;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Text made fit for a page: measured, wrapped, and free of characters that would move the cursor. */
public final class Wording {
    private static final Pattern WHITE_SPACE = Pattern.compile("\\s+");

    private Wording() {}

    /** The text with every character that nobody sees shown, so that a name from a file cannot redraw the terminal. */
    public static String printable(String text) {
        return Unseen.shown(text);
    }

    public static int width(String text) {
        return text.codePointCount(0, text.length());
    }

    public static String left(String text, int width) {
        return text + " ".repeat(Math.max(0, width - width(text)));
    }

    public static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - width(text))) + text;
    }

    /** Lines no wider than {@code width}; a word that is wider than that is broken. At least one line. */
    public static List<String> wrapped(String text, int width) {
        if (width < 1) {
            throw new IllegalArgumentException("width " + width);
        }
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : WHITE_SPACE.split(printable(text).strip())) {
            for (String part : parts(word, width)) {
                if (!line.isEmpty() && width(line.toString()) + 1 + width(part) > width) {
                    lines.add(line.toString());
                    line.setLength(0);
                }
                line.append(line.isEmpty() ? "" : " ").append(part);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    private static List<String> parts(String word, int width) {
        List<String> parts = new ArrayList<>();
        String rest = word;
        while (width(rest) > width) {
            int end = rest.offsetByCodePoints(0, width);
            parts.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        parts.add(rest);
        return parts;
    }
}
