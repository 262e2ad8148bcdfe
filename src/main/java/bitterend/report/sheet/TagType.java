package bitterend.report.sheet;

/**
 * The type a tag is set in: the largest in which all of it goes on the label, reckoned from the width of an average letter.
 * All figures in tenths of a point; a millimetre is 28.35 of them.
 */
enum TagType {
    USUAL("", 80, 95, 130, 120),
    SMALL("small", 70, 82, 130, 115),
    SMALLER("smaller", 60, 70, 110, 100),
    LEAST("least", 50, 58, 100, 90);

    private static final int TENTHS_OF_A_MILLIMETRE = 28;

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
        int title = (letters(tag.title(), titleSize) + letters(tag.kind() + tag.mark(), 90)) * 13 / 10 + titleSize;
        int height = titleLeading * lines(title, narrow);
        height += Math.max(leading, 100) * lines(letters(tag.measure(), Math.max(size + 15, 85)), narrow);
        for (String line : tag.lines()) {
            height += leading * lines(letters(line, size), height < code ? narrow : wide);
        }
        return height;
    }

    /** A letter of the narrow face is nearly half as wide as it is high. */
    private static int letters(String words, int size) {
        return words.length() * size * 37 / 100;
    }

    /** What does not fill its line leaves some of it empty, since words are not broken. */
    private static int lines(int length, int width) {
        return length <= width ? 1 : 1 + (length * 104 / 100 - 1) / width;
    }
}
