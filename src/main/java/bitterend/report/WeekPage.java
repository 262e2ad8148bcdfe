package bitterend.report;

import bitterend.packing.ReelDraw;
import bitterend.report.page.Block;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The days ahead at a glance: what each day cuts and what it leaves undone, what comes in, and which reel is cut when, with the
 * days on which the pieces that are cut ahead on it would have had to be cut.
 */
final class WeekPage {
    private final PlanView view;
    private final Figures figures;
    private final WeekGrid grid;
    private final List<ReelDraw> draws;

    WeekPage(PlanView view, Figures figures) {
        this.view = view;
        this.figures = figures;
        grid = new WeekGrid(view);
        draws = grid.draws();
    }

    /**
     * All of it.
     *
     * @param more how the sheets of a day are asked for; never wrapped, may be empty
     * @param sheets the address of the sheets of a day; empty where there is none
     */
    void write(Writing page, String more, Function<LocalDate, String> sheets) {
        long promised = draws.stream().filter(view::isPromise).count();
        page.paragraph("To be cut today: " + FindingsPage.count(draws.size() - (int) promised, "reel") + ".");
        if (promised > 0) {
            page.paragraph(FindingsPage.count((int) promised, "reel") + " more " + (promised == 1 ? "is" : "are")
                    + " promised, and planned again by " + (promised == 1 ? "its" : "their") + " day.");
        }
        view.since().ifPresent(since -> page.paragraph(new ChangesBlock(since, figures).line()));
        if (draws.isEmpty() && view.plan().unplanned().isEmpty()) {
            return;
        }
        WeekPicture picture = new WeekPicture(view, grid);
        page.picture(new Block.Picture(
                picture.svg(),
                picture.more() == 0
                        ? ""
                        : "And " + FindingsPage.count(picture.more(), "reel") + " more, cut later: in the table."));
        page.heading("Day by day");
        page.table(byDay());
        if (!more.isEmpty()) {
            page.line(Block.Line.Weight.PLAIN, more);
        }
        page.links(grid.withSheets().stream()
                .map(day -> new Block.Link("Sheets of " + DueWords.named(day), sheets.apply(day)))
                .filter(link -> !link.address().isEmpty())
                .toList());
        new BenchWords(view).write(page);
        if (!view.problem().arrivals().isEmpty()) {
            page.heading("Rope on order");
            page.table(coming());
        }
        if (!draws.isEmpty()) {
            page.heading("Reel by reel");
            page.table(byReel());
            page.paragraph("A reel is cut on the first day on which one of its pieces must be cut, with all its pieces,"
                    + " and by the day it is to be used by; the days say by when each must be cut.");
        }
        new RiderWords(view).week(page);
    }

    private TableRows byDay() {
        Map<LocalDate, WeekGrid.Load> loads = grid.loads();
        boolean undone = loads.values().stream().anyMatch(load -> load.undone() > 0);
        List<Column> columns = new ArrayList<>(List.of(
                Column.words("day"),
                Column.figure("reels"),
                Column.figure("pieces"),
                Column.figure("of them\ncut ahead"),
                Column.figure("used\n" + figures.unit())));
        if (undone) {
            columns.add(Column.figure("pieces\non no reel"));
        }
        TableRows table = new TableRows(columns.toArray(Column[]::new));
        loads.forEach((day, load) -> {
            List<String> row = new ArrayList<>(List.of(
                    DueWords.named(day) + (day.equals(view.plan().day()) ? ", today" : ""),
                    Integer.toString(load.reels()),
                    Integer.toString(load.pieces()),
                    Integer.toString(load.ahead()),
                    figures.bareTotal(load.drawn())));
            if (undone) {
                row.add(count(load.undone()));
            }
            table.row(row.toArray(String[]::new));
        });
        return table;
    }

    private TableRows coming() {
        TableRows table = new TableRows(
                Column.words("reel"),
                Column.words("rope"),
                Column.words("expected"),
                Column.words("counted on from"),
                Column.figure("pieces\nthat ride on it"));
        view.problem()
                .arrivals()
                .forEach((reel, arrival) -> table.row(
                        reel,
                        view.problem().reel(reel).rope(),
                        DueWords.named(arrival.expected()),
                        DueWords.named(arrival.from()),
                        count(draws.stream()
                                .filter(draw -> draw.reel().equals(reel))
                                .mapToInt(draw -> draw.cuts().size())
                                .sum())));
        return table;
    }

    private TableRows byReel() {
        List<Column> columns = new ArrayList<>(
                List.of(Column.words("cut on"), Column.words("reel"), Column.words("rope"), Column.figure("pieces")));
        grid.days().forEach(day -> columns.add(Column.figure(DueWords.weekday(day) + "\n" + day.getDayOfMonth())));
        if (grid.hasLater()) {
            columns.add(Column.figure("later"));
        }
        TableRows table = new TableRows(columns.toArray(Column[]::new));
        for (ReelDraw draw : draws) {
            List<String> row = new ArrayList<>(List.of(
                    view.isPromise(draw) ? grid.cutOn(draw).toString() : "today",
                    draw.reel() + (view.problem().isComing(draw.reel()) ? ",\ncoming" : ""),
                    view.rope(draw).id(),
                    Integer.toString(draw.cuts().size())));
            for (int needed : grid.needed(draw)) {
                row.add(count(needed));
            }
            table.row(row.toArray(String[]::new));
        }
        return table;
    }

    private static String count(int pieces) {
        return pieces == 0 ? "" : Integer.toString(pieces);
    }
}
