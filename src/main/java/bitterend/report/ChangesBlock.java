package bitterend.report;

import bitterend.day.ChangedSince;
import bitterend.day.Changes;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.ArrayList;
import java.util.List;

/** What became of the promises of the plan before: a line on a screen, every piece on a page. */
final class ChangesBlock {
    private final ChangedSince since;
    private final Figures figures;

    ChangesBlock(ChangedSince since, Figures figures) {
        this.since = since;
        this.figures = figures;
    }

    /** {@code Since plan 3: 7 pieces stay, 2 change their reel, 3 are new; 1 reel is cut on another day.} */
    String line() {
        if (since.isAsPromised()) {
            return "As plan " + since.plan() + " promised: " + pieces(since.kept(), " stays", " stay")
                    + " on the same reel and day.";
        }
        List<String> parts = new ArrayList<>();
        add(parts, since.kept(), " stays", " stay");
        add(parts, since.moved(), " changes its reel", " change their reel");
        add(parts, since.fresh(), " is new", " are new");
        add(parts, since.dropped(), " is no longer planned", " are no longer planned");
        int days = since.days().size();
        return "Since plan " + since.plan() + ": " + String.join(", ", parts)
                + (days == 0
                        ? ""
                        : "; " + FindingsPage.count(days, "reel") + (days == 1 ? " is" : " are")
                                + " cut on another day")
                + ".";
    }

    private static void add(List<String> parts, int count, String one, String several) {
        if (count > 0) {
            parts.add(parts.isEmpty() ? pieces(count, one, several) : count + (count == 1 ? one : several));
        }
    }

    private static String pieces(int count, String one, String several) {
        return FindingsPage.count(count, "piece") + (count == 1 ? one : several);
    }

    /** All of it. */
    void write(Writing page) {
        page.heading("Since plan " + since.plan());
        page.paragraph(line());
        if (!since.days().isEmpty()) {
            TableRows days = new TableRows(
                    Column.words("reel"),
                    Column.words("was promised for"),
                    Column.words("is cut on"),
                    Column.figure("pieces"));
            since.days()
                    .forEach(day -> days.row(
                            day.reel(),
                            DueWords.named(day.was()),
                            DueWords.named(day.now()),
                            Integer.toString(day.pieces())));
            page.table(days);
        }
        if (!since.changes().isEmpty()) {
            page.table(pieces());
        }
    }

    private TableRows pieces() {
        TableRows table = new TableRows(
                Column.words("piece"), Column.words("was off"), Column.words("is off"), Column.words("why"));
        for (Changes.Change change : since.changes()) {
            table.row(
                    change.piece(),
                    change.was().isEmpty() ? "not planned" : change.was(),
                    change.now().isEmpty() ? "not planned" : change.now(),
                    figures.sentence(change.why().without(change.piece() + " ")));
        }
        return table;
    }
}
