package bitterend.report;

import bitterend.finding.Unseen;
import java.util.Locale;

/** A picture of plain shapes, as SVG: black and greys, so that it prints; every text escaped. Coordinates are whole units. */
final class BuySvg {
    static final String INK = "#1b1b1b";
    static final String SOFT = "#c9d3dc";
    static final String LINE = "#33658a";

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

    /** A filled area; points as {@code x,y x,y}. */
    BuySvg area(String points) {
        return shape("<polygon points=\"%s\" fill=\"%s\"/>", points, SOFT);
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
