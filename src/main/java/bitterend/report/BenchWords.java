package bitterend.report;

import bitterend.day.BenchDay;
import bitterend.demand.EndWork;
import bitterend.finding.NaturalOrder;
import bitterend.packing.ReelDraw;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The hours of the bench against what a plan asks of them, in words. */
final class BenchWords {
    private static final int MINUTES_OF_AN_HOUR = 60;

    private final PlanView view;

    BenchWords(PlanView view) {
        this.view = view;
    }

    /** {@code 7 h 30 min}. */
    static String time(long minutes) {
        long hours = minutes / MINUTES_OF_AN_HOUR;
        long rest = minutes % MINUTES_OF_AN_HOUR;
        return hours == 0 ? rest + " min" : rest == 0 ? hours + " h" : hours + " h " + rest + " min";
    }

    /** What today asks of its hours, where any are stated, and the first day that is too full. */
    void screen(Writing page) {
        view.hours().stream()
                .filter(day -> day.day().equals(view.plan().day()))
                .forEach(day -> page.paragraph(asked(day)));
        broughtForward(page);
        view.hours().stream().filter(BenchDay::isTooFull).findFirst().ifPresent(day -> page.paragraph(tooFull(day)));
    }

    /** Every day with what it asks, and what to move off one that is too full. */
    void write(Writing page) {
        if (view.hours().isEmpty()) {
            return;
        }
        page.heading("Bench hours");
        page.table(table());
        broughtForward(page);
        view.hours().stream().filter(BenchDay::isTooFull).forEach(day -> page.paragraph(tooFull(day)));
        Map<String, Integer> untimed = untimed();
        if (!untimed.isEmpty()) {
            page.paragraph(Brief.list(
                    "Not counted, since no minutes are stated:",
                    untimed.entrySet().stream()
                            .map(each -> each.getKey() + ", " + FindingsPage.count(each.getValue(), "piece"))
                            .toList(),
                    "more",
                    2));
        }
    }

    /** Reels that are cut before their pieces ask for it, by the day on which they are. */
    private void broughtForward(Writing page) {
        Map<LocalDate, List<String>> reels = new TreeMap<>();
        view.plan().draws().stream().filter(ReelDraw::isBroughtForward).forEach(draw -> reels.computeIfAbsent(
                        draw.forward(), day -> new ArrayList<>())
                .add(draw.reel()));
        reels.forEach((day, ids) -> page.paragraph(Brief.list(
                "Brought forward to " + (day.equals(view.plan().day()) ? "today" : DueWords.named(day))
                        + ", since the bench is full later:",
                ids,
                "more",
                1)));
    }

    /** Days that ask for nothing have no row. */
    private TableRows table() {
        TableRows table = new TableRows(
                Column.words("day"),
                Column.figure("there\nh:min"),
                Column.figure("fetching"),
                Column.figure("cutting"),
                Column.figure("splicing"),
                Column.figure("room"),
                Column.figure("too\nmuch"));
        view.hours().stream()
                .filter(day -> day.used() + day.over() > 0)
                .forEach(day -> table.row(
                        DueWords.named(day.day()),
                        clock(day.there()),
                        clock(day.fetching()),
                        clock(day.cutting()),
                        clock(day.splicing()),
                        clock(day.room()),
                        clock(day.over())));
        return table;
    }

    private static String clock(int minutes) {
        return minutes == 0
                ? ""
                : String.format(Locale.ROOT, "%d:%02d", minutes / MINUTES_OF_AN_HOUR, minutes % MINUTES_OF_AN_HOUR);
    }

    private static String asked(BenchDay day) {
        return "Today at the bench: fetching " + time(day.fetching()) + ", cutting " + time(day.cutting())
                + ", splicing " + time(day.splicing()) + ", of " + time(day.there()) + " there.";
    }

    private String tooFull(BenchDay day) {
        List<String> words = new ArrayList<>();
        words.add(named(day.day()) + " is too full by " + time(day.over()) + ", of " + time(day.there()) + " there.");
        if (!day.leave().isEmpty()) {
            words.add(Brief.list("What is cut ahead there may wait:", day.leave(), "more", 1));
        }
        if (!day.late().isEmpty()) {
            words.add(Brief.list("Due then and not done:", day.late(), "more", 1));
        }
        if (!day.earlier().reels().isEmpty()) {
            words.add(Brief.list(
                    named(day.earlier().day()) + " has room; these may be cut then:",
                    day.earlier().reels(),
                    "more",
                    1));
        }
        return String.join(" ", words);
    }

    private String named(LocalDate day) {
        return day.equals(view.plan().day()) ? "Today" : DueWords.named(day);
    }

    /** Pieces of the plan with ends for which no minutes are stated, by the name of the end. */
    private Map<String, Integer> untimed() {
        Map<String, Integer> untimed = new TreeMap<>(NaturalOrder.IDS);
        for (WorkLine line : view.lines()) {
            int pieces = (int) line.demanded().pieces().stream()
                    .filter(piece -> view.pieces().containsKey(piece.id()))
                    .count();
            List<String> ends = line.demanded().work().stream()
                    .filter(end -> !end.isTimed())
                    .map(EndWork::termination)
                    .distinct()
                    .toList();
            if (pieces > 0) {
                ends.forEach(end -> untimed.merge(end, pieces, Integer::sum));
            }
        }
        return untimed;
    }
}
