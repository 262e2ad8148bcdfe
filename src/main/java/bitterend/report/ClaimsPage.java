package bitterend.report;

import bitterend.market.Claims;
import bitterend.market.Claims.OfSupplier;
import bitterend.market.UsualLateness;
import bitterend.measure.Length;
import bitterend.measure.Units;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Wording;
import bitterend.report.page.Writing;
import bitterend.stock.Delivery;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What suppliers delivered short and late: reel by reel, with what a claim is worth, and in all by supplier. */
public final class ClaimsPage {
    private final Figures figures;

    public ClaimsPage(Figures figures) {
        this.figures = figures;
    }

    /**
     * The page.
     *
     * @param from the first day that is looked at; {@link LocalDate#MIN} for all
     * @param until the last day; {@link LocalDate#MAX} for all
     */
    public Document of(Claims claims, LocalDate from, LocalDate until) {
        Writing page = new Writing();
        page.heading("Short and late deliveries" + period(from, until));
        if (claims.suppliers().isEmpty()) {
            page.paragraph(
                    "No reel came of an order of reels. One that is received with the number of its order is held"
                            + " against what was ordered.");
            return page.document();
        }
        page.table(totals(claims));
        page.paragraph("Beyond is what a reel came shorter than its supplier may send it; the claim is what that"
                + " comes to at what was paid for the reel, as booked, else at the price of its order, without freight. Of a"
                + " reel that was counted before anything was cut from it the count holds, else its label.");
        claims.suppliers().forEach(supplier -> supplier(page, supplier));
        return page.document();
    }

    private static String period(LocalDate from, LocalDate until) {
        return (from.equals(LocalDate.MIN) ? "" : " from " + from)
                + (until.equals(LocalDate.MAX) ? "" : " until " + until);
    }

    private TableRows totals(Claims claims) {
        TableRows table = new TableRows(
                Column.words("supplier"),
                Column.figure("reels\ncame"),
                Column.figure("short"),
                Column.figure("short by\n" + figures.unit()),
                Column.figure("beyond\n" + figures.unit()),
                Column.figure("claim"),
                Column.figure("late"),
                Column.words("usually late"));
        for (OfSupplier each : claims.suppliers()) {
            table.row(
                    name(each),
                    "" + each.deliveries().size(),
                    "" + each.shorter().size(),
                    figures.bare(each.shortBy()),
                    figures.bare(each.beyond()),
                    figures.money(each.claim()),
                    "" + each.late().size(),
                    late(each.usual()));
        }
        return table;
    }

    private static String name(OfSupplier each) {
        return each.supplier().isEmpty() ? "not stated" : Wording.printable(each.supplier());
    }

    /** Such as {@code 3 working days, by 6 deliveries}. */
    static String late(UsualLateness.Known usual) {
        String days = FindingsPage.count(usual.late().days(), usual.late().working() ? "working day" : "day");
        return switch (usual.source()) {
            case OF_ALL -> days + ", as for all";
            case OF_SUPPLIER -> days + ", as the shop says";
            case DELIVERIES -> days + ", by " + usual.deliveries() + " deliveries";
        };
    }

    private void supplier(Writing page, OfSupplier each) {
        if (each.shorter().isEmpty() && each.late().isEmpty()) {
            return;
        }
        page.heading(name(each));
        if (!each.shorter().isEmpty()) {
            page.table(shorter(each.shorter()));
            page.paragraph("Short by " + figures.length(each.shortBy()) + ", paid for with "
                    + figures.money(each.paidForShort()) + "; to claim "
                    + figures.money(each.claim()) + " for " + figures.length(each.beyond()) + " beyond.");
        }
        if (!each.late().isEmpty()) {
            page.table(late(each.late()));
        }
    }

    private TableRows shorter(List<Delivery> some) {
        TableRows table = new TableRows(
                Column.words("order"),
                Column.words("reel"),
                Column.words("rope"),
                Column.words("came"),
                Column.figure("ordered\n" + figures.unit()),
                Column.figure("received\n" + figures.unit()),
                Column.figure("short by\n" + figures.unit()),
                Column.figure("beyond\n" + figures.unit()),
                Column.figure("claim\n" + figures.currency().currency()));
        for (Delivery came : some) {
            table.row(
                    Wording.printable(came.promised().order()),
                    Wording.printable(came.reel()),
                    Wording.printable(came.rope()),
                    "" + came.day(),
                    roughly(came.promised().length()),
                    roughly(came.found()),
                    roughly(came.shortBy()),
                    came.beyond().isPositive() ? roughly(came.beyond()) : "",
                    came.beyond().isPositive()
                            ? figures.bare(came.paidFor(came.beyond()).rounded())
                            : "");
        }
        return table;
    }

    /** To the inch, so that a row stays whole; the sum below is exact. In metres as booked. */
    private String roughly(Length length) {
        return figures.units() == Units.METRIC ? figures.bare(length) : figures.bareTotal(length);
    }

    /** What came late: the reels of one order that came on one day are one row. */
    private static TableRows late(List<Delivery> some) {
        TableRows table = new TableRows(
                Column.words("order"),
                Column.words("rope"),
                Column.words("expected"),
                Column.words("came"),
                Column.figure("days late"),
                Column.figure("reels"));
        Map<List<String>, Integer> reels = new LinkedHashMap<>();
        some.forEach(came -> reels.merge(
                List.of(
                        Wording.printable(came.promised().order()),
                        Wording.printable(came.rope()),
                        "" + came.promised().expected(),
                        "" + came.day(),
                        "" + came.daysLate()),
                1,
                Integer::sum));
        reels.forEach(
                (row, count) -> table.row(row.get(0), row.get(1), row.get(2), row.get(3), row.get(4), "" + count));
        return table;
    }
}
