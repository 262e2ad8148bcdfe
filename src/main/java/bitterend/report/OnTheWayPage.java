package bitterend.report;

import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import bitterend.stock.Transfers.OnTheWay;
import java.util.List;

/** What is on the way between the lofts of a server. */
public final class OnTheWayPage {
    private OnTheWayPage() {}

    /** The page, lengths in the system of the figures. */
    public static Document of(List<OnTheWay> all, Figures figures) {
        Writing page = new Writing();
        if (all.isEmpty()) {
            page.paragraph("nothing is on the way to this loft or from it.");
        } else {
            page.table(table(all, figures));
        }
        return page.document();
    }

    static TableRows table(List<OnTheWay> all, Figures figures) {
        TableRows table = new TableRows(
                Column.words("on the way"),
                Column.words("rope"),
                Column.figure("length"),
                Column.words("from"),
                Column.words("to"),
                Column.figure("event there"));
        all.forEach(each -> table.row(
                each.reel().id(),
                each.reel().rope(),
                figures.length(each.reel().length()),
                each.from(),
                each.to(),
                "" + each.event()));
        return table;
    }
}
