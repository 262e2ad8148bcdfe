package bitterend.report;

import static bitterend.report.TableFigures.count;
import static bitterend.report.TableFigures.words;

import bitterend.buying.steady.Figure;
import bitterend.buying.steady.LeadTime;
import bitterend.buying.steady.SteadyVerdict;
import bitterend.buying.steady.WayFound;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.report.table.DataTable;
import bitterend.report.table.DataTable.Column;
import bitterend.report.table.Datum;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToLongFunction;

/** What a study found of every way to buy, for a spreadsheet: a row each. */
public final class StudyTable {
    private final TableFigures figures;

    public StudyTable(Figures figures) {
        this.figures = new TableFigures(figures);
    }

    /** A way to buy one rope. */
    private record Way(SteadyVerdict verdict, WayFound found) {}

    /** Every way to buy. */
    public DataTable of(List<SteadyVerdict> verdicts) {
        List<Way> ways = verdicts.stream()
                .flatMap(verdict -> verdict.found().stream().map(found -> new Way(verdict, found)))
                .toList();
        return DataTable.of(
                "Ways to buy",
                ways,
                List.of(
                        words("rope", way -> way.verdict().study().rope().id()),
                        words(
                                "offers",
                                way -> String.join("; ", way.found().way().offers())),
                        words("standing", way -> way.found()
                                .standing()
                                .name()
                                .toLowerCase(Locale.ROOT)
                                .replace('_', ' ')),
                        figures.length(
                                "order below", way -> way.found().way().usual().point()),
                        figures.length(
                                "order below, low",
                                way -> new Length(way.found().points().get(0).low())),
                        figures.length(
                                "order below, high",
                                way -> new Length(way.found().points().get(0).high())),
                        count("lead days", way -> lead(way).days()),
                        count("lead spread days", way -> lead(way).spread()),
                        count("usually late days", way -> lead(way).late()),
                        count(
                                "reels at a time",
                                way -> way.found().way().usual().reels()),
                        figures.byMetre("cost", way -> way.found().price()),
                        cost("cost a metre, low", way -> way.found().byMetre().low()),
                        cost("cost a metre, high", way -> way.found().byMetre().high()),
                        cost("more a metre", way -> way.found().more().value()),
                        cost("more a metre, low", way -> way.found().more().low()),
                        cost("more a metre, high", way -> way.found().more().high()),
                        share("late %", WayFound::late, Figure::value),
                        share("late %, low", WayFound::late, Figure::low),
                        share("late %, high", WayFound::late, Figure::high),
                        new Column<>(
                                "weeks there",
                                way -> tenths(way.verdict()
                                        .weekTenths(way.found().stock().value()))),
                        new Column<>(
                                "weeks of an order",
                                way -> tenths(way.verdict()
                                        .weekTenths(way.found()
                                                .way()
                                                .usual()
                                                .order()
                                                .mm()))),
                        figures.length(
                                "there", way -> new Length(way.found().stock().value())),
                        cost("cash tied up", way -> way.found().tied().value()),
                        cost("cash tied up, low", way -> way.found().tied().low()),
                        cost("cash tied up, high", way -> way.found().tied().high()),
                        figures.length("used a year", way -> way.found().year().used()),
                        figures.length("scrap a year", way -> way.found().year().scrap()),
                        new Column<>(
                                "reels a year", way -> tenths(way.found().year().reelTenths())),
                        new Column<>("coils", way -> tenths(way.found().year().coilTenths()))));
    }

    private static LeadTime lead(Way way) {
        return way.found().way().usual().size().lead();
    }

    private Column<Way> cost(String heading, ToLongFunction<Way> millis) {
        return figures.cost(heading, way -> new Cost(millis.applyAsLong(way)));
    }

    private static Column<Way> share(String heading, Function<WayFound, Figure> figure, ToLongFunction<Figure> end) {
        return new Column<>(
                heading, way -> new Datum.Figure(BigDecimal.valueOf(end.applyAsLong(figure.apply(way.found())), 2)));
    }

    private static Datum tenths(long tenths) {
        return new Datum.Figure(BigDecimal.valueOf(tenths, 1));
    }
}
