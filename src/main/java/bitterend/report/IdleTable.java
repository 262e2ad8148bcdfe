package bitterend.report;

import static bitterend.report.TableFigures.day;
import static bitterend.report.TableFigures.truth;
import static bitterend.report.TableFigures.words;

import bitterend.buying.IdleReel;
import bitterend.report.table.DataTable;
import java.util.List;
import java.util.stream.Collectors;

/** Rope that nobody is likely to want, for a spreadsheet: a row for each reel. */
public final class IdleTable {
    private final TableFigures figures;

    public IdleTable(Figures figures) {
        this.figures = new TableFigures(figures);
    }

    public List<DataTable> of(List<IdleReel> idle) {
        return List.of(DataTable.of(
                "Idle rope",
                idle,
                List.of(
                        words("reel", each -> each.reel().id()),
                        words("rope", each -> each.reel().rope()),
                        words("place", each -> each.reel().where().place()),
                        figures.length("length", each -> each.reel().length()),
                        truth("full", each -> each.reel().full()),
                        day("since", IdleReel::since),
                        day("use by", each -> each.reel().papers().useBy()),
                        words("why", each -> each.why().stream()
                                .map(IdleReel.Why::words)
                                .collect(Collectors.joining("; "))),
                        words("weeks", each -> each.weeks() == IdleReel.NEVER ? "" : "" + each.weeks()),
                        figures.cost("worth", IdleReel::worth),
                        figures.cost("costs a year", IdleReel::holding))));
    }
}
