package bitterend.catalogue;

import java.util.List;

/**
 * How an end is laid out on the bench.
 *
 * @param marks where it is marked before it is made, in the order in which the marks are set
 * @param counts what is counted instead of measured, or done besides
 * @param clips the clips that hold it, {@link Clips#NONE} for none
 * @param rings rings that one piece holds the strands of; 1 for an end that is no ring
 */
public record Layout(List<LayoutMark> marks, List<String> counts, Clips clips, int rings) {
    public static final Layout NONE = new Layout(List.of(), List.of(), Clips.NONE, 1);

    public Layout {
        marks = List.copyOf(marks);
        counts = List.copyOf(counts);
        if (rings < 1) {
            throw new IllegalArgumentException("rings from a piece: " + rings);
        }
    }
}
