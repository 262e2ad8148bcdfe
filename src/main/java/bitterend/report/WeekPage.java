package bitterend.report;

import bitterend.measure.Length;
import bitterend.packing.CutDays;
import bitterend.packing.ReelDraw;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The days ahead at a glance: what each day cuts, and which reel is cut when, with the days on which the pieces that are cut
 * ahead on it would have had to be cut.
 */
final class WeekPage {
    /** So many days have a column of their own; what lies beyond shares the last. */
    private static final int MOST_DAYS = 7;

    private final PlanView view;
    private final Figures figures;
    private final CutDays days;
    private final List<ReelDraw> draws;

    WeekPage(PlanView view, Figures figures) {
        this.view = view;
        this.figures = figures;
        days = view.byId().days();
        draws = view.draws();
    }

    void write(Writing page) {
        long today = draws.stream().filter(days::isToday).count();
        long promised = draws.size() - today;
        page.paragraph("To be cut today: " + FindingsPage.count((int) today, "reel") + ".");
        if (promised > 0) {
            page.paragraph(FindingsPage.count((int) promised, "reel") + " more " + (promised == 1 ? "is" : "are")
                    + " promised, and planned again before " + (promised == 1 ? "its" : "their") + " day.");
        }
        if (draws.isEmpty()) {
            return;
        }
        page.heading("Day by day");
        page.table(byDay());
        new BenchWords(view).write(page);
        page.heading("Reel by reel");
        page.table(byReel());
        page.paragraph("A reel is cut on the first day on which one of its pieces must be cut, with all its pieces; the"
                + " days say by when each must be cut.");
        new RiderWords(view).week(page);
        page.picture(new WeekPicture(view, days, draws).svg());
    }

    private TableRows byDay() {
        TreeMap<LocalDate, List<ReelDraw>> byDay = new TreeMap<>();
        draws.forEach(draw ->
                byDay.computeIfAbsent(days.of(draw), day -> new ArrayList<>()).add(draw));
        TableRows table = new TableRows(
                Column.words("day"),
                Column.figure("reels"),
                Column.figure("pieces"),
                Column.figure("of them\ncut ahead"),
                Column.figure("used\n" + figures.unit()));
        byDay.forEach((day, some) -> {
            long ahead = some.stream()
                    .flatMap(draw -> draw.cuts().stream())
                    .filter(cut -> days.lastFor(cut).isAfter(day))
                    .count();
            int pieces = some.stream().mapToInt(draw -> draw.cuts().size()).sum();
            Length used = some.stream().map(draw -> view.book(draw).drawn()).reduce(Length.ZERO, Length::plus);
            table.row(
                    named(day),
                    Integer.toString(some.size()),
                    Integer.toString(pieces),
                    Long.toString(ahead),
                    figures.bareTotal(used));
        });
        return table;
    }

    private TableRows byReel() {
        TreeSet<LocalDate> needed = new TreeSet<>();
        draws.forEach(draw -> draw.cuts().forEach(cut -> needed.add(days.lastFor(cut))));
        List<LocalDate> shown = needed.stream().limit(MOST_DAYS).toList();
        boolean more = needed.size() > shown.size();
        List<Column> columns = new ArrayList<>(
                List.of(Column.words("cut on"), Column.words("reel"), Column.words("rope"), Column.figure("pieces")));
        shown.forEach(day -> columns.add(Column.figure(DueWords.weekday(day) + "\n" + day.getDayOfMonth())));
        if (more) {
            columns.add(Column.figure("later"));
        }
        TableRows table = new TableRows(columns.toArray(Column[]::new));
        for (ReelDraw draw : draws) {
            List<String> row = new ArrayList<>(List.of(
                    days.isToday(draw) ? "today" : days.of(draw).toString(),
                    draw.reel() + (view.problem().isComing(draw.reel()) ? ",\ncoming" : ""),
                    view.rope(draw).id(),
                    Integer.toString(draw.cuts().size())));
            shown.forEach(day -> row.add(count(draw.cuts().stream()
                    .filter(cut -> days.lastFor(cut).equals(day))
                    .count())));
            if (more) {
                LocalDate last = shown.get(shown.size() - 1);
                row.add(count(draw.cuts().stream()
                        .filter(cut -> days.lastFor(cut).isAfter(last))
                        .count()));
            }
            table.row(row.toArray(String[]::new));
        }
        return table;
    }

    private static String count(long pieces) {
        return pieces == 0 ? "" : Long.toString(pieces);
    }

    private String named(LocalDate day) {
        return DueWords.named(day) + (day.equals(view.plan().day()) ? ", today" : "");
    }
}
