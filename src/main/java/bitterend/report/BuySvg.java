package bitterend.report;

import bitterend.finding.Unseen;
import java.util.Locale;

/** A picture of plain shapes, as SVG: black and greys, so that it prints; every text escaped. Coordinates are whole units. */
final class BuySvg {
    static final String INK = "#1b1b1b";
    static final String SOFT = "#c9d3dc";
    static final String LINE = "#33658a";

    /** Slanted lines; {@link #hatch} says what they are. */
    static final String HATCH = "url(#hatch)";

    /** How words are set: their size, and whether bold. */
    record Type(int size, boolean bold) {
        static final Type BOLD = new Type(13, true);
        static final Type SMALL = new Type(12, false);
    }

    private final StringBuilder shapes = new StringBuilder();
    private final int width;
    private final int height;
    private final String title;

    BuySvg(int width, int height, String title) {
        this.width = width;
        this.height = height;
        this.title = title;
    }

    BuySvg rect(long x, long y, long wide, long high, String fill) {
        return shape("<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"%s\"/>", x, y, wide, high, fill);
    }

    /** A rectangle with a line round it; none where it is empty. */
    BuySvg box(long x, long y, long wide, long high, String fill, String stroke) {
        return wide <= 0 || high <= 0
                ? this
                : shape(
                        "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"%s\" stroke=\"%s\"/>",
                        x, y, wide, high, fill, stroke);
    }

    /** What {@link #HATCH} fills with. */
    BuySvg hatch() {
        return shape(
                "<defs><pattern id=\"hatch\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\"><rect width=\"6\""
                        + " height=\"6\" fill=\"#ffffff\"/><path d=\"M-1,4 L4,-1 M2,7 L7,2\" stroke=\"%s\""
                        + " stroke-width=\"1.4\"/></pattern></defs>",
                LINE);
    }

    BuySvg line(long x1, long y1, long x2, long y2, String stroke) {
        return shape(
                "<line x1=\"%d\" y1=\"%d\" x2=\"%d\" y2=\"%d\" stroke=\"%s\" stroke-width=\"1.5\"/>",
                x1, y1, x2, y2, stroke);
    }

    BuySvg dashed(long x1, long y1, long x2, long y2) {
        return shape(
                "<line x1=\"%d\" y1=\"%d\" x2=\"%d\" y2=\"%d\" stroke=\"%s\" stroke-dasharray=\"5 3\"/>",
                x1, y1, x2, y2, INK);
    }

    BuySvg dot(long x, long y, boolean hollow) {
        return shape(
                "<circle cx=\"%d\" cy=\"%d\" r=\"4\" fill=\"%s\" stroke=\"%s\" stroke-width=\"1.5\"/>",
                x, y, hollow ? "#ffffff" : LINE, LINE);
    }

    /** A circle with nothing in it. */
    BuySvg ring(long x, long y, int radius) {
        return shape(
                "<circle cx=\"%d\" cy=\"%d\" r=\"%d\" fill=\"#ffffff\" stroke=\"%s\" stroke-width=\"1.5\"/>",
                x, y, radius, LINE);
    }

    /** A filled area; points as {@code x,y x,y}. */
    BuySvg area(String points) {
        return area(points, SOFT);
    }

    BuySvg area(String points, String fill) {
        return shape("<polygon points=\"%s\" fill=\"%s\"/>", points, fill);
    }

    BuySvg polyline(String points) {
        return shape("<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.5\"/>", points, LINE);
    }

    /** Anchored at its {@code start}, {@code middle} or {@code end}. */
    BuySvg text(long x, long y, String anchor, String words) {
        return shape(
                "<text x=\"%d\" y=\"%d\" text-anchor=\"%s\" font-size=\"12\" fill=\"%s\">%s</text>",
                x, y, anchor, INK, escaped(words));
    }

    /** The same in another type. */
    BuySvg words(long x, long y, String anchor, String words, Type type) {
        return shape(
                "<text x=\"%d\" y=\"%d\" text-anchor=\"%s\" font-size=\"%d\"%s fill=\"%s\">%s</text>",
                x,
                y,
                anchor,
                type.size(),
                type.bold() ? " font-family=\"Sheet\" font-weight=\"bold\"" : "",
                INK,
                escaped(words));
    }

    /** A line along a path, nothing filled. */
    BuySvg path(String path, int thick) {
        return shape("<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%d\"/>", path, INK, thick);
    }

    /** An ellipse, nothing filled. */
    BuySvg ellipse(long x, long y, long across, long high, int thick) {
        return shape(
                "<ellipse cx=\"%d\" cy=\"%d\" rx=\"%d\" ry=\"%d\" fill=\"none\" stroke=\"%s\" stroke-width=\"%d\"/>",
                x, y, across, high, INK, thick);
    }

    private BuySvg shape(String form, Object... parts) {
        shapes.append("  ").append(String.format(Locale.ROOT, form, parts)).append('\n');
        return this;
    }

    @Override
    public String toString() {
        return String.format(
                        Locale.ROOT,
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\""
                                + " role=\"img\" font-family=\"Sheet, Helvetica, Arial, sans-serif\">%n  <title>%s</title>%n"
                                + "  <rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>%n%s</svg>%n",
                        width,
                        height,
                        width,
                        height,
                        escaped(title),
                        width,
                        height,
                        shapes)
                .replace(System.lineSeparator(), "\n");
    }

    private static String escaped(String words) {
        return Unseen.shown(words)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
