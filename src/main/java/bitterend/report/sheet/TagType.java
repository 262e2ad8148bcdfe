package bitterend.report.sheet;

import bitterend.report.page.Wording;
import java.util.regex.Pattern;

/**
 * The type a tag is set in: the largest in which all of it goes on the label, reckoned from the width of an average letter.
 * All figures in tenths of a point; a millimetre is 28.35 of them.
 */
enum TagType {
    LARGEST("largest", 100, 115, 200, 205),
    LARGE("large", 90, 104, 200, 205),
    USUAL("", 80, 95, 180, 185),
    SMALL("small", 70, 82, 180, 185),
    SMALLER("smaller", 60, 70, 160, 165),
    SMALLEST("smallest", 55, 63, 150, 152),
    LEAST("least", 50, 58, 120, 125);

    private static final int TENTHS_OF_A_MILLIMETRE = 28;

    /** How wide a letter is, in hundredths of its size. */
    private static final int LETTER = 38;

    private static final Pattern BLANKS = Pattern.compile(" +");

    /** The plan's name below the code, in bold letters. */
    private static final int MARK = 90;

    private final String style;
    private final int size;
    private final int leading;
    private final int titleSize;
    private final int titleLeading;

    TagType(String style, int size, int leading, int titleSize, int titleLeading) {
        this.style = style;
        this.size = size;
        this.leading = leading;
        this.titleSize = titleSize;
        this.titleLeading = titleLeading;
    }

    /** The word of its style sheet; empty for the usual type. */
    String style() {
        return style;
    }

    /** The largest type in which a tag goes on a label; the least where none does. */
    static TagType of(Tag tag, TagPage.Label label) {
        for (TagType type : values()) {
            if (type.height(tag, label) <= (label.height() - 6) * TENTHS_OF_A_MILLIMETRE) {
                return type;
            }
        }
        return LEAST;
    }

    private int height(Tag tag, TagPage.Label label) {
        int code = label.code() * TENTHS_OF_A_MILLIMETRE;
        int wide = (label.width() - 6) * TENTHS_OF_A_MILLIMETRE;
        int narrow = wide - code;
        int beside = tag.mark().isEmpty() ? code : code + MARK * lines(tag.mark(), MARK, code) + 15;
        String kind = tag.kind().equals(Tag.PIECE) ? "" : " " + tag.kind();
        int title = letters(tag.title(), titleSize) * 12 / 10 + letters(kind, 100);
        int height = titleLeading * (title <= narrow ? 1 : 2);
        height += Math.max(leading + 15, 100) * lines(tag.measure(), Math.max(size + 20, 85), narrow);
        // What is told of a reel has figures in its midst, at which lines end sooner.
        height += kind.isEmpty() ? 0 : leading;
        for (String line : tag.lines()) {
            height += leading * lines(line, size, height < beside ? narrow : wide);
        }
        return height;
    }

    /** A letter of the narrow face is nearly half as wide as it is high. */
    private static int letters(String words, int size) {
        return words.length() * size * LETTER / 100;
    }

    /** How many lines words take that are not broken. */
    private static int lines(String words, int size, int width) {
        int lines = 1;
        int used = 0;
        for (String word : BLANKS.split(Wording.held(words))) {
            int more = letters(word, size);
            int joined = used == 0 ? more : used + letters(" ", size) + more;
            lines += joined > width && used > 0 ? 1 : 0;
            used = joined > width ? more : joined;
        }
        return lines;
    }
}
