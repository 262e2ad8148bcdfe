package bitterend.report.sheet;

import java.util.List;

/**
 * The tape of a reel to scale, working end at the top, as shapes of an SVG. Coordinates are CSS pixels.
 *
 * @param width width of the drawing
 * @param height its height
 * @param stretches stretches of rope, one under another
 * @param leaders lines from the marks on the tape to their rows
 * @param breakAt where the tape is drawn broken, the rest being longer than the scale allows; 0 when it is whole
 */
public record TapeDrawing(int width, int height, List<Stretch> stretches, List<Leader> leaders, int breakAt) {
    /** Wide enough for the tape and the ends of the mark where it is broken. */
    private static final int NARROW = 48;

    public TapeDrawing {
        stretches = List.copyOf(stretches);
        leaders = List.copyOf(leaders);
    }

    /** The tape alone, for where its rows are not beside it: a stretch and its row have the same number. */
    public TapeDrawing alone() {
        return new TapeDrawing(NARROW, height, stretches, List.of(), breakAt);
    }

    public boolean broken() {
        return breakAt > 0;
    }

    /**
     * A stretch of rope.
     *
     * @param style what it is, as a name for styles
     * @param from its upper edge
     * @param to its lower edge
     * @param label printed inside; empty where there is no room
     */
    public record Stretch(String style, int from, int to, String label) {
        public int height() {
            return Math.max(1, to - from);
        }

        public int middle() {
            return (from + to) / 2;
        }

        /** How it is filled, by patterns that a drawing of this id defines: told apart without colour. */
        public String fill(String id) {
            return switch (style) {
                case "cut" -> "url(#" + id + "-cut)";
                case "flaw" -> "url(#" + id + "-flaw)";
                case "scrap", "lead-trim", "count-first" -> "url(#" + id + "-scrap)";
                case "inner-wraps" -> "url(#" + id + "-wraps)";
                default -> "#ffffff";
            };
        }
    }

    /**
     * A line from a mark to its row.
     *
     * @param style what is marked, as a name for styles
     * @param mark height of the mark on the tape
     * @param row height of the middle of its row
     */
    public record Leader(String style, int mark, int row) {
        public boolean isCut() {
            return style.equals("cut");
        }
    }
}
