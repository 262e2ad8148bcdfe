package bitterend.demand;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Termination.What;
import bitterend.demand.Derivation.Line;
import bitterend.measure.FineLength;
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.List;

/**
 * Knots or loops of one kind that are made along a piece, in its standing part, such as the rungs of a ladder.
 *
 * @param count how many
 * @param each one of them, worked out
 */
record KnotsAlong(int count, MadeEnd each) {
    /** Where they are, as pages and findings say it. */
    static final String PLACE = "along the piece";

    /** What they take of the rope, together: round each loop, and into each knot. */
    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        String label = PLACE + ": " + each.termination().name();
        if (each.hasEye()) {
            lines.add(new Line(
                    label + ", round the loops",
                    Sentence.of(count + " times ").and(each.eye().round()),
                    each.eye().round().times(count),
                    each.eye().source()));
        }
        Allowance takeUp = each.allowance(What.TAKE_UP);
        FineLength one = each.length(What.TAKE_UP);
        Provenance source = takeUp.provenance();
        lines.add(new Line(
                label + ", into the knots",
                Sentence.of(count + " times ").and(takeUp.words(each.yardsticks())),
                one.times(count),
                source));
        return lines;
    }

    /** What is to be done at the bench. */
    SpliceLayout layout() {
        Sentence made = Sentence.of(count + " made along the standing part; each takes ")
                .and(each.length(What.TAKE_UP).plus(each.hasEye() ? each.eye().round() : FineLength.ZERO));
        return new SpliceLayout(
                PLACE,
                each.termination().name(),
                List.of(),
                List.of(made),
                each.termination().work().caution());
    }
}
