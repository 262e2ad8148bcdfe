package bitterend.finding;

import java.util.List;
import java.util.Locale;

/**
 * Characters that nobody sees and that change what is seen: control characters, line separators, marks that turn the
 * direction of writing, and others of no width. A name that carries one can redraw a terminal or turn the figures behind
 * it; so it is told where it is read and shown as its number where it is printed.
 */
public final class Unseen {
    private Unseen() {}

    /** The text with every such character shown as {@code [U+202E]}. */
    public static String shown(String text) {
        return shown(text, "");
    }

    /** The same, a page's own line feeds left alone. */
    public static String shownOnPage(String page) {
        return shown(page, "\n");
    }

    /** The same in a cell of a table, tabs and line breaks left alone. */
    public static String shownInCell(String text) {
        return shown(text, "\n\r\t");
    }

    /** The text without such characters, blanks of other widths as plain ones: for marks that are compared with one another. */
    public static String plain(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        text.codePoints()
                .filter(each -> !isUnseen(each) || Character.isWhitespace(each))
                .map(each -> Character.getType(each) == Character.SPACE_SEPARATOR ? ' ' : each)
                .forEach(plain::appendCodePoint);
        return plain.toString().strip();
    }

    private static String shown(String text, String allowed) {
        if (isClean(text, allowed)) {
            return text;
        }
        StringBuilder clean = new StringBuilder(text.length() + 8);
        text.codePoints().forEach(each -> {
            if (isUnseen(each) && allowed.indexOf(each) < 0) {
                clean.append(name(each));
            } else {
                clean.appendCodePoint(each);
            }
        });
        return clean.toString();
    }

    /** Each such character once, in order, as {@code [U+202E]}. */
    public static List<String> in(String text) {
        if (isClean(text, "")) {
            return List.of();
        }
        return text.codePoints()
                .filter(Unseen::isUnseen)
                .mapToObj(Unseen::name)
                .distinct()
                .toList();
    }

    /** Every cell that is read and every one that is printed is asked: a plain loop. */
    private static boolean isClean(String text, String allowed) {
        int each;
        for (int i = 0; i < text.length(); i += Character.charCount(each)) {
            each = text.codePointAt(i);
            if (isUnseen(each) && allowed.indexOf(each) < 0) {
                return false;
            }
        }
        return true;
    }

    private static String name(int codePoint) {
        return String.format(Locale.ROOT, "[U+%04X]", codePoint);
    }

    private static boolean isUnseen(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE -> true;
            default -> false;
        };
    }
}
