package bitterend.report;

import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.report.WeekGrid.Load;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;

/**
 * Days across, reels down. Each reel is drawn as its rope in the column of the day on which it is cut: what must be cut then,
 * what is cut ahead, what stays; from the days on which the pieces that are cut ahead are needed an arrow leads to it. Above it
 * how much each day cuts, below it what is planned on no reel and which reels on order are expected.
 */
final class WeekPicture {
    private static final int MOST_REELS = 25;
    private static final int WIDTH = 720;
    private static final int LEFT = 128;
    private static final int SKY = 52;
    private static final int TOP = 118;
    private static final int ROW = 24;
    private static final int TAPE = 8;
    private static final int LEGEND = 42;
    private static final String LEFT_OVER = "#e8eef2";
    private static final String TODAY = "#eef3f6";

    private final PlanView view;
    private final WeekGrid grid;
    private final List<ReelDraw> draws;
    private final int below;

    WeekPicture(PlanView view, WeekGrid grid) {
        this.view = view;
        this.grid = grid;
        draws = grid.draws().stream().limit(MOST_REELS).toList();
        below = TOP + ROW * draws.size();
    }

    /** How many reels it does not show. */
    int more() {
        return grid.draws().size() - draws.size();
    }

    String svg() {
        List<Load> loads = grid.byColumn();
        List<List<String>> coming = grid.coming();
        boolean undone = loads.stream().anyMatch(load -> load.undone() > 0);
        boolean comes = coming.stream().anyMatch(reels -> !reels.isEmpty());
        int rows = (undone ? 1 : 0) + (comes ? 1 : 0);
        int end = below + ROW * rows;
        BuySvg svg = new BuySvg(WIDTH, end + LEGEND, "What is cut on which day, reel by reel");
        svg.hatch();
        columns(svg, end);
        sky(svg, loads);
        for (int row = 0; row < draws.size(); row++) {
            reel(svg, draws.get(row), TOP + ROW * row);
        }
        if (undone) {
            undone(svg, loads, below);
        }
        if (comes) {
            coming(svg, coming, end - ROW);
        }
        legend(svg, end);
        return svg.toString();
    }

    /** Heads of the columns; that of today is tinted, a line stands before each new week. */
    private void columns(BuySvg svg, int end) {
        svg.rect(x(0), 0, wide(0), end, TODAY);
        for (int i = 0; i < grid.days().size(); i++) {
            LocalDate day = grid.days().get(i);
            svg.words(middle(i), 16, "middle", i == 0 ? "today" : DueWords.weekday(day), new BuySvg.Type(14, true));
            svg.words(middle(i), 31, "middle", date(day), BuySvg.Type.SMALL);
            if (i > 0 && day.getDayOfWeek() == DayOfWeek.MONDAY) {
                svg.dashed(x(i), 4, x(i), end);
            }
        }
        if (grid.hasLater()) {
            svg.words(middle(grid.columns() - 1), 16, "middle", "later", new BuySvg.Type(14, true));
        }
    }

    /** A bar for the pieces of each day, what is cut ahead on top. */
    private void sky(BuySvg svg, List<Load> loads) {
        int most = Math.max(1, loads.stream().mapToInt(Load::pieces).max().orElse(1));
        int ground = TOP - 22;
        svg.words(8, ground - 14, "start", "pieces cut", BuySvg.Type.SMALL);
        svg.words(8, ground + 14, "start", "off reels", BuySvg.Type.SMALL);
        for (int i = 0; i < loads.size(); i++) {
            Load load = loads.get(i);
            long full = (long) SKY * load.pieces() / most - (long) (load.pieces() > 0 ? 12 : 0) * load.pieces() / most;
            long ahead = load.pieces() == 0 ? 0 : full * load.ahead() / load.pieces();
            long left = middle(i) - 17L;
            svg.rect(left, ground - full + ahead, 34, full - ahead, BuySvg.LINE);
            svg.box(left, ground - full, 34, ahead, BuySvg.HATCH, BuySvg.LINE);
            svg.line(x(i) + 6, ground, x(i) + wide(i) - 6, ground, BuySvg.SOFT);
            if (load.pieces() > 0) {
                svg.words(middle(i), ground - full - 4, "middle", "" + load.pieces(), BuySvg.Type.BOLD);
                svg.words(middle(i), ground + 14, "middle", "" + load.reels(), BuySvg.Type.SMALL);
            }
        }
        svg.line(8, TOP - 2, WIDTH - 8, TOP - 2, BuySvg.INK);
    }

    private void reel(BuySvg svg, ReelDraw draw, int y) {
        svg.line(8, y + ROW - 2, WIDTH - 8, y + ROW - 2, BuySvg.SOFT);
        svg.words(8, y + 16, "start", draw.reel(), BuySvg.Type.BOLD);
        svg.words(LEFT - 10, y + 16, "end", view.rope(draw).id(), BuySvg.Type.SMALL);
        int at = grid.column(grid.cutOn(draw));
        arrows(svg, draw, at, y + 17);
        tape(svg, draw, at, y);
    }

