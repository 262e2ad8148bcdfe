package bitterend.report.sheet;

import java.util.List;

/**
 * The marks of one splice on one rope, an eye to a row.
 *
 * @param name name of the termination
 * @param rope id of the rope
 * @param marks names of the marks, in the order in which they are set
 * @param lines one for each eye
 * @param counts what is counted instead of measured
 * @param caution what to read before making it; empty for nothing
 */
public record SpliceTable(
        String name, String rope, List<String> marks, List<Line> lines, List<String> counts, String caution) {
    public SpliceTable {
        marks = List.copyOf(marks);
        lines = List.copyOf(lines);
        counts = List.copyOf(counts);
    }

    /**
     * One eye.
     *
     * @param eye what it is
     * @param figures a figure for each mark: from the cut end, or with + from the mark before
     * @param made the ends that are made so
     */
    public record Line(String eye, List<String> figures, String made) {
        public Line {
            figures = List.copyOf(figures);
        }
    }
}
