package bitterend.report;

import bitterend.finding.Finding;
import bitterend.packing.Horizon;
import bitterend.packing.ReelDraw;
import bitterend.report.page.Block;
import bitterend.report.page.Document;
import bitterend.report.page.Writing;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A day's plan: on one screen, in parts by a word each, or whole as for paper. */
public final class PlanPage {
    private final Figures figures;
    private final Tape tape;

    public PlanPage(Figures figures, Tape tape) {
        this.figures = figures;
        this.tape = tape;
    }

    /** All of it: what comes first, every reel with its tape, the totals, the proof, what could not be planned, cautions. */
    public Document of(PlanView view) {
        Writing page = titled(view);
        new PlanScreen(view, figures).write(page, true);
        page.gap();
        reels(page, view);
        new TotalsBlock(view, figures).write(page);
        view.since().ifPresent(since -> new ChangesBlock(since, figures).write(page));
        unplanned(page, view);
        Cautions.write(page, notes(view));
        return page.document();
    }

    /** What a person needs first, on one screen; {@code more}, never wrapped, says how the rest is asked for. */
    public Document screen(PlanView view, String more) {
        return screen(view, more, true);
    }

    /** The same for a page that has a list of its own of what to splice and measure first. */
    public Document screenBesideFirsts(PlanView view, String more) {
        return screen(view, more, false);
    }

    private Document screen(PlanView view, String more, boolean firsts) {
        Writing page = titled(view);
        new PlanScreen(view, figures).write(page, firsts);
        if (!more.isEmpty()) {
            page.line(Block.Line.Weight.PLAIN, more);
        }
        page.paragraph(Cautions.IN_ONE_LINE);
        return page.document();
    }

    /** Every reel with its tape, in the order of work. */
    public Document tables(PlanView view) {
        Writing page = titled(view);
        reels(page, view);
        Cautions.write(page, notes(view));
        return page.document();
    }

    /** What became of what the plan before it promised. */
    public Document changes(PlanView view) {
        Writing page = titled(view);
        view.since()
                .ifPresentOrElse(
                        since -> new ChangesBlock(since, figures).write(page),
                        () -> page.paragraph("No plan was in force before this one."));
        return page.document();
    }

    /**
     * The days ahead: what is cut when.
     *
     * @param more how the sheets of a day are asked for; never wrapped, may be empty
     * @param sheets the address of the sheets of a day; empty where there is none
     */
    public Document week(PlanView view, String more, Function<LocalDate, String> sheets) {
        Writing page = titled(view);
        new WeekPage(view, figures).write(page, more, sheets);
        return page.document();
    }

    /** One reel with its tape; nothing for one that the plan does not cut. */
    public Optional<Document> reel(PlanView view, String id) {
        return view.draws().stream()
                .filter(draw -> draw.reel().equals(id))
                .findFirst()
                .map(draw -> {
                    Writing page = titled(view);
                    new ReelBlock(view, figures, tape).write(page, draw);
                    return page.document();
                });
    }

    /** Why pieces are not planned and what would help, and what else to know before the cut. */
    public Document reasons(PlanView view) {
        Writing page = titled(view);
        Cautions.leftOut(view.notes()).forEach(page::paragraph);
        List<Horizon.Waiting> waiting = view.problem().horizon().waiting();
        if (view.plan().unplanned().isEmpty() && waiting.isEmpty()) {
            page.paragraph("Every piece is planned.");
        }
        waiting.forEach(each -> {
            page.paragraph(WaitingWords.of(each));
            WaitingWords.undone(each).forEach(page::paragraph);
        });
        unplanned(page, view);
        Cautions.write(page, notes(view));
        return page.document();
    }

    /** Where the rope goes, what the plan costs, and what is proven of it. */
    public Document money(PlanView view) {
        Writing page = titled(view);
        new TotalsBlock(view, figures).write(page);
        return page.document();
    }

    private static Writing titled(PlanView view) {
        Writing page = new Writing();
        int number = view.mark().number();
        page.title("Cutting plan " + (number == 0 ? "" : number + " ") + "for "
                + view.plan().day() + ", " + view.shop());
        return page;
    }

    private static List<Finding> notes(PlanView view) {
        return view.notes().stream()
                .filter(note -> !note.leavesOut() && !FirstArticle.isSaidInItsRow(note))
                .toList();
    }

    private void reels(Writing page, PlanView view) {
        ReelBlock block = new ReelBlock(view, figures, tape);
        for (ReelDraw draw : view.draws()) {
            block.write(page, draw);
        }
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
