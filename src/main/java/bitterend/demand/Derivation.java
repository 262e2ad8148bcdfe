package bitterend.demand;

import bitterend.catalogue.Provenance;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import java.util.List;

/**
 * How a cut length came about, line by line. The lines add up exactly; the rounding is the last of them.
 *
 * @param pieces ids of the pieces of this length
 * @param rope id of the rope it is cut from
 * @param lines the lines in the order in which they are printed
 * @param cut the cut length
 * @param notes what the reader should know besides: throat angles, what to do before the cut
 */
public record Derivation(List<String> pieces, String rope, List<Line> lines, Length cut, List<Sentence> notes) {
    public Derivation {
        pieces = List.copyOf(pieces);
        lines = List.copyOf(lines);
        notes = List.copyOf(notes);
        FineLength sum = lines.stream().map(Line::amount).reduce(FineLength.ZERO, FineLength::plus);
        if (!sum.equals(cut.fine())) {
            throw new IllegalArgumentException("lines of " + pieces + " add up to " + sum + ", not to " + cut);
        }
    }

    /**
     * One line of a derivation.
     *
     * @param label what the amount is, such as {@code end A: round the eye}
     * @param formula how it was worked out, in words with its numbers; empty when the label says it all
     * @param amount what it adds to the cut length; negative when it takes away
     * @param provenance where its numbers come from
     */
    public record Line(String label, Sentence formula, FineLength amount, Provenance provenance) {
        /** A line whose formula holds no figure. */
        public Line(String label, String formula, FineLength amount, Provenance provenance) {
            this(label, Sentence.of(formula), amount, provenance);
        }
    }
}
