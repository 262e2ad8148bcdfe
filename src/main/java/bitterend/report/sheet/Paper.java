package bitterend.report.sheet;

/** Paper that sheets are printed on; millimetres. */
public enum Paper {
    A4("A4", 210, 297),
    LETTER("letter", 216, 279);

    private final String css;
    private final int width;
    private final int height;

    Paper(String css, int width, int height) {
        this.css = css;
        this.width = width;
        this.height = height;
    }

    /** Its name in a style sheet. */
    String css() {
        return css;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }
}
