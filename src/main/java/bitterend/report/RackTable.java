package bitterend.report;

import static bitterend.report.TableFigures.count;
import static bitterend.report.TableFigures.day;
import static bitterend.report.TableFigures.truth;
import static bitterend.report.TableFigures.words;

import bitterend.measure.Length;
import bitterend.report.table.DataTable;
import bitterend.stock.Held;
import bitterend.stock.Holding;
import bitterend.stock.Reel;
import java.util.List;
import java.util.Locale;

/** What is on the rack, for a spreadsheet: a row for each reel. */
public final class RackTable {
    private final TableFigures figures;

    public RackTable(Figures figures) {
        this.figures = new TableFigures(figures);
    }

    public List<DataTable> of(List<Holding> holdings) {
        return List.of(DataTable.of(
                "Rack",
                holdings,
                List.of(
                        words("place", each -> each.reel().where().place()),
                        words("reel", Holding::id),
                        words("rope", each -> each.reel().rope()),
                        words("lot", each -> each.reel().lot()),
                        figures.length(
                                "length",
                                each -> each.gone() ? Length.ZERO : each.reel().length()),
                        figures.length(
                                "uncertainty", each -> each.reel().contents().uncertainty()),
                        figures.length("held", each -> held(each.reel())),
                        words("known", each -> each.reel().contents().known().word()),
                        count("flaws", each -> each.reel().flaws().size()),
                        truth("full", each -> each.reel().full()),
                        truth("gone", Holding::gone),
                        words("state", each -> state(each.reel())),
                        words("owner", each -> each.reel().custody().owner()),
                        words("order", each -> each.reel().custody().order()),
                        words("certificate", each -> each.reel().papers().certificate()),
                        words("certificate number", each -> each.reel().papers().number()),
                        day("use by", each -> each.reel().papers().useBy()),
                        day("received", each -> each.reel().papers().received()),
                        words("note", each -> each.reel().where().note()))));
    }

    private static Length held(Reel reel) {
        return reel.custody().held().stream().map(Held::length).reduce(Length.ZERO, Length::plus);
    }

    private static String state(Reel reel) {
        return reel.custody().state().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
