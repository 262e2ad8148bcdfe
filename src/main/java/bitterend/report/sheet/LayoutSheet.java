package bitterend.report.sheet;

import java.util.List;

/**
 * How one kind of end is marked.
 *
 * @param name name of the termination
 * @param lines order lines and ends that are made so
 * @param marks the marks, in the order in which they are set
 * @param counts what is counted instead of measured
 * @param caution what to read before making it
 */
public record LayoutSheet(String name, List<String> lines, List<MarkLine> marks, List<String> counts, String caution) {
    public LayoutSheet {
        lines = List.copyOf(lines);
        marks = List.copyOf(marks);
        counts = List.copyOf(counts);
    }

    /**
     * One mark, as printed.
     *
     * @param name its name
     * @param on what it is set on
     * @param from the mark it is measured from
     * @param distance how far from there
     * @param fromCutEnd how far from the cut end; empty where that cannot be measured
     * @param purpose what it is for; empty for nothing
     */
    public record MarkLine(String name, String on, String from, String distance, String fromCutEnd, String purpose) {}
}
