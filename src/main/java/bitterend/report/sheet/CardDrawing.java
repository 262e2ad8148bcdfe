package bitterend.report.sheet;

import java.util.List;

/**
 * The drawing of a splice card, in CSS pixels: above, the piece as it lies on the bench before it is spliced, marked; below,
 * the finished leg. Both ends are to one scale, the rope between them is broken off.
 *
 * @param height of the whole drawing
 * @param bandAt top of the piece
 * @param stretches what the piece consists of, from its left to its right
 * @param ticks its marks
 * @param breaks where rope is left out before a mark that lies further in
 * @param strips cores that are drawn out and marked on their own, below the piece
 * @param shapeAt axis of the finished leg
 * @param ends the finished ends, left and right
 * @param finished finished length, as it is printed
 */
public record CardDrawing(
        int height,
        int bandAt,
        List<Stretch> stretches,
        List<Tick> ticks,
        List<Integer> breaks,
        List<Strip> strips,
        int shapeAt,
        List<Shape> ends,
        String finished) {
    /** Width of every drawing. */
    public static final int WIDTH = 700;

    public CardDrawing {
        stretches = List.copyOf(stretches);
        ticks = List.copyOf(ticks);
        breaks = List.copyOf(breaks);
        strips = List.copyOf(strips);
        ends = List.copyOf(ends);
    }

    /**
     * A stretch of the piece.
     *
     * @param style {@code tail}, {@code eye} or {@code rope}
     */
    public record Stretch(int x, int width, String style) {
        /** Its colour, or the pattern of that id. */
        public String fill(String pattern) {
            return switch (style) {
                case "tail" -> "url(#" + pattern + ")";
                case "eye" -> "#ffffff";
                default -> "#e3e8ea";
            };
        }
    }

    /**
     * A mark and its label.
     *
     * @param x where it is set
     * @param y baseline of its label
     * @param label name and figure
     * @param anchor {@code start} for a label that runs to the right of its mark, {@code end} to the left
     */
    public record Tick(int x, int y, String label, String anchor) {
        private static final int LETTER = 7;

        /** Its label and the gap to its mark, rather too wide. */
        int width() {
            return label.length() * LETTER + 10;
        }

        public int labelX() {
            return anchor.equals("start") ? x + 4 : x - 4;
        }
    }

    /** A drawn core: a thin strip with marks below it. */
    public record Strip(int x, int y, int width, List<Tick> ticks) {
        public Strip {
            ticks = List.copyOf(ticks);
        }

        /** Where its leftmost label begins. */
        int left() {
            return ticks.stream()
                    .mapToInt(tick -> tick.anchor().equals("start") ? tick.x() : tick.x() - tick.width())
                    .min()
                    .orElse(x);
        }

        /** Where its rightmost label ends. */
        int right() {
            return ticks.stream()
                    .mapToInt(tick -> tick.anchor().equals("start") ? tick.x() + tick.width() : tick.x())
                    .max()
                    .orElse(x + width);
        }

        /** Baseline of its lowest label. */
        int bottom() {
            return ticks.stream().mapToInt(Tick::y).max().orElse(y);
        }
    }

    /**
     * A finished end.
     *
     * @param left whether it is the left one
     * @param kind {@code eye}, {@code ring}, {@code fitting}, {@code join} or {@code bare}
     * @param lined whether a thimble lines the eye
     * @param crown where it ends, on the axis
     * @param throat where the rope begins to be one
     * @param spread half the width of the eye
     * @param tail how far the tail reaches back, from the throat
     * @param label what it is, in a few words
     */
    public record Shape(
            boolean left, String kind, boolean lined, int crown, int throat, int spread, int tail, String label) {
        /** The eye as a drop, inside line or outside line, {@code by} pixels wider. */
        public String drop(int axis, int by) {
            int toCrown = left ? -1 : 1;
            int tip = crown + toCrown * by;
            int wide = spread + by;
            int belly = crown - toCrown * Math.min(spread, Math.abs(throat - crown) * 2 / 3);
            return "M" + throat + "," + axis + " C" + (throat + belly) / 2 + "," + (axis - wide) + " " + belly + ","
                    + (axis - wide) + " " + belly + "," + (axis - wide) + " C" + tip + "," + (axis - wide) + " " + tip
                    + ","
                    + (axis + wide) + " " + belly + "," + (axis + wide) + " C" + belly + "," + (axis + wide) + " "
                    + (throat + belly) / 2 + "," + (axis + wide) + " " + throat + "," + axis + " Z";
        }

        /** A thinner line leaves a small eye open. */
        public int line() {
            return spread < 10 ? 3 : 7;
        }

        /** Where its tail ends. */
        public int tailEnd() {
            return left ? throat + tail : throat - tail;
        }
    }
}
