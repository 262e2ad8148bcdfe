package bitterend.report;

import bitterend.packing.explain.KeptWhole;
import bitterend.report.page.Writing;
import java.util.List;

/** The reels that a plan does not cut into today, since later work needs them. */
final class KeptWords {
    private static final int LINES = 2;

    private final PlanView view;

    KeptWords(PlanView view) {
        this.view = view;
    }

    /** In a line or two; nothing where there is none. */
    void screen(Writing page) {
        List<KeptWhole> kept = KeptWhole.of(
                view.problem(),
                view.draws().stream()
                        .filter(view::isPromise)
                        .filter(draw -> !view.problem().isComing(draw.reel()))
                        .toList(),
                view.plan().unplanned());
        if (!kept.isEmpty()) {
            page.paragraph(Brief.list(
                    "Not broken today, later work needs it:",
                    kept.stream().map(KeptWords::words).toList(),
                    "more",
                    LINES));
        }
    }

    /** {@code R1 for THU/1.1 on Thu 2026-03-05, so MON/1.1 waits}. */
    private static String words(KeptWhole kept) {
        List<String> waiting = kept.waiting();
        return kept.reel() + " for " + Brief.named(kept.pieces()) + " on " + DueWords.named(kept.day())
                + (waiting.isEmpty()
                        ? ""
                        : ", so " + Brief.named(waiting) + (waiting.size() == 1 ? " waits" : " wait"));
    }
}
