package bitterend.report.sheet;

import bitterend.demand.Assembly;
import bitterend.measure.Written;
import bitterend.report.Figures;
import java.util.ArrayList;
import java.util.List;

/** Rope that a piece carries beyond the assembly, told where somebody could take it for a part of the length. */
final class ExtraRope {
    private final Figures figures;

    ExtraRope(Figures figures) {
        this.figures = figures;
    }

    /** Sample and spare of an order line, as sentences. */
    List<String> sentences(CardWork line) {
        Assembly.Extras extras = line.assembly().make().extras();
        List<String> sentences = new ArrayList<>();
        if (extras.sample().exact().isPositive() && !line.demanded().pieces().isEmpty()) {
            sentences.add("Sample: " + line.demanded().pieces().get(0).id() + " carries "
                    + figures.written(extras.sample())
                    + " for the break test. Cut it off first, at end B; then mark end B from the new cut end.");
        }
        if (extras.spare().exact().isPositive()) {
            sentences.add("Spare: every piece carries " + figures.written(extras.spare())
                    + " more than it needs; it stays "
                    + (hasTailMark(line) ? "beyond the tail mark of end B" : "at end B")
                    + " until the length is measured.");
        }
        return sentences;
    }

    /** A fitting and a cut end have no tail. */
    private static boolean hasTailMark(CardWork line) {
        return line.demanded().findCard().stream()
                .flatMap(card -> card.ends().stream())
                .anyMatch(end -> end.name().equals("end B") && end.tail().isPositive());
    }

    /** What a tag says of the rope beyond the assembly; empty for nothing. */
    static String brief(Written sample, Written spare, Figures figures) {
        List<String> words = new ArrayList<>();
        if (sample.exact().isPositive()) {
            words.add("with a sample of " + figures.written(sample));
        }
        if (spare.exact().isPositive()) {
            words.add("with " + figures.written(spare) + " spare");
        }
        return String.join(", ", words);
    }
}
