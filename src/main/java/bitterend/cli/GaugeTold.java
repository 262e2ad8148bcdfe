package bitterend.cli;

import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.report.Figures;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import bitterend.stock.Gauge;
import bitterend.work.rack.GaugeReel.Estimate;
import bitterend.work.rack.GaugeReel.OfSize;
import bitterend.work.rack.GaugeReel.OfWeight;
import java.util.LinkedHashMap;
import java.util.Map;

/** How much rope a reel seems to hold, for people and for programs. */
final class GaugeTold {
    private final Figures figures;

    GaugeTold(Figures figures) {
        this.figures = figures;
    }

    /** The figures, one a row, and how far they go. */
    Document page(Estimate estimate) {
        Writing page = new Writing();
        page.table(rows(estimate));
        if (estimate instanceof OfSize sized) {
            page.paragraph(caution(sized));
        }
        return page.document();
    }

    private TableRows rows(Estimate estimate) {
        TableRows table = new TableRows(Column.words(""), Column.words(""));
        if (estimate instanceof OfWeight weighed) {
            row(table, "by weight", weighed.expected());
            row(table, "at least", weighed.least());
            row(table, "at most", weighed.most());
            return table;
        }
        OfSize sized = (OfSize) estimate;
        Length made = sized.byFactor();
        row(table, "formula", sized.formula());
        if (made != null) {
            row(table, "by factor", made);
        }
        row(table, "whole turns", sized.turns());
        table.row("safe", figures.length(sized.safe()) + " (fill " + percent(sized) + ")");
        return table;
    }

    private void row(TableRows table, String what, Length length) {
        table.row(what, figures.length(length));
    }

    /** The same by name. */
    static Map<String, String> exact(Estimate estimate) {
        Map<String, String> exact = new LinkedHashMap<>();
        if (estimate instanceof OfWeight weighed) {
            exact.put("byWeight", LengthText.exact(weighed.expected()));
            exact.put("least", LengthText.exact(weighed.least()));
            exact.put("most", LengthText.exact(weighed.most()));
            return exact;
        }
        OfSize sized = (OfSize) estimate;
        Length made = sized.byFactor();
        exact.put("formula", LengthText.exact(sized.formula()));
        if (made != null) {
            exact.put("byFactor", LengthText.exact(made));
        }
        exact.put("wholeTurns", LengthText.exact(sized.turns()));
        exact.put("safe", LengthText.exact(sized.safe()));
        exact.put("fill", percent(sized));
        exact.put("caution", caution(sized));
        return exact;
    }

    private static String percent(OfSize sized) {
        return sized.fill().timesRoundedDown(100) + " %";
    }

    private static String caution(OfSize sized) {
        return sized.taught() ? Gauge.TAUGHT : Gauge.SLACK;
    }
}
