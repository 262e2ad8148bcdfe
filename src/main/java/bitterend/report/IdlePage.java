package bitterend.report;

import bitterend.buying.IdleReel;
import bitterend.buying.IdleReel.Why;
import bitterend.buying.IdleRope;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Units;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Wording;
import bitterend.report.page.Writing;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

/** Rope that nobody is likely to want, with what keeping it costs. */
public final class IdlePage {
    private final Figures figures;

    public IdlePage(Figures figures) {
        this.figures = figures;
    }

    /** The page of a day. */
    public Document of(LocalDate day, IdleRope.Limits limits, List<IdleReel> idle) {
        Writing page = new Writing();
        page.heading("Idle rope on " + day);
        if (idle.isEmpty()) {
            page.paragraph("Nothing: something that is cut or ordered fits on each reel, none lasts longer than "
                    + FindingsPage.count(limits.weeks(), "week") + ", and no last day is near.");
            return page.document();
        }
        page.table(table(idle));
        page.paragraph("Together " + FindingsPage.count(idle.size(), "reel") + ", worth "
                + figures.money(idle.stream().map(IdleReel::worth).reduce(Cost.ZERO, Cost::plus))
                + "; to keep them another year costs "
                + figures.money(idle.stream().map(IdleReel::holding).reduce(Cost.ZERO, Cost::plus))
                + " in interest and room.");
        page.paragraph(
                "Idle is what lasts longer than " + FindingsPage.count(limits.weeks(), "week")
                        + " of the use of the past, what has its last day within "
                        + FindingsPage.count(limits.near(), "week")
                        + " or behind it, and what no past or ordered piece fits on. Coils are used before full reels, short"
                        + " ones first. What booked orders are cut from is not idle: their pieces are laid on the reels in that"
                        + " order, the longest that fit first, and only what is left counts. What is kept for an order and a customer's own rope are not counted.");
        return page.document();
    }

    private TableRows table(List<IdleReel> idle) {
        TableRows table = new TableRows(
                Column.words("reel"),
                Column.words("rope"),
                Column.words("place"),
                Column.figure("length\n" + figures.unit()),
                Column.words("since"),
                Column.figure("worth\n" + figures.currency().currency()),
                Column.figure("a year\ncosts, " + figures.currency().currency()),
                Column.words("why"));
        for (IdleReel each : idle) {
            table.row(
                    Wording.printable(each.reel().id()),
                    Wording.printable(each.reel().rope()),
                    Wording.printable(each.reel().where().place()),
                    roughly(each.reel().length()),
                    each.since().equals(LocalDate.MIN) ? "" : each.since().toString(),
                    figures.bare(each.worth().rounded()),
                    figures.bare(each.holding().rounded()),
                    each.why().stream().map(why -> why(each, why)).collect(Collectors.joining("; ")));
        }
        return table;
    }

    /** To the inch, so that a row stays whole; in metres as booked. */
    private String roughly(Length length) {
        return figures.units() == Units.METRIC ? figures.bare(length) : figures.bareTotal(length);
    }

    private static String why(IdleReel each, Why why) {
        return switch (why) {
            case PAST -> "last day was " + each.reel().papers().useBy();
            case NEAR -> "last day is " + each.reel().papers().useBy();
            case NOTHING_FITS -> why.words();
            case LASTS -> lasts(each) + (each.booked() ? ", booked work needs none of it" : ", none is booked");
        };
    }

    private static String lasts(IdleReel each) {
        return each.weeks() == IdleReel.NEVER ? "none was ever cut" : "lasts " + each.weeks() + " weeks";
    }
}
