package bitterend.report;

import bitterend.packing.CutPlan;
import bitterend.packing.ReelDraw;
import bitterend.packing.UncertainRest;
import bitterend.report.page.Document;
import bitterend.report.page.Writing;
import java.util.stream.Collectors;

/** A day's plan as pages of text: every reel with its tape, the totals, the proof, what could not be planned. */
public final class PlanPage {
    private final Figures figures;
    private final Tape tape;

    public PlanPage(Figures figures, Tape tape) {
        this.figures = figures;
        this.tape = tape;
    }

    public Document of(PlanView view) {
        Writing page = new Writing();
        CutPlan plan = view.plan();
        int number = view.mark().number();
        page.title("Cutting plan " + (number == 0 ? "" : number + " ") + "for " + plan.day() + ", " + view.shop());
        Cautions.leftOut(view.notes()).forEach(page::paragraph);
        page.paragraph(summary(view) + toMeasure(view));
        ReelBlock block = new ReelBlock(view, figures, tape);
        for (ReelDraw draw : plan.draws()) {
            block.write(page, draw);
        }
        new TotalsBlock(view, figures).write(page);
        unplanned(page, view);
        Cautions.write(
                page, view.notes().stream().filter(note -> !note.leavesOut()).toList());
        return page.document();
    }

    private static String summary(PlanView view) {
        int planned = view.planned();
        int wanted = view.problem().pieces().size();
        int reels = view.plan().draws().size();
        String all = planned == wanted
                ? "all " + FindingsPage.count(wanted, "piece")
                : planned + " of " + FindingsPage.count(wanted, "piece");
        String short_ = planned == wanted ? "" : " " + (wanted - planned) + " could not be planned, see below.";
        return "Planned: " + all + " off " + FindingsPage.count(reels, "reel") + "." + short_;
    }

    private String toMeasure(PlanView view) {
        if (view.uncertain().isEmpty()) {
            return "";
        }
        String reels = view.uncertain().stream().map(UncertainRest::reel).collect(Collectors.joining(", "));
        return " Scrap for certain: " + figures.length(view.book().scrap()) + ". Probably left, to be measured: "
                + figures.length(view.probably()) + " on " + reels + ".";
    }

    private void unplanned(Writing page, PlanView view) {
        if (view.plan().unplanned().isEmpty()) {
            return;
        }
        page.heading("Could not be planned");
        ShortWork.of(view).forEach((work, ids) -> {
            page.paragraph(String.join(", ", ids) + (ids.size() == 1 ? ": " : ": each ") + what(work));
            page.paragraph(1, "Why: " + figures.sentence(work.why()) + ".");
            page.paragraph(1, "What would help: " + figures.sentence(work.help()) + ".");
        });
    }

    private String what(ShortWork work) {
        return figures.length(work.cut()) + " of " + work.rope();
    }
}
