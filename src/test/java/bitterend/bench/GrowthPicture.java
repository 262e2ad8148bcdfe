package bitterend.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Growth as a picture, a panel for each thing that grows: both axes by powers, so that what is linear rises with the grey
 * line and what is flat stays level.
 */
final class GrowthPicture {
    private static final int WIDE = 300;
    private static final int HIGH = 260;
    private static final int LEFT = 52;
    private static final int TOP = 40;
    private static final int GAP = 40;
    private static final double LEAST = 0.01;
    private static final double MOST = 1_000;

    private record Line(String name, String colour, String dashes, double scale) {}

    private static final List<Line> LINES = List.of(
            new Line("s to the first plan", "#1b4f72", "none", 1),
            new Line("s to the first bound", "#a04000", "6 3", 1),
            new Line("memory in use, hundreds of MiB", "#5b2c6f", "2 3", 0.01));

    private record Point(int size, List<Double> figures) {}

    private record Panel(String what, List<Point> points) {}

    private final List<Panel> panels = new ArrayList<>();

    /** Begins a panel. */
    void begin(String what) {
        panels.add(new Panel(what, new ArrayList<>()));
    }

    /** A size of the panel begun last; NaN for what never came. */
    void add(int size, double firstPlan, double firstBound, double liveMebibytes) {
        panels.get(panels.size() - 1).points().add(new Point(size, List.of(firstPlan, firstBound, liveMebibytes)));
    }

    /** The whole picture, a document of its own. */
    String svg() {
        int width = LEFT + panels.size() * (WIDE + GAP);
        StringBuilder svg = new StringBuilder();
        svg.append(tag(
                """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %d" font-family="sans-serif" font-size="12">
                <rect width="100%%" height="100%%" fill="#fff"/>
                """,
                width, TOP + HIGH + 70));
        for (int i = 0; i < panels.size(); i++) {
            draw(svg, panels.get(i), LEFT + i * (WIDE + GAP));
        }
        int x = LEFT;
        for (Line line : LINES) {
            int y = TOP + HIGH + 52;
            svg.append(path(line, "M" + x + " " + y + "h30"));
            svg.append(tag("<text x=\"%d\" y=\"%d\">%s</text>%n", x + 36, y + 4, line.name()));
            x += 260;
        }
        return svg.append("</svg>\n").toString();
    }

    private static void draw(StringBuilder svg, Panel panel, int left) {
        int first = panel.points().get(0).size();
        int last = panel.points().get(panel.points().size() - 1).size();
        double wide = Math.max(1, Math.log((double) last / first));
        svg.append(tag("<text x=\"%d\" y=\"%d\" font-weight=\"bold\">%s</text>%n", left, TOP - 16, panel.what()));
        for (double grade = LEAST; grade <= MOST * 1.01; grade *= 10) {
            svg.append(tag(
                    "<path d=\"M%d %.1fh%d\" stroke=\"#ddd\"/><text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%s</text>%n",
                    left,
                    height(grade),
                    WIDE,
                    left - 4,
                    height(grade) + 4,
                    grade < 1 ? String.format(Locale.ROOT, "%.2f", grade) : String.format(Locale.ROOT, "%.0f", grade)));
        }
        for (Point point : panel.points()) {
            if (point.size() == first || point.size() == last) {
                svg.append(tag(
                        "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%s</text>%n",
                        across(point.size(), first, wide, left),
                        TOP + HIGH + 18,
                        String.format(Locale.ROOT, "%,d", point.size())));
            }
        }
        svg.append(tag(
                "<path d=\"M%.1f %.1fL%.1f %.1f\" stroke=\"#bbb\"/>%n",
                across(first, first, wide, left),
                height(0.02),
                across(last, first, wide, left),
                height(0.02 * last / first)));
        for (int n = 0; n < LINES.size(); n++) {
            StringBuilder steps = new StringBuilder();
            for (Point point : panel.points()) {
                double figure = point.figures().get(n) * LINES.get(n).scale();
                if (!Double.isNaN(figure)) {
                    steps.append(String.format(
                            Locale.ROOT,
                            "%s%.1f %.1f",
                            steps.isEmpty() ? "M" : "L",
                            across(point.size(), first, wide, left),
                            height(figure)));
                }
            }
            svg.append(path(LINES.get(n), steps.toString()));
        }
    }

    private static double across(int size, int first, double wide, int left) {
        return left + WIDE * Math.log((double) size / first) / wide;
    }

    private static double height(double figure) {
        double share = Math.log(Math.max(LEAST, Math.min(MOST, figure)) / LEAST) / Math.log(MOST / LEAST);
        return TOP + HIGH * (1 - share);
    }

    private static String path(Line line, String steps) {
        return tag(
                "<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"2\" stroke-dasharray=\"%s\"/>%n",
                steps, line.colour(), line.dashes());
    }

    private static String tag(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}
