package bitterend.report;

import bitterend.day.CountedRack;
import bitterend.day.CountedRack.Line;
import bitterend.measure.Length;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Wording;
import bitterend.report.page.Writing;
import bitterend.stock.Counted;
import bitterend.stock.Reel;
import java.util.List;
import java.util.stream.Collectors;

/** What a count of the rack found: differences in rope and money, what is looked at again, what was not counted. */
public final class CountPage {
    private final Figures figures;
    private final boolean money;

    public CountPage(Figures figures) {
        this(figures, true);
    }

    /** @param money whether it is shown what the differences cost */
    public CountPage(Figures figures, boolean money) {
        this.figures = figures;
        this.money = money;
    }

    /** All of it. */
    public Document of(CountedRack rack) {
        Writing page = new Writing();
        page.heading("What differs");
        differences(page, rack.differing(), "Nothing that was counted differs from the ledger.");
        if (!rack.apart().isEmpty()) {
            page.heading("Set apart: look at these again");
            differences(page, rack.apart(), "");
            page.paragraph(
                    "What is far off is counted again before it is booked, and so is a reel of which something was"
                            + " booked since. A reel that was not found is put on hold until it is.");
        }
        page.paragraph(agreed(rack));
        if (!rack.strangers().isEmpty()) {
            page.heading("Not in the books");
            rack.strangers().forEach(stranger -> page.paragraph(stranger(stranger)));
            page.paragraph("A count makes no reel: what is found is received, or an old booking is taken back.");
        }
        return page.document();
    }

    /** How many agree, and how many nobody counted. */
    private static String agreed(CountedRack rack) {
        String agree = FindingsPage.count(rack.agreeing().size(), "reel")
                + (rack.agreeing().size() == 1 ? " agrees" : " agree") + " with the ledger.";
        List<Reel> uncounted = rack.uncounted();
        return uncounted.isEmpty()
                ? agree
                : agree + " Not counted: "
                        + uncounted.stream()
                                .map(reel -> reel.id()
                                        + (reel.where().place().isEmpty()
                                                ? ""
                                                : " at " + reel.where().place()))
                                .map(Wording::printable)
                                .collect(Collectors.joining(", "))
                        + ".";
    }

    private String stranger(Counted stranger) {
        return Wording.printable(stranger.reel())
                + (stranger.found() == Counted.Found.THERE
                        ? ", " + figures.written(stranger.length())
                        : ", " + stranger.found().word());
    }

    private void differences(Writing page, List<Line> lines, String none) {
        if (lines.isEmpty()) {
            page.paragraph(none);
            return;
        }
        page.table(table(lines));
        page.paragraph("Together " + signed(CountedRack.by(lines))
                + (money
                        ? ", " + figures.money(CountedRack.money(lines)) + " by what the rope costs to replace."
                        : "."));
    }

    private TableRows table(List<Line> lines) {
        TableRows table = new TableRows(
                Column.words("place"),
                Column.words("reel"),
                Column.words("rope"),
                Column.figure("in the books"),
                Column.figure("counted"),
                Column.figure("difference"),
                Column.figure(money ? "money" : ""),
                Column.words("to know"));
        for (Line line : lines) {
            table.row(
                    Wording.printable(line.book().where().place()),
                    Wording.printable(line.book().id()),
                    Wording.printable(line.book().rope()),
                    figures.length(line.book().length()),
                    counted(line),
                    signed(line.by()),
                    money ? figures.money(line.money()) : "",
                    line.apart().words());
        }
        return table;
    }

    private String counted(Line line) {
        return line.counted().found() == Counted.Found.THERE
                ? figures.length(line.counted().length().roundedDown())
                : line.counted().found().word();
    }

    private String signed(Length by) {
        return (by.isPositive() ? "+" : "") + figures.length(by);
    }
}