    /** The rope of the reel: what must be cut that day, what is cut ahead, what stays or is lost. */
    private void tape(BuySvg svg, ReelDraw draw, int at, int y) {
        long whole = Math.max(1, view.reel(draw).length().mm());
        int room = wide(at) - 12;
        long left = x(at) + 6L;
        long must = room * sum(draw, false).mm() / whole;
        long ahead = room * sum(draw, true).mm() / whole;
        svg.box(left, y + 13, room, TAPE, LEFT_OVER, BuySvg.LINE);
        svg.rect(left, y + 13, must, TAPE, BuySvg.LINE);
        if (ahead > 0) {
            svg.box(left + must, y + 13, ahead, TAPE, BuySvg.HATCH, BuySvg.LINE);
        }
        int later = grid.ahead(draw);
        int pieces = draw.cuts().size();
        String counts = (pieces - later) + (later == 0 ? "" : " + " + later);
        boolean far = grid.hasLater() && at == grid.columns() - 1;
        svg.words(left, y + 10, "start", counts, BuySvg.Type.BOLD);
        if (far) {
            svg.words(left + room, y + 10, "end", date(grid.cutOn(draw)), BuySvg.Type.SMALL);
        }
    }

    private Length sum(ReelDraw draw, boolean ahead) {
        return draw.cuts().stream()
                .filter(cut -> grid.isAhead(draw, cut) == ahead)
                .map(Cut::length)
                .reduce(Length.ZERO, Length::plus);
    }

    /** From each day on which pieces that are cut ahead are needed. */
    private void arrows(BuySvg svg, ReelDraw draw, int at, int y) {
        int[] needed = grid.needed(draw);
        int last = at;
        for (int i = at + 1; i < needed.length; i++) {
            last = needed[i] > 0 ? i : last;
        }
        if (last == at) {
            return;
        }
        long head = x(at) + wide(at) - 4L;
        svg.line(head, y, middle(last) - 9, y, BuySvg.LINE);
        svg.area(
                (head - 1) + "," + y + " " + (head + 7) + "," + (y - 4) + " " + (head + 7) + "," + (y + 4),
                BuySvg.LINE);
        for (int i = at + 1; i <= last; i++) {
            if (needed[i] > 0) {
                svg.ring(middle(i), y - 5, 9);
                svg.words(middle(i), y - 1, "middle", "" + needed[i], BuySvg.Type.SMALL);
            }
        }
    }

    private void undone(BuySvg svg, List<Load> loads, int y) {
        svg.words(8, y + 16, "start", "on no reel", BuySvg.Type.BOLD);
        for (int i = 0; i < loads.size(); i++) {
            if (loads.get(i).undone() > 0) {
                svg.box(middle(i) - 15, y + 2, 30, 19, "#ffffff", BuySvg.INK);
                svg.box(middle(i) - 13, y + 4, 26, 15, "#ffffff", BuySvg.INK);
                svg.words(middle(i), y + 16, "middle", "" + loads.get(i).undone(), BuySvg.Type.BOLD);
            }
        }
    }

    private void coming(BuySvg svg, List<List<String>> coming, int y) {
        svg.words(8, y + 16, "start", "expected", BuySvg.Type.BOLD);
        for (int i = 0; i < coming.size(); i++) {
            List<String> reels = coming.get(i);
            if (!reels.isEmpty()) {
                long at = middle(i);
                svg.area(
                        (at - 7) + "," + (y + 1) + " " + (at + 7) + "," + (y + 1) + " " + at + "," + (y + 10),
                        BuySvg.INK);
                String words = reels.size() == 1 ? reels.get(0) : reels.size() + " reels";
                svg.words(at, y + 21, "middle", words, BuySvg.Type.SMALL);
            }
        }
    }

    private void legend(BuySvg svg, int end) {
        int y = end + 18;
        svg.rect(8, y - 8, 22, TAPE, BuySvg.LINE);
        svg.words(35, y, "start", "must be cut that day", BuySvg.Type.SMALL);
        svg.box(160, y - 8, 22, TAPE, BuySvg.HATCH, BuySvg.LINE);
        svg.words(187, y, "start", "cut ahead; needed where the ring is", BuySvg.Type.SMALL);
        svg.ring(400, y - 4, 8);
        svg.words(413, y, "start", "so many pieces", BuySvg.Type.SMALL);
        svg.box(510, y - 8, 22, TAPE, LEFT_OVER, BuySvg.LINE);
        svg.words(537, y, "start", "the rest of the reel", BuySvg.Type.SMALL);
    }

    private static String date(LocalDate day) {
        return day.getDayOfMonth() + " " + day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }

    /** The column of later days is half as wide again: it says the day of each reel. */
    private int wide(int column) {
        boolean isLater = grid.hasLater() && column == grid.columns() - 1;
        return isLater ? WIDTH - 4 - x(column) : day();
    }

    private int day() {
        int room = WIDTH - LEFT - 4;
        return grid.hasLater() ? 2 * room / (2 * grid.columns() + 1) : room / grid.columns();
    }

    private int x(int column) {
        return LEFT + day() * column;
    }

    private int middle(int column) {
        return x(column) + wide(column) / 2;
    }
}
