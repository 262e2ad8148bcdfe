package bitterend.report;

import bitterend.quoting.after.Learned;
import java.util.ArrayList;
import java.util.List;

/** What was posted in percent of what was quoted, a bar for each rope and each end; a dashed line where both agree. */
final class QuoteLearnPicture {
    private static final int WIDTH = 720;
    private static final int LEFT = 250;
    private static final int RIGHT = 640;
    private static final int TOP = 50;
    private static final int ROW = 26;
    private static final int BAR = 16;
    /** Twice what was quoted ends the axis; a longer bar is cut off there and its figure says so. */
    private static final long MOST = 2000;

    private static final long AGREES = 1000;
    /** Room that a figure takes. */
    private static final long FIGURE = 50;

    private static final int LONGEST_NAME = 36;

    private final Figures figures;

    QuoteLearnPicture(Figures figures) {
        this.figures = figures;
    }

    private record Bar(String name, long perMille) {}

    String of(Learned learned) {
        List<Bar> bars = new ArrayList<>();
        learned.ropes()
                .forEach(rope -> add(
                        bars,
                        "rope " + rope.rope(),
                        rope.posted().all().minor(),
                        rope.quoted().all().minor()));
        learned.ends().forEach(end -> add(bars, end.end(), end.posted(), end.quoted()));
        int bottom = TOP + ROW * bars.size();
        String title = "posted in % of what was quoted: cost of rope, minutes of ends";
        BuySvg svg = new BuySvg(WIDTH, bottom + 40, title).text(10, 18, "start", title);
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = bars.get(i);
            int y = TOP + ROW * i;
            svg.text(LEFT - 8, y + 13, "end", shortened(bar.name()));
            svg.rect(LEFT, y, place(bar.perMille()) - LEFT, BAR, BuySvg.SOFT);
            svg.text(
                    figureFrom(place(bar.perMille())),
                    y + 13,
                    "start",
                    figures.percent(bar.perMille(), AGREES, 0) + " %");
        }
        return svg.line(LEFT, TOP - 8, LEFT, bottom, BuySvg.INK)
                .dashed(place(AGREES), TOP - 8, place(AGREES), bottom)
                .text(place(AGREES), bottom + 18, "middle", "as quoted")
                .toString();
    }

    private static void add(List<Bar> bars, String name, long posted, long quoted) {
        if (quoted > 0) {
            bars.add(new Bar(name, Math.floorDiv(2 * AGREES * posted + quoted, 2 * quoted)));
        }
    }

    private static long place(long perMille) {
        return LEFT + Math.max(0, Math.min(MOST, perMille)) * (RIGHT - LEFT) / MOST;
    }

    /** Where the figure behind a bar begins: behind the dashed line where it would run into that. */
    private static long figureFrom(long end) {
        long line = place(AGREES);
        return (end < line && end + FIGURE > line ? line : end) + 6;
    }

    private static String shortened(String name) {
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 1) + "…";
    }
}
