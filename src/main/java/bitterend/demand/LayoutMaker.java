package bitterend.demand;

import bitterend.catalogue.LayoutMark;
import bitterend.catalogue.Termination.What;
import bitterend.demand.SpliceLayout.Mark;
import bitterend.measure.FineLength;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Lays out the marks of an end. */
final class LayoutMaker {
    private static final String FOLLOW = "Lengths only: follow the rope maker's current instructions.";

    private LayoutMaker() {}

    static SpliceLayout layout(MadeEnd end) {
        Map<String, FineLength> places = new HashMap<>();
        places.put(LayoutMark.CUT_END, FineLength.ZERO);
        List<Mark> marks = new ArrayList<>();
        for (LayoutMark mark : end.termination().marks()) {
            FineLength distance = mark.distance().length(end.yardsticks());
            FineLength place = distance.plus(places.getOrDefault(mark.from(), FineLength.ZERO));
            places.put(mark.name(), place);
            marks.add(new Mark(mark.name(), mark.on(), mark.from(), distance, place));
        }
        if (marks.isEmpty()) {
            marks.addAll(usual(end));
        }
        String caution = end.termination().work().caution();
        return new SpliceLayout(
                end.name(),
                end.termination().name(),
                marks,
                counts(end),
                caution.isEmpty() || caution.startsWith("Follow the rope maker") ? FOLLOW : caution + " " + FOLLOW);
    }

    /** A row without a layout of its own has a tail, and a throat behind the eye. */
    private static List<Mark> usual(MadeEnd end) {
        FineLength tail = end.length(What.TAIL);
        List<Mark> marks = new ArrayList<>();
        if (tail.isPositive()) {
            marks.add(new Mark("tail mark", "rope", LayoutMark.CUT_END, tail, tail));
        }
        if (end.hasEye()) {
            FineLength round = end.eye().round();
            marks.add(new Mark(
                    "throat mark",
                    "rope",
                    tail.isPositive() ? "tail mark" : LayoutMark.CUT_END,
                    round,
                    round.plus(tail)));
        }
        return marks;
    }

    private static List<String> counts(MadeEnd end) {
        List<String> counts = new ArrayList<>();
        if (end.yardsticks().tucks() > 0) {
            counts.add(end.yardsticks().tucks() + " tucks with each strand"
                    + (end.spec().options().tapered() ? ", the last of them tapered away" : ""));
        }
        counts.addAll(end.termination().counts());
        return counts;
    }
}
