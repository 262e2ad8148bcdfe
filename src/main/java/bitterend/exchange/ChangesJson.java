package bitterend.exchange;

import bitterend.day.ChangedSince;
import bitterend.exchange.form.JsonTree;

/** What became of the promises of the plan before, under {@code --json}. */
final class ChangesJson {
    private ChangesJson() {}

    /** Every piece that is planned otherwise, every reel that is cut on another day, and how many pieces stay. */
    static String text(int plan, ChangedSince since) {
        return new JsonTree()
                .with("format", "bitterend/changes/1")
                .with("plan", plan)
                .with("since", since.plan())
                .with("kept", since.kept())
                .with(
                        "pieces",
                        since.changes().stream()
                                .map(change -> new JsonTree()
                                        .with("piece", change.piece())
                                        .with("was", change.was())
                                        .with("now", change.now())
                                        .with("why", change.why().exact()))
                                .toList())
                .with(
                        "days",
                        since.days().stream()
                                .map(day -> new JsonTree()
                                        .with("reel", day.reel())
                                        .with("was", day.was().toString())
                                        .with("now", day.now().toString())
                                        .with("pieces", day.pieces()))
                                .toList())
                .text();
    }
}
