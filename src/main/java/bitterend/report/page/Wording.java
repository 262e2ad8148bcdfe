package bitterend.report.page;

import bitterend.finding.Unseen;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text made fit for a page: measured, wrapped, and free of characters that would move the cursor. */
public final class Wording {
    private static final Pattern WHITE_SPACE = Pattern.compile("\\s+");

    /** A blank that no line ends with. */
    private static final char HELD = '\u00a0';

    /** The blank between a figure and its unit, between whole inches and sixteenths, between feet and inches. */
    private static final Pattern WITHIN_A_FIGURE =
            Pattern.compile("(?<=[0-9]) (?=(?:mm|m|ft|in|kg|lb|%|[A-Z]{3})(?![\\w-]))"
                    + "|(?<=[0-9]) (?=[0-9]{1,2}/[0-9]{1,2}(?![\\w/]))"
                    + "|(?<=[0-9][ \u00a0]ft) (?=[0-9])"
                    + "|(?<=[0-9]') (?=[0-9])");

    /** A number of a piece, an order or a reel, a day, a figure with sixteenths, a rope's id in capitals: read in one glance. */
    private static final Pattern CODE = Pattern.compile("(?<!\\S)(?=\\S*[0-9])(?=\\S*[-/])\\S{1,80}(?!\\S)"
            + "|(?<!\\S)\\(?\\p{Lu}{1,6}-\\p{Lu}{1,6}[,.;:)]*(?!\\S)");

    /**
     * A command within a sentence, up to the words behind it: whoever prints one puts a sign or the end of the sentence after
     * it. It stays on one line, however long, so that it can be pasted.
     */
    private static final Pattern COMMAND = Pattern.compile(
            "\\bbitterend [a-z]+(?: (?:\"[^\"]*\"|'[^']*'|[^\\s\"';,()]*[^\\s\"';,().:]))+(?=[;,.():]?(?:\\s|$))");

    private static final String PROGRAM = "bitterend" + HELD;

    private Wording() {}

    /**
     * A part of a text for a page that breaks lines by itself.
     *
     * @param text the words
     * @param whole whether no line ends inside it
     */
    public record Part(String text, boolean whole) {}

    /** The text, its figures held together, in parts: codes with a hyphen, at which a browser would break them, stay whole. */
    public static List<Part> parts(String text) {
        List<Part> parts = new ArrayList<>();
        String held = held(text);
        Matcher codes = CODE.matcher(held);
        int at = 0;
        while (codes.find()) {
            if (codes.start() > at) {
                parts.add(new Part(held.substring(at, codes.start()), false));
            }
            parts.add(new Part(codes.group(), true));
            at = codes.end();
        }
        if (at < held.length()) {
            parts.add(new Part(held.substring(at), false));
        }
        return parts;
    }

    /** The text with its figures held together: no line ends between a number and its unit. */
    public static String held(String text) {
        return WITHIN_A_FIGURE.matcher(text).replaceAll(String.valueOf(HELD));
    }

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
        for (String word : words(text)) {
            for (String part : parts(word, width)) {
                if (!line.isEmpty() && width(line.toString()) + 1 + width(part) > width) {
                    lines.add(line.toString().replace(HELD, ' '));
                    line.setLength(0);
                }
                line.append(line.isEmpty() ? "" : " ").append(part);
            }
        }
        lines.add(line.toString().replace(HELD, ' '));
        return lines;
    }

    /** How wide the longest word is, a figure and its unit being one. */
    static int longestWord(String text) {
        return Arrays.stream(words(text)).mapToInt(Wording::width).max().orElse(0);
    }

    private static String[] words(String text) {
        return WHITE_SPACE.split(whole(held(printable(text).strip())));
    }

    /** A line as it is said beside a page: no wider than one, broken between words, further lines set in by two more. */
    public static String sentence(String line) {
        int indent = line.length() - line.stripLeading().length();
        return " ".repeat(indent)
                + String.join("\n" + " ".repeat(indent + 2), wrapped(line.strip(), Document.WIDTH - indent - 2));
    }

    private static String whole(String text) {
        return COMMAND.matcher(text)
                .replaceAll(found -> Matcher.quoteReplacement(found.group().replace(' ', HELD)));
    }

    private static List<String> parts(String word, int width) {
        if (word.startsWith(PROGRAM)) {
            return List.of(word);
        }
        if (width(word) > width && word.indexOf(HELD) >= 0) {
            return Arrays.stream(word.split(String.valueOf(HELD)))
                    .flatMap(each -> parts(each, width).stream())
                    .toList();
        }
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
