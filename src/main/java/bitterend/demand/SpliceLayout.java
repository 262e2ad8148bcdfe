package bitterend.demand;

import bitterend.measure.FineLength;
import java.util.List;

/**
 * Where one end is marked before it is made. Lengths only: the rope maker's current instructions come first.
 *
 * @param end {@code end A} or {@code end B}
 * @param name name of the termination
 * @param marks in the order in which they are set
 * @param counts what is counted instead of measured
 * @param caution what to read before making it
 */
public record SpliceLayout(String end, String name, List<Mark> marks, List<String> counts, String caution) {
    public SpliceLayout {
        marks = List.copyOf(marks);
        counts = List.copyOf(counts);
    }

    /**
     * One mark.
     *
     * @param name its plain name
     * @param on what it is set on
     * @param from the mark it is measured from
     * @param distance how far from there
     * @param fromCutEnd how far from the cut end of what it is set on
     */
    public record Mark(String name, String on, String from, FineLength distance, FineLength fromCutEnd) {}
}
