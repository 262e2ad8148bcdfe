package bitterend.report;

import bitterend.report.page.Block;
import bitterend.report.page.Document;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How much of a sheet of paper blocks take, reckoned in tenths of a line of its type and on the safe side; Letter is the lower
 * of the two papers.
 */
final class SheetRoom {
    /** What a sheet holds between its margins. */
    static final int WHOLE = 520;

    private static final int LINE = 10;
    private static final int GAP = 5;
    private static final int TITLE = 55;
    private static final int HEADING = 25;
    /** From margin to margin, in the same measure. */
    private static final int ACROSS = 400;

    private static final Pattern SHAPE = Pattern.compile("viewBox=\"0 0 ([0-9]{1,5}) ([0-9]{1,5})\"");
    /** So many letters fill a line from margin to margin. */
    private static final int WIDE = 100;

    private SheetRoom() {}

    /** What the blocks of a page take so far. */
    static int of(Document page) {
        int room = 0;
        for (Block block : page.blocks()) {
            if (block instanceof Block.Table table) {
                room += table.rows().stream()
                        .mapToInt(row -> row.stream()
                                .mapToInt(cell -> of(cell, WIDE))
                                .max()
                                .orElse(LINE + GAP))
                        .sum();
            } else if (block instanceof Block.Picture picture) {
                room += of(picture);
            } else {
                room += block instanceof Block.Title
                        ? TITLE
                        : block instanceof Block.Heading
                                ? HEADING
                                : block instanceof Block.Paragraph paragraph
                                        ? of(paragraph.words(), WIDE)
                                        : block instanceof Block.Gap ? 0 : LINE + GAP;
            }
        }
        return room;
    }

    /** As high as it is by its own shape, from margin to margin, with its words. */
    private static int of(Block.Picture picture) {
        Matcher shape = SHAPE.matcher(picture.svg());
        int high = shape.find()
                ? Integer.parseInt(shape.group(2)) * ACROSS / Math.max(1, Integer.parseInt(shape.group(1)))
                : ACROSS / 2;
        return high + GAP + of(picture.caption(), WIDE);
    }

    /** What lines of words take with the gap below them, where so many letters fill a line. */
    static int of(String words, int letters) {
        return words.lines()
                        .mapToInt(line -> LINE * (1 + Math.max(0, line.length() - 1) / letters))
                        .sum()
                + GAP;
    }
}
