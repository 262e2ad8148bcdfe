package bitterend.report.sheet;

import bitterend.measure.Units;
import bitterend.report.Mark;
import bitterend.report.RowWords;

/**
 * Heights of rows, fixed beforehand so that the tape drawn beside them meets its rows. Widths of words are estimated from
 * the number of characters, generously: a row may be too high, never too low.
 */
final class RowHeights {
    /** Characters that surely fit a line of the column of words: 222 px of 14 px condensed type. */
    private static final int PER_LINE = 32;

    /** The same where feet and inches take the room. */
    private static final int PER_LINE_IMPERIAL = 25;

    private static final int LINE = 18;
    private static final int CUT_ROW = 44;
    private static final int OTHER_ROW = 32;
    private static final int PADDING = 10;

    private final int perLine;

    RowHeights(Units units) {
        perLine = units == Units.METRIC ? PER_LINE : PER_LINE_IMPERIAL;
    }

    /** Name and preparation share the first line, the words follow line by line. */
    int of(Mark mark, RowWords.Words words) {
        int lines = lines(mark.name() + " " + mark.before())
                + words.lines().stream().mapToInt(this::lines).sum();
        int least = mark.kind() == Mark.Kind.CUT ? CUT_ROW : OTHER_ROW;
        return Math.max(least, PADDING + LINE * lines);
    }

    private int lines(String words) {
        int lines = 0;
        int used = perLine + 1;
        for (String word : words.strip().split("\\s+")) {
            int length = word.codePointCount(0, word.length());
            if (length == 0) {
                continue;
            }
            if (used + 1 + length > perLine) {
                lines += 1 + (length - 1) / perLine;
                used = (length - 1) % perLine + 1;
            } else {
                used += 1 + length;
            }
        }
        return lines;
    }
}
