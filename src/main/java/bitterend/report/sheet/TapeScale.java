package bitterend.report.sheet;

import bitterend.measure.Length;
import bitterend.report.Mark;
import bitterend.report.Mark.Kind;
import bitterend.report.sheet.TapeDrawing.Leader;
import bitterend.report.sheet.TapeDrawing.Stretch;
import java.util.ArrayList;
import java.util.List;

/** Draws the rows of one segment as a tape: everything above the rest to one scale, a long rest broken off. */
final class TapeScale {
    static final int WIDTH = 112;
    private static final int MARGIN = 5;
    private static final int BROKEN_REST = 44;
    private static final int LABEL = 13;

    private final List<Row> rows;
    private final int height;
    private final long top;
    private final long bottom;
    private final long end;
    private final int room;
    private final boolean broken;

    private TapeScale(List<Row> rows) {
        this.rows = rows;
        height = rows.stream().mapToInt(Row::height).sum();
        top = rows.stream().mapToLong(row -> from(row.mark())).min().orElse(0);
        long lastMark = rows.stream()
                .filter(row -> !isRest(row.mark()))
                .mapToLong(row -> to(row.mark()))
                .max()
                .orElse(top);
        end = rows.stream().mapToLong(row -> to(row.mark())).max().orElse(top);
        broken = end - lastMark > (lastMark - top) / 3;
        bottom = broken ? lastMark : end;
        room = height - 2 * MARGIN - (broken ? Math.min(BROKEN_REST, height / 2) : 0);
    }

    static TapeDrawing draw(List<Row> rows) {
        return new TapeScale(rows).drawing();
    }

    private TapeDrawing drawing() {
        List<Stretch> stretches = new ArrayList<>();
        List<Leader> leaders = new ArrayList<>();
        int y = 0;
        for (Row row : rows) {
            Mark mark = row.mark();
            if (to(mark) > from(mark)) {
                int from = at(from(mark));
                int to = at(to(mark));
                String label = row.isCut() && to - from >= LABEL ? Integer.toString(row.number()) : "";
                stretches.add(new Stretch(row.style(), from, to, label));
            }
            leaders.add(new Leader(row.style(), at(point(mark)), y + row.height() / 2));
            y += row.height();
        }
        return new TapeDrawing(WIDTH, height, stretches, leaders, broken ? (MARGIN + room + height) / 2 : 0);
    }

    /** Height of a position on the tape: one scale down to the break, another for the rest behind it. */
    private int at(long mm) {
        if (mm <= bottom) {
            return MARGIN + (int) ((mm - top) * room / Math.max(1, bottom - top));
        }
        int rest = height - 2 * MARGIN - room;
        return MARGIN + room + (int) ((mm - bottom) * rest / Math.max(1, end - bottom));
    }

    private static boolean isRest(Mark mark) {
        return mark.kind() == Kind.STAYS
                || mark.kind() == Kind.MEASURE
                || mark.kind() == Kind.COUNT_FIRST
                || mark.kind() == Kind.INNER_WRAPS;
    }

    private static boolean liesBelow(Mark mark) {
        return mark.kind() == Kind.LEAD_TRIM || isRest(mark);
    }

    private static long from(Mark mark) {
        return liesBelow(mark) ? mark.at().mm() : mark.at().minus(mark.length()).mm();
    }

    private static long to(Mark mark) {
        Length to = liesBelow(mark) ? mark.at().plus(mark.length()) : mark.at();
        return to.mm();
    }

    private static long point(Mark mark) {
        return mark.kind() == Kind.LEAD_TRIM ? mark.at().mm() / 2 : mark.at().mm();
    }
}
