package bitterend.report;

import static bitterend.report.TableFigures.count;
import static bitterend.report.TableFigures.day;
import static bitterend.report.TableFigures.truth;
import static bitterend.report.TableFigures.words;

import bitterend.buying.Advice;
import bitterend.buying.ReelLine;
import bitterend.buying.Way;
import bitterend.report.table.DataTable;
import bitterend.report.table.DataTable.Column;
import bitterend.report.table.Datum;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Predicate;

/** What to buy, for a spreadsheet: the reels to order now, the ways side by side, and what each does rope by rope. */
public final class BuyTables {
    private final TableFigures figures;

    public BuyTables(Figures figures) {
        this.figures = new TableFigures(figures);
    }

    /** The reels to order, a row for each offer; a row for each way; a row for each rope and what ways buy of it, and for other freight. */
    public List<DataTable> of(Advice advice) {
        return List.of(toOrder(advice), ways(advice), ropes(advice));
    }

    private DataTable toOrder(Advice advice) {
        return DataTable.of(
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
                        day("order by", ReelLine::orderBy),
                        words(
                                "no rope without",
                                line -> String.join("; ", line.need().without()))));
    }

    private DataTable ways(Advice advice) {
        return DataTable.of(
                "Ways to buy",
                advice.shown(),
                List.of(
                        words("way", way -> BuyWayWords.name(advice, way)),
                        truth("recommended", way -> advice.findRecommended()
                                .filter(way::equals)
                                .isPresent()),
                        figures.cost("paid", way -> way.purchase().paid()),
                        figures.cost(
                                "freight in it", way -> way.purchase().bill().freight()),
                        figures.cost("cost", way -> way.purchase().cost()),
                        figures.length("left", way -> way.purchase().rest().metres()),
                        count("in coils", way -> way.purchase().rest().coils()),
                        figures.cost("worth", way -> way.purchase().left()),
                        count("pieces without rope", way -> advice.withoutRope(way)
                                .size()),
                        figures.cost("above the budget", Way::overBudget),
                        words("lasts too long", way -> String.join("; ", way.overWeeks()))));
    }

    private DataTable ropes(Advice advice) {
        return DataTable.of(
                "Rope by rope",
                BuyRow.of(advice),
                List.of(
                        words("rope", BuyRow::rope),
                        words("way", row -> String.join("; ", row.ways())),
                        truth("recommended", BuyRow::recommended),
                        words("reels", BuyRow::reels),
                        figures.cost("paid", row -> row.paid().fine()),
                        only(BuyRow::isBought, figures.length("free then", row -> row.cover()
                                .left())),
                        only(BuyRow::isRope, figures.length("used a week", row -> row.cover()
                                .weekly())),
                        new Column<>("weeks", BuyTables::weeks)));
    }

    /** The same column, blank in other rows. */
    private static Column<BuyRow> only(Predicate<BuyRow> where, Column<BuyRow> column) {
        return new Column<>(
                column.heading(), row -> where.test(row) ? column.value().apply(row) : Datum.blank());
    }

    private static Datum weeks(BuyRow row) {
        return row.isBought() && row.cover().isKnown()
                ? new Datum.Figure(BigDecimal.valueOf(row.cover().tenths(), 1))
                : Datum.blank();
    }
}
