package bitterend.exchange.workbook;

/**
 * One cell of a sheet.
 *
 * @param kind what stands in it
 * @param text it as text: a number exactly, {@code 12.5}, with the unit of length that its format shows, {@code 12.5 mm}; a day as {@code 2026-03-02}, with a time {@code 2026-03-02T14:30}, a
 *     time alone {@code 14:30}; true and false as {@code yes} and {@code no}; what is wrong as it stands there
 * @param wanted what is wrong is told what is expected in its place; else empty
 */
public record Cell(Kind kind, String text, String wanted) {
    /** A cell with nothing in it. */
    public static final Cell BLANK = new Cell(Kind.TEXT, "");

    /** What stands in a cell. */
    public enum Kind {
        TEXT,
        NUMBER,
        DATE,
        TRUTH,
        /** No value that a table could mean: an error of a formula, a date that never was. */
        WRONG
    }

    Cell(Kind kind, String text) {
        this(kind, text, "");
    }

    static Cell wrong(String text, String wanted) {
        return new Cell(Kind.WRONG, text, wanted);
    }

    /** Whether nothing stands in it. */
    public boolean isBlank() {
        return text.isBlank();
    }
}
