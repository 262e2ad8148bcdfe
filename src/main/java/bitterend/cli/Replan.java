package bitterend.cli;

import bitterend.day.Changes;
import bitterend.day.OpenWork;
import bitterend.day.RackToday;
import bitterend.exchange.PlanDocument;
import bitterend.finding.Findings;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.store.SqliteLedger;
import bitterend.work.Plans;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Planning while the day is under way: what is cut already, and what an earlier plan meant to do. */
final class Replan {
    private static final int MOST_TOLD = 20;

    private final Terminal terminal;
    private final PackingProblem day;
    private final Optional<RackToday> rack;
    private @Nullable CutPlan earlier;
    private int inForce;

    Replan(Terminal terminal, PackingProblem day, Optional<RackToday> rack) {
        this.terminal = terminal;
        this.day = day;
        this.rack = rack;
    }

    /** What is still to be cut, near the earlier plan if one is given. */
    PackingProblem open(@Nullable PlanDocument from) {
        OpenWork work = new OpenWork(day, rack.orElse(RackToday.NONE));
        earlier = from == null ? null : from.plan();
        PackingProblem open = from == null ? work.fresh() : work.after(from.plan());
        tellStock(open);
        return open;
    }

    /** Which stock is planned with, and how much of the work is done. */
    private void tellStock(PackingProblem open) {
        int cut = day.pieces().size() - open.pieces().size();
        String source = rack.isPresent() ? SqliteLedger.NAME : "reels.csv";
        terminal.err()
                .println("stock: " + source + ", "
                        + FindingsPage.count(day.reels().size(), "reel")
                        + (cut == 0 ? "" : "; " + FindingsPage.count(cut, "piece") + " cut already"));
    }

    /** Unless an earlier plan was named, the new one is held against the one that is in force. */
    void compareWith(Plans plans) {
        if (earlier == null) {
            plans.inForce()
                    .flatMap(number -> plans.read(number, new Findings()))
                    .ifPresent(kept -> {
                        earlier = kept.document().plan();
                        inForce = kept.document().number();
                    });
        }
    }

    /** Tells what the new plan does otherwise than the earlier one. */
    void tellChanges(PackingProblem open, CutPlan now, Figures figures) {
        if (earlier == null) {
            return;
        }
        List<Changes.Change> changes = new Changes(open).since(earlier, now);
        String than = inForce == 0 ? "since the earlier plan" : "since plan " + inForce + ", which was in force";
        terminal.err().println(changes.isEmpty() ? "nothing moved " + than + "." : "changed " + than + ":");
        int shown = inForce == 0 ? changes.size() : Math.min(MOST_TOLD, changes.size());
        for (Changes.Change change : changes.subList(0, shown)) {
            String was = change.was().isEmpty() ? "not planned" : change.was();
            String is = change.now().isEmpty() ? "not planned" : change.now();
            terminal.err()
                    .println("  " + change.piece() + ": " + was + " -> " + is + ": " + figures.sentence(change.why()));
        }
        if (shown < changes.size()) {
            terminal.err().println("  and " + (changes.size() - shown) + " more pieces.");
        }
    }
}
