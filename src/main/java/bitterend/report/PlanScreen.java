package bitterend.report;

import bitterend.finding.Finding;
import bitterend.finding.NaturalOrder;
import bitterend.packing.CutDays;
import bitterend.packing.Horizon;
import bitterend.packing.LengthBook;
import bitterend.packing.ReelDraw;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A day's plan on one screen, what a person needs first: what is not planned and what would help, what to splice and
 * measure first, what is heavy, what is wasted, then a line for each reel in the order of work. At most twenty lines and
 * one for each reel, of which the most urgent {@value #MOST_REELS} are shown.
 */
final class PlanScreen {
    private static final int MOST_REELS = 25;
    private static final int LINES_LEFT_OUT = 1;
    private static final int LINES_UNDONE = 5;
    private static final int LINES_FIRST = 3;
    private static final int LINES_HEAVY = 1;
    private static final int LINES_DATED = 2;

    private final PlanView view;
    private final Figures figures;
    private final List<ReelDraw> draws;

    PlanScreen(PlanView view, Figures figures) {
        this.view = view;
        this.figures = figures;
        draws = view.draws();
    }

    /** @param firsts whether what to splice and measure first is said here, and not by the page around it */
    void write(Writing page, boolean firsts) {
        leftOut(page);
        undone(page);
        undoneAhead(page);
        if (firsts) {
            first(page);
        }
        heavy(page);
        measure(page);
        page.paragraph(planned());
        today(page);
        later(page);
        view.since().ifPresent(since -> page.paragraph(new ChangesBlock(since, figures).line()));
        new KeptWords(view).screen(page);
        new RiderWords(view).screen(page);
        new BenchWords(view).screen(page);
        page.paragraph(waste());
        page.gap();
        page.table(reels());
        if (draws.stream().limit(MOST_REELS).anyMatch(draw -> DueWords.isFirst(view, draw))) {
            page.paragraph("First: on that reel is work of priority 1, the last to be left undone.");
        }
        int more = draws.size() - MOST_REELS;
        if (more > 0) {
            page.paragraph("And " + FindingsPage.count(more, "reel") + " more, less urgent.");
        }
    }

    private String planned() {
        int wanted = view.problem().pieces().size() + waiting();
        int planned = view.planned();
        return "Planned: "
                + (planned == wanted
                        ? "all " + FindingsPage.count(wanted, "piece")
                        : planned + " of " + FindingsPage.count(wanted, "piece"))
                + " off " + FindingsPage.count(draws.size(), "reel") + onOrder() + ".";
    }

    /** Pieces of the days looked at that are not cut ahead while rope is short: they are on no reel. */
    private int waiting() {
        return view.problem().horizon().waiting().stream()
                .mapToInt(each -> each.pieces().size())
                .sum();
    }

    private String onOrder() {
        long coming = draws.stream()
                .filter(draw -> view.problem().isComing(draw.reel()))
                .count();
        return coming == 0 ? "" : ", " + coming + " of them on order";
    }

    /** A reel is cut when its first piece must be: how many are cut today, where not all are. */
    private void today(Writing page) {
        CutDays days = view.byId().days();
        long today = draws.stream().filter(days::isToday).count();
        if (today < draws.size()) {
            page.paragraph(
                    today == 0
                            ? "None must be cut today: each reel is promised for the day it says."
                            : "To be cut today: " + today + " of them; the others are promised for the day they say.");
        }
        List<String> dated = draws.stream()
                .filter(days::isForItsUseBy)
                .map(draw -> "reel " + draw.reel() + ", " + DueWords.named(days.of(draw)))
                .toList();
        if (!dated.isEmpty()) {
            page.paragraph(Brief.list(
                    "Cut before its work must be, since it is to be used by then:", dated, "more", LINES_DATED));
        }
    }

    /** What need not be cut yet is a line, no work left undone. */
    private void later(Writing page) {
        Horizon horizon = view.problem().horizon();
        if (horizon.isTodayAlone()) {
            page.paragraph("Planned for today alone: looking ahead to " + horizon.asked()
                    + " leaves more first-class work of today undone.");
        }
        horizon.waiting().forEach(each -> page.paragraph(WaitingWords.brief(each)));
        if (horizon.later() > 0) {
            page.paragraph(FindingsPage.count(horizon.later(), "piece") + " more to be cut after " + horizon.until()
                    + ", planned later.");
        }
    }

    private void undone(Writing page) {
        List<String> paragraphs = new ArrayList<>();
        Map<ShortWork, List<String>> short_ = ShortWork.of(view);
        short_.forEach((work, ids) -> paragraphs.add("Not planned: " + Brief.named(ids) + ", "
                + (ids.size() == 1 ? "" : "each ") + figures.length(work.cut()) + " of " + work.rope() + ". "
                + LengthsPage.sentence(figures.sentence(work.help()))));
        int shown = Brief.fitting(paragraphs, LINES_UNDONE);
        paragraphs.subList(0, shown).forEach(page::paragraph);
        if (shown < paragraphs.size()) {
            int more = short_.values().stream().skip(shown).mapToInt(List::size).sum();
            page.paragraph((shown == 0 ? "Not planned: " : "And ")
                    + FindingsPage.count(more, "piece")
                    + (shown == 0 ? "" : " more not planned") + "; the reasons say why and what would help.");
        }
    }

    /** What is not cut ahead, and finds no rope later either. */
    private void undoneAhead(Writing page) {
        List<String> paragraphs = view.problem().horizon().waiting().stream()
                .flatMap(each -> WaitingWords.undone(each).stream())
                .toList();
        int shown = Brief.fitting(paragraphs, LINES_UNDONE);
        paragraphs.subList(0, shown).forEach(page::paragraph);
        if (shown < paragraphs.size()) {
            page.paragraph((shown == 0 ? "Not planned: " : "And ")
                    + FindingsPage.count(paragraphs.size() - shown, "order line")
                    + (shown == 0 ? "" : " more") + " not cut ahead, without rope; the reasons name them.");
        }
    }

    /** Where the order lines with errors stand; what is wrong with them is said above the page, and by the reasons. */
    private void leftOut(Writing page) {
        List<String> places = view.notes().stream()
                .filter(Finding::leavesOut)
                .map(note -> note.file() + " " + note.place())
                .distinct()
                .sorted(NaturalOrder.IDS)
                .toList();
        if (!places.isEmpty()) {
            page.paragraph(Brief.list("Left out with errors:", places, "more", LINES_LEFT_OUT));
        }
    }

    /** Those of today without a date: they come first. */
    private void first(Writing page) {
        LocalDate today = view.plan().day();
        List<String> firsts = FirstArticle.of(view).stream()
                .map(first -> first.piece() + " (" + first.termination() + ", " + first.rope()
                        + (first.day().equals(today) ? "" : ", " + first.day()) + ")")
                .toList();
        if (!firsts.isEmpty()) {
            page.paragraph(Brief.list("Splice and measure first:", firsts, "more", LINES_FIRST));
        }
    }

    private void heavy(Writing page) {
        ReelWords words = new ReelWords(view, figures);
        List<String> heavy = new ArrayList<>();
        for (ReelDraw draw : draws) {
            draw.cuts().stream()
                    .filter(cut -> !words.heavy(draw, cut.length()).isEmpty())
                    .forEach(cut -> heavy.add(cut.piece()));
        }
        draws.stream().filter(words::isHeavy).forEach(draw -> heavy.add("reel " + draw.reel()));
        if (!heavy.isEmpty()) {
            page.paragraph(Brief.list("Too heavy for one person:", heavy, "more", LINES_HEAVY));
        }
    }

    private void measure(Writing page) {
        List<String> reels = view.uncertain().stream()
                .map(rest -> rest.reel() + " (" + figures.total(rest.byLedger()) + ")")
                .toList();
        if (!reels.isEmpty()) {
            page.paragraph(Brief.list("Measure when cut, something is probably left:", reels, "more", LINES_HEAVY));
        }
    }

    private String waste() {
        LengthBook book = view.book();
        return "Waste " + figures.total(book.waste()) + " of " + figures.total(book.drawn()) + " drawn, "
                + figures.percent(book.waste().mm(), book.drawn().mm(), 1) + " %, "
                + figures.money(view.worth(LengthBook::waste)) + ".";
    }

    private TableRows reels() {
        String unit = "\n" + figures.unit();
        TableRows table = new TableRows(
                Column.words("cut by"),
                Column.words("place"),
                Column.words("reel"),
                Column.words("rope"),
                Column.figure("pieces"),
                Column.figure("used" + unit),
                Column.figure("scrap" + unit),
                Column.figure("left" + unit));
        draws.stream().limit(MOST_REELS).forEach(draw -> {
            LengthBook book = view.book(draw);
            table.row(
                    DueWords.of(view, draw),
                    view.place(draw),
                    draw.reel(),
                    view.rope(draw).id(),
                    Integer.toString(draw.cuts().size()),
                    figures.bareTotal(book.drawn()),
                    figures.bareTotal(book.scrap()),
                    figures.bareTotal(book.left().plus(book.kept())));
        });
        return table;
    }
}
