package bitterend.demand;

import bitterend.measure.FineLength;
import bitterend.measure.Sentence;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where one end is marked before it is made. Lengths only: the rope maker's current instructions come first.
 *
 * @param end {@code end A} or {@code end B}
 * @param name name of the termination
 * @param marks in the order in which they are set
 * @param counts what is counted instead of measured
 * @param caution what to read before making it
 */
public record SpliceLayout(String end, String name, List<Mark> marks, List<Sentence> counts, String caution) {
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
     * @param fromCutEnd how far from the cut end; nothing for a mark on a core that has been drawn, or one that is measured
     *     on the finished assembly
     * @param purpose what it is for, in a few words; empty for nothing
     */
    public record Mark(
            String name,
            String on,
            Sentence from,
            FineLength distance,
            @Nullable FineLength fromCutEnd,
            Sentence purpose) {
        /** A mark whose words hold no figure. */
        public Mark(
                String name,
                String on,
                String from,
                FineLength distance,
                @Nullable FineLength fromCutEnd,
                String purpose) {
            this(name, on, Sentence.of(from), distance, fromCutEnd, Sentence.of(purpose));
        }

        /** How far from the cut end, where that can be measured. */
        public Optional<FineLength> findFromCutEnd() {
            return Optional.ofNullable(fromCutEnd);
        }
    }
}
