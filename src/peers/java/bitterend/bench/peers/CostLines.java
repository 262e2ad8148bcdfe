package bitterend.bench.peers;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A function of whole numbers as straight lines, each over a stretch of its own and never above the function: what is
 * least by the lines is a bound on what is least by the function, and by {@link #TOLERANCE} at most too low.
 */
public final class CostLines {
    /** A fifth of the smallest coin, in 1/1000 minor unit. */
    public static final long TOLERANCE = 200;

    private final LongUnaryOperator function;
    private final long end;
    private final List<Line> lines = new ArrayList<>();

    /**
     * One line.
     *
     * @param from its first point
     * @param to its last point
     * @param start the value at the first
     * @param slope what the next point is higher
     */
    record Line(long from, long to, long start, long slope) {
        long at(long point) {
            return start + slope * (point - from);
        }

        private Line lowered(long by) {
            return new Line(from, to, start - by, slope);
        }
    }

    private CostLines(LongUnaryOperator function, long end) {
        this.function = function;
        this.end = end;
    }

    /** Lines for the points 0 to {@code end}; the first is for 0 alone and exact. */
    static List<Line> of(LongUnaryOperator function, long end) {
        CostLines all = new CostLines(function, end);
        all.lines.add(new Line(0, 0, function.applyAsLong(0), 0));
        for (long from = 1; from <= end; from = all.last().to() + 1) {
            all.lines.add(all.longest(from));
        }
        return all.lines;
    }

    private Line last() {
        return lines.get(lines.size() - 1);
    }

    /** As long as doubling finds it, then by halves. */
    private Line longest(long from) {
        Line best = new Line(from, from, function.applyAsLong(from), 0);
        long step = 1;
        for (boolean grows = true; step > 0; step = grows ? step * 2 : step / 2) {
            long to = Math.min(end, best.to() + step);
            Line longer = to > best.to() ? line(from, to) : null;
            if (longer != null) {
                best = longer;
            } else {
                grows = false;
            }
        }
        return best;
    }

    /** The chord, lowered until it is nowhere above the function; null where it is then too low. */
    private @Nullable Line line(long from, long to) {
        long start = function.applyAsLong(from);
        Line chord = new Line(from, to, start, Math.floorDiv(function.applyAsLong(to) - start, to - from));
        long above = 0;
        long below = 0;
        for (long point = from; point <= to; point++) {
            long over = chord.at(point) - function.applyAsLong(point);
            above = Math.max(above, over);
            below = Math.max(below, -over);
            if (above + below > TOLERANCE) {
                return null;
            }
        }
        return chord.lowered(above);
    }
}
