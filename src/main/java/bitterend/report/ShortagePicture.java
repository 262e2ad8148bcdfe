package bitterend.report;

import bitterend.buying.Shortage;
import bitterend.measure.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** A row of bars for each rope, one for each day: its height is what must be cut, its dark part what is short. */
final class ShortagePicture {
    private static final int MOST = 12;
    private static final int ROW = 64;
    private static final int BAR = 40;
    private static final int TOP = 56;
    private static final int LEFT = 130;
    private static final int WIDTH = 720;

    private final Figures figures;
    private final List<Shortage> ropes;
    private final List<LocalDate> columns;

    ShortagePicture(Figures figures, List<Shortage> ropes) {
        this.figures = figures;
        this.ropes = ropes.stream().limit(MOST).toList();
        TreeSet<LocalDate> days = new TreeSet<>();
        this.ropes.forEach(rope -> rope.days().forEach(day -> days.add(day.day())));
        columns = new ArrayList<>(days);
    }

    String svg() {
        String title = "What must be cut by each day, in " + figures.unit() + "; dark: what of it is short";
        BuySvg svg = new BuySvg(WIDTH, TOP + ROW * ropes.size() + 10, title).text(10, 18, "start", title);
        for (LocalDate day : columns) {
            svg.text(x(day), TOP - 22, "middle", DueWords.weekday(day));
            svg.text(x(day), TOP - 8, "middle", day.getDayOfMonth() + "." + day.getMonthValue() + ".");
        }
        for (int row = 0; row < ropes.size(); row++) {
            rope(svg, ropes.get(row), TOP + ROW * (row + 1) - 8);
        }
        return svg.toString();
    }

    private void rope(BuySvg svg, Shortage rope, int foot) {
        svg.line(10, foot, WIDTH - 10, foot, BuySvg.SOFT);
        svg.text(10, foot - 4, "start", rope.rope());
        long most =
                rope.days().stream().mapToLong(day -> day.wanted().mm()).max().orElse(1);
        Length before = Length.ZERO;
        for (Shortage.Day day : rope.days()) {
            Length lacking = day.shortUpTo().minus(before);
            before = day.shortUpTo();
            long high = Math.max(1, BAR * day.wanted().mm() / most);
            long dark = Math.min(high, (BAR * lacking.mm() + most - 1) / most);
            svg.rect(x(day.day()) - 12, foot - high, 24, high, BuySvg.SOFT);
            svg.rect(x(day.day()) - 12, foot - dark, 24, dark, BuySvg.INK);
            svg.text(
                    x(day.day()),
                    foot - high - 3,
                    "middle",
                    figures.bareTotal(day.wanted()) + (dark > 0 ? ", " + figures.bareTotal(lacking) + " short" : ""));
        }
    }

    private long x(LocalDate day) {
        int steps = Math.max(1, columns.size());
        return LEFT + (long) (WIDTH - LEFT - 10) * (2L * columns.indexOf(day) + 1) / (2L * steps);
    }
}
