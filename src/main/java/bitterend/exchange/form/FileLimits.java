package bitterend.exchange.form;

import bitterend.exchange.workbook.Limits;

/** How much of a CSV or JSON file is read; docs/limits.md says the same. What is larger is refused, so that no file fills the memory. */
public final class FileLimits {
    /** Of a CSV or JSON file. */
    public static final long MOST_BYTES = 100_000_000;
    /** Of a CSV file, the header and blank ones counted. */
    public static final int MOST_ROWS = 200_000;
    /** Cells of a row, those of a workbook. */
    public static final int MOST_COLUMNS = Limits.MOST_COLUMNS;
    /** Characters of a cell of a CSV file: room for every flaw of a reel. */
    public static final int LONGEST_CELL = 1_000_000;
    /** Names, values and brackets of a JSON file. */
    public static final int MOST_PARTS = 2_000_000;
    /** Brackets of a JSON file that are open at once. */
    public static final int DEEPEST = 100;
    /** Digits of a number in a JSON file. */
    public static final int MOST_DIGITS = 100;
    /** Characters of a text in a JSON file. */
    public static final int LONGEST_TEXT = 1_000_000;

    private FileLimits() {}
}
