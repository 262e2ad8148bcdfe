package bitterend.report;

import static bitterend.report.TableFigures.count;
import static bitterend.report.TableFigures.words;

import bitterend.quoting.BuildUp;
import bitterend.quoting.LineQuote;
import bitterend.quoting.Quote;
import bitterend.report.table.DataTable;
import bitterend.report.table.DataTable.Column;
import java.util.ArrayList;
import java.util.List;

/** A quote for a spreadsheet: a row for each line. */
public final class QuoteTables {
    private final Figures printed;
    private final TableFigures figures;

    public QuoteTables(Figures figures) {
        this.printed = figures;
        this.figures = new TableFigures(figures);
    }

    /** As the customer gets it: no figure of the shop's own. */
    public List<DataTable> forCustomer(Quote quote) {
        List<Column<LineQuote>> columns = new ArrayList<>(asked());
        columns.addAll(prices());
        return List.of(DataTable.of("Quote", quote.lines(), columns));
    }

    /** With every item of a price: they add up to it. */
    public List<DataTable> forFile(Quote quote) {
        List<Column<LineQuote>> columns = new ArrayList<>(asked());
        columns.add(figures.length("in pieces", quoted -> quoted.line().cut()));
        columns.add(figures.length("drawn", LineQuote::drawn));
        for (BuildUp.Kind kind : BuildUp.Kind.values()) {
            columns.add(figures.money(kind.words(), quoted -> quoted.buildUp().of(kind)));
        }
        columns.addAll(prices());
        return List.of(DataTable.of("Quote", quote.lines(), columns));
    }

    private List<Column<LineQuote>> asked() {
        return List.of(
                words("line", quoted -> quoted.line().name()),
                words("rope", quoted -> quoted.line().rope()),
                words(
                        "ends",
                        quoted -> printed.written(quoted.line().pieces().get(0).ends())),
                figures.fine(
                        "finished",
                        quoted -> quoted.line().assembly().make().finished().exact()),
                count("legs", quoted -> quoted.line().assembly().ordered().legs()),
                count("quantity", quoted -> quoted.line().quantity()));
    }

    private List<Column<LineQuote>> prices() {
        return List.of(
                figures.money("each", quoted -> quoted.buildUp().each()),
                figures.money("price", quoted -> quoted.buildUp().price()));
    }
}
