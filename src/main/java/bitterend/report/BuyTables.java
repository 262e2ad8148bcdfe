package bitterend.report;

import static bitterend.report.TableFigures.count;
import static bitterend.report.TableFigures.day;
import static bitterend.report.TableFigures.truth;
import static bitterend.report.TableFigures.words;

import bitterend.buying.Advice;
import bitterend.buying.ReelLine;
import bitterend.report.table.DataTable;
import java.util.List;

/** What to buy, for a spreadsheet: the reels to order now. */
public final class BuyTables {
    private final TableFigures figures;

    public BuyTables(Figures figures) {
        this.figures = new TableFigures(figures);
    }

    /** The reels to order, a row for each offer. */
    public List<DataTable> of(Advice advice) {
        return List.of(DataTable.of(
                "Reels to order",
                advice.act().lines(),
                List.of(
                        words("offer", line -> line.offer().id()),
                        words("supplier", line -> line.offer().supplier()),
                        words("rope", line -> line.offer().rope()),
                        figures.length("length", line -> line.offer().made().length()),
                        count("reels", ReelLine::reels),
                        figures.cost("each", ReelLine::each),
                        figures.cost("each with freight", line -> line.each().plus(line.freight())),
                        figures.cost(
                                "paid", line -> line.each().plus(line.freight()).times(line.reels())),
                        truth("one lot", ReelLine::oneLot),
                        day("order by", ReelLine::orderBy))));
    }
}
