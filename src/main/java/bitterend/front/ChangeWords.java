package bitterend.front;

import bitterend.day.Changes;
import bitterend.report.Figures;
import bitterend.work.plans.PlannedDay;
import java.util.ArrayList;
import java.util.List;

/** What a plan that was just made does otherwise than the one before it. */
public final class ChangeWords {
    private static final int MOST = 20;

    private ChangeWords() {}

    /** Which plan it is held against, and whether anything moved. */
    public static String head(PlannedDay.Since since) {
        String than =
                isNamed(since) ? "since the earlier plan" : "since plan " + since.inForce() + ", which was in force";
        return since.changes().isEmpty() ? "nothing moved " + than + "." : "changed " + than + ":";
    }

    /** A line for each piece that moved, and why; of the plan in force the first of them. */
    public static List<String> lines(PlannedDay.Since since, Figures figures) {
        List<Changes.Change> changes = since.changes();
        int shown = isNamed(since) ? changes.size() : Math.min(MOST, changes.size());
        List<String> lines = new ArrayList<>();
        for (Changes.Change change : changes.subList(0, shown)) {
            lines.add(change.piece() + ": " + place(change.was()) + " -> " + place(change.now()) + ": "
                    + figures.sentence(change.why().without(change.piece() + " ")));
        }
        if (shown < changes.size()) {
            lines.add("and " + (changes.size() - shown) + " more pieces.");
        }
        return lines;
    }

    private static boolean isNamed(PlannedDay.Since since) {
        return since.inForce() == 0;
    }

    private static String place(String reel) {
        return reel.isEmpty() ? "not planned" : reel;
    }
}
