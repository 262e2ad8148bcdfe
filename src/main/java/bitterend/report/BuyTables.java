package bitterend.report;

import static bitterend.report.TableFigures.count;
import static bitterend.report.TableFigures.day;
import static bitterend.report.TableFigures.truth;
import static bitterend.report.TableFigures.words;

import bitterend.buying.Advice;
import bitterend.buying.ReelLine;
import bitterend.buying.Reorder;
import bitterend.buying.Result;
import bitterend.buying.Verdict;
import bitterend.market.Offer;
import bitterend.report.table.DataTable;
import bitterend.report.table.DataTable.Column;
import bitterend.report.table.Datum;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What to buy, for a spreadsheet: the reels to order now, or what a study found of every way to buy. */
public final class BuyTables {
    private final TableFigures figures;

    public BuyTables(Figures figures) {
        this.figures = new TableFigures(figures);
    }

    /** The best set of reels, a row for each offer. */
    public List<DataTable> of(Advice advice) {
        return List.of(DataTable.of(
                "Reels to order",
                advice.best().lines(),
                List.of(
                        words("offer", line -> line.offer().id()),
                        words("supplier", line -> line.offer().supplier()),
                        words("rope", line -> line.offer().rope()),
                        figures.length("length", line -> line.offer().made().length()),
                        count("reels", ReelLine::reels),
                        figures.cost("each with freight", line -> line.offer().paid()),
                        figures.cost("paid", line -> line.offer().paid().times(line.reels())),
                        truth("one lot", ReelLine::oneLot),
                        day("order by", ReelLine::orderBy))));
    }

    /** A way to buy one rope. */
    private record Way(Verdict verdict, Result result) {}

    /** Every way to buy, a row each, and when to order again. */
    public List<DataTable> of(List<Verdict> verdicts, List<Reorder> hints) {
        return List.of(ways(verdicts), again(hints));
    }

    private DataTable ways(List<Verdict> verdicts) {
        List<Way> ways = verdicts.stream()
                .flatMap(verdict -> verdict.results().stream().map(result -> new Way(verdict, result)))
                .toList();
        return DataTable.of(
                "Ways to buy",
                ways,
                List.of(
                        words("rope", way -> way.verdict().study().rope().id()),
                        words("offers", way -> offers(way.result())),
                        words("standing", way -> way.result()
                                .standing()
                                .name()
                                .toLowerCase(Locale.ROOT)
                                .replace('_', ' ')),
                        figures.byMetre("cost", way -> way.result().byMetre()),
                        figures.cost("low a metre", way -> way.result().usual().low()),
                        figures.cost("high a metre", way -> way.result().usual().high()),
                        figures.length(
                                "useful", way -> way.result().perScenario().useful()),
                        figures.length(
                                "waste", way -> way.result().perScenario().waste()),
                        tenths("coils", way -> way.result().perScenario().coilTenths()),
                        tenths("reels", way -> way.result().perScenario().reelTenths()),
                        figures.cost("more than the chosen", way -> way.result().more()),
                        figures.cost("error of chance", way -> way.result().chance())));
    }

    private static String offers(Result result) {
        return result.option().offers().stream().map(Offer::id).collect(Collectors.joining("; "));
    }

    private static Column<Way> tenths(String heading, java.util.function.ToLongFunction<Way> tenths) {
        return new Column<>(heading, way -> new Datum.Figure(BigDecimal.valueOf(tenths.applyAsLong(way), 1)));
    }

    private DataTable again(List<Reorder> hints) {
        return DataTable.of(
                "Order again",
                hints,
                List.of(
                        words("rope", Reorder::rope),
                        truth("order now", Reorder::isDue),
                        count("weeks", Reorder::weeks),
                        figures.length("wanted", Reorder::wanted),
                        figures.length("there", Reorder::there),
                        figures.fine("on order", Reorder::onOrder)));
    }
}
