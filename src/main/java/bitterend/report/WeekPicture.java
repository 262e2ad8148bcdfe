package bitterend.report;

import bitterend.packing.Cut;
import bitterend.packing.CutDays;
import bitterend.packing.ReelDraw;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Days across, reels down. A full mark is the day a reel is cut, with the number of its pieces; a line leads from it to
 * hollow marks, the days on which those that are cut ahead would have had to be cut.
 */
final class WeekPicture {
    private static final int MOST_REELS = 40;
    private static final int ROW = 20;
    private static final int TOP = 56;
    private static final int LEFT = 190;
    private static final int WIDTH = 720;

    private final PlanView view;
    private final CutDays days;
    private final List<ReelDraw> draws;
    private final List<LocalDate> columns;

    WeekPicture(PlanView view, CutDays days, List<ReelDraw> draws) {
        this.view = view;
        this.days = days;
        this.draws = draws.stream().limit(MOST_REELS).toList();
        TreeSet<LocalDate> needed = new TreeSet<>();
        this.draws.forEach(draw -> draw.cuts().forEach(cut -> needed.add(days.lastFor(cut))));
        columns = new ArrayList<>(needed);
    }

    String svg() {
        String title = "On which day each reel is cut: full, the cut; hollow, when pieces cut ahead are needed";
        BuySvg svg = new BuySvg(WIDTH, TOP + ROW * draws.size() + 10, title).text(10, 18, "start", title);
        for (LocalDate day : columns) {
            svg.text(x(day), TOP - 22, "middle", DueWords.weekday(day));
            svg.text(x(day), TOP - 8, "middle", day.getDayOfMonth() + "." + day.getMonthValue() + ".");
        }
        for (int row = 0; row < draws.size(); row++) {
            reel(svg, draws.get(row), TOP + ROW * row + ROW / 2);
        }
        return svg.toString();
    }

    private void reel(BuySvg svg, ReelDraw draw, int y) {
        svg.line(10, y + ROW / 2, WIDTH - 10, y + ROW / 2, BuySvg.SOFT);
        svg.text(
                10,
                y + 4,
                "start",
                draw.reel() + "  " + view.rope(draw).id() + (view.problem().isComing(draw.reel()) ? ", coming" : ""));
        TreeMap<LocalDate, Integer> needed = new TreeMap<>();
        for (Cut cut : draw.cuts()) {
            needed.merge(days.lastFor(cut), 1, Integer::sum);
        }
        LocalDate first = days.of(draw);
        svg.line(x(first), y, x(needed.isEmpty() ? first : needed.lastKey()), y, BuySvg.LINE);
        needed.forEach((day, pieces) -> svg.dot(x(day), y, !day.equals(first)));
        svg.text(x(first) - 9, y + 4, "end", Integer.toString(draw.cuts().size()));
    }

    private long x(LocalDate day) {
        int steps = Math.max(1, columns.size());
        return LEFT + (long) (WIDTH - LEFT - 10) * (2L * columns.indexOf(day) + 1) / (2L * steps);
    }
}
