package bitterend.report.sheet;

import bitterend.packing.ReelDraw;
import bitterend.report.DueWords;
import bitterend.report.FindingsPage;
import bitterend.report.PlanView;
import java.util.ArrayList;
import java.util.List;

/** What the first page of sheets says of reels that need not be cut yet, and of those that are not on the sheets. */
final class PromiseWords {
    private final PlanView view;

    PromiseWords(PlanView view) {
        this.view = view;
    }

    List<String> sentences() {
        List<ReelDraw> shown = view.draws();
        List<ReelDraw> promised = shown.stream().filter(view::isPromise).toList();
        List<String> sentences = new ArrayList<>();
        if (!promised.isEmpty() && promised.size() == shown.size()) {
            sentences.add("A promise: none of this need be cut before "
                    + DueWords.named(view.byId().days().of(promised.get(0))) + ", and it is planned again by then.");
        } else if (!promised.isEmpty()) {
            sentences.add(FindingsPage.count(promised.size(), "reel")
                    + (promised.size() == 1 ? " is" : " are") + " promised for later, and planned again by then:"
                    + " each says its day.");
        }
        int elsewhere = view.plan().draws().size() - shown.size();
        if (elsewhere > 0) {
            sentences.add(FindingsPage.count(elsewhere, "reel") + " more of this plan"
                    + (elsewhere == 1 ? " is" : " are") + " not on these sheets.");
        }
        return sentences;
    }
}
