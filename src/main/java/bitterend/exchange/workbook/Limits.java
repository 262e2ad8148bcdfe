package bitterend.exchange.workbook;

/** How large a workbook may be. A shop's table is far below; what is above would fill the memory, or was made to. */
public final class Limits {
    /** Bytes of the file. */
    public static final long MOST_BYTES = 20_000_000;
    /** Bytes of all parts that are read, unpacked. */
    public static final long MOST_UNPACKED = 100_000_000;
    /** A part may unpack to so many times its packed size, once it is larger than {@link #ANY_RATIO}. */
    public static final long MOST_RATIO = 200;
    /** Bytes up to which a part may unpack to any size. */
    public static final long ANY_RATIO = 4_000_000;
    /** Parts inside the file. */
    public static final int MOST_PARTS = 2_000;
    /** Sheets. */
    public static final int MOST_SHEETS = 100;
    /** The last row with something in it. */
    public static final int MOST_ROWS = 100_000;
    /** The last column with something in it. */
    public static final int MOST_COLUMNS = 256;
    /** Filled cells of a sheet. */
    public static final int MOST_CELLS = 1_000_000;
    /** Merged cells that are told one by one. */
    public static final int MOST_MERGED = 50;
    /** Texts that cells share. */
    public static final int MOST_TEXTS = 500_000;
    /** Characters of one cell; the format's own limit. */
    public static final int LONGEST_CELL = 32_767;
    /** Rows that the format can number. */
    static final int FORMAT_ROWS = 1_048_576;
    /** Columns that the format can name, A to XFD. */
    static final int FORMAT_COLUMNS = 16_384;

    private Limits() {}
}
