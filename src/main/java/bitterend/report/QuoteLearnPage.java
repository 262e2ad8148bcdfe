package bitterend.report;

import static bitterend.report.TableFigures.count;
import static bitterend.report.TableFigures.words;

import bitterend.quoting.after.Learned;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import bitterend.report.table.DataTable;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/** Where quotes were off over many jobs, as tables and a picture, and what to count on instead. */
public final class QuoteLearnPage {
    private static final int PER_MILLE = 1000;

    private final Figures figures;

    public QuoteLearnPage(Figures figures) {
        this.figures = figures;
    }

    /** The page of all jobs. */
    public Document of(String shop, Learned learned) {
        Writing page = new Writing();
        page.title("What jobs teach the next quote:", FindingsPage.count(learned.jobs(), "job"), shop);
        page.paragraph("Jobs are accepted quotes of which at least one line is cut whole. What fewer than "
                + Learned.FEWEST_JOBS + " jobs say proposes nothing.");
        if (!learned.ropes().isEmpty()) {
            page.heading("Rope");
            page.tableApart(ropes(learned));
            page.paragraph(
                    "Waste is that of the good pieces with reel handling, in percent of the rope in them. Spoiled"
                            + " rope is not among it, and neither is freight; a quote that does not say how much freight is in"
                            + " its rope has freight by reel and by weight in it.");
            if (learned.ropes().stream().anyMatch(rope -> rope.proposed().isPresent())) {
                page.paragraph(
                        "No file takes a rate of waste, for a quote works its waste out: which of its three views is"
                                + " charged says waste, under quote in shop.json.");
            }
            learned.ropes().stream()
                    .filter(rope -> rope.quoted().spoilage().minor() != 0
                            || rope.posted().spoilage().minor() != 0)
                    .forEach(rope -> page.paragraph(rope.rope() + ": spoilage quoted, of rope and work, "
                            + figures.currency().print(rope.quoted().spoilage()) + "; rope that was spoiled "
                            + figures.currency().print(rope.posted().spoilage()) + "."));
        }
        if (!learned.ends().isEmpty()) {
            page.heading("Ends");
            page.tableApart(ends(learned));
            page.paragraph(
                    "Minutes are of lines for all pieces of which some were booked. They fall to the two ends of a"
                            + " piece by what the quote counted each at, evenly where it counted none.");
            takeOver(page, learned);
        }
        if (!learned.ropes().isEmpty() || !learned.ends().isEmpty()) {
            page.picture(new QuoteLearnPicture(figures).of(learned));
        }
        return page.document();
    }

    private void takeOver(Writing page, Learned learned) {
        List<String> rows = learned.ends().stream()
                .filter(end -> end.proposed().isPresent() && !end.termination().isEmpty())
                .map(end -> end.termination() + " " + end.proposed().getAsLong())
                .toList();
        if (!rows.isEmpty()) {
            page.paragraph(
                    "Take a proposal over by hand: in splices.json of the shop, under terminations, the minutes of "
                            + String.join(", ", rows) + ". Where five ends or more of a kind are booked on a rope in"
                            + " measured.csv, their mean comes before that.");
        }
    }

    private TableRows ropes(Learned learned) {
        String currency = figures.currency().currency();
        TableRows table = new TableRows(
                Column.words("rope"),
                Column.figure("jobs"),
                Column.figure("quoted\n" + currency),
                Column.figure("posted\n" + currency),
                Column.figure("waste\nquoted, %"),
                Column.figure("waste\nposted, %"),
                Column.figure("proposed\nwaste, %"));
        for (Learned.OfRope rope : learned.ropes()) {
            table.row(
                    rope.rope(),
                    Integer.toString(rope.jobs()),
                    figures.bare(rope.quoted().all()),
                    figures.bare(rope.posted().all()),
                    share(rope.quoted().wastePerMille()),
                    share(rope.posted().wastePerMille()),
                    proposed(rope.proposed(), true));
        }
        return table;
    }

    private TableRows ends(Learned learned) {
        TableRows table = new TableRows(
                Column.words("end"),
                Column.figure("jobs"),
                Column.figure("made"),
                Column.figure("minutes each,\nquoted"),
                Column.figure("minutes each,\nposted"),
                Column.figure("proposed\nminutes"));
        for (Learned.OfEnd end : learned.ends()) {
            table.row(
                    end.end(),
                    Integer.toString(end.jobs()),
                    Long.toString(end.made()),
                    Long.toString(end.each(end.quoted())),
                    Long.toString(end.each(end.posted())),
                    proposed(end.proposed(), false));
        }
        return table;
    }

    private String share(long perMille) {
        return figures.percent(perMille, PER_MILLE, 1);
    }

    private String proposed(OptionalLong proposed, boolean isShare) {
        return proposed.isEmpty() ? "-" : isShare ? share(proposed.getAsLong()) : Long.toString(proposed.getAsLong());
    }

    /** The same for a spreadsheet; a figure that is not proposed is left blank. */
    public List<DataTable> tables(Learned learned) {
        TableFigures typed = new TableFigures(figures);
        List<DataTable.Column<Learned.OfRope>> ropes = new ArrayList<>(List.of(
                words("rope", Learned.OfRope::rope),
                count("jobs", Learned.OfRope::jobs),
                typed.money("quoted", rope -> rope.quoted().all()),
                typed.money("posted", rope -> rope.posted().all()),
                words("waste quoted (%)", rope -> share(rope.quoted().wastePerMille())),
                words("waste posted (%)", rope -> share(rope.posted().wastePerMille())),
                typed.money("spoilage quoted", rope -> rope.quoted().spoilage()),
                typed.money("spoiled rope", rope -> rope.posted().spoilage()),
                words("proposed waste (%)", rope -> rope.proposed().isEmpty() ? "" : proposed(rope.proposed(), true))));
        List<DataTable.Column<Learned.OfEnd>> ends = List.of(
                words("end", Learned.OfEnd::end),
                count("jobs", Learned.OfEnd::jobs),
                count("made", Learned.OfEnd::made),
                count("quoted (min each)", end -> end.each(end.quoted())),
                count("posted (min each)", end -> end.each(end.posted())),
                words("proposed (min)", end -> end.proposed().isEmpty() ? "" : proposed(end.proposed(), false)));
        return List.of(DataTable.of("Ropes", learned.ropes(), ropes), DataTable.of("Ends", learned.ends(), ends));
    }
}
