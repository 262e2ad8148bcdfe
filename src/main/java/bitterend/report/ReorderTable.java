package bitterend.report;

import static bitterend.report.TableFigures.count;
import static bitterend.report.TableFigures.day;
import static bitterend.report.TableFigures.words;

import bitterend.buying.reorder.Line;
import bitterend.buying.reorder.Proposal;
import bitterend.report.table.DataTable;
import java.util.List;
import java.util.stream.Stream;

/** What to order again, for a spreadsheet: a row for each rope, also of those that are not due yet. */
public final class ReorderTable {
    private final Figures figures;

    public ReorderTable(Figures figures) {
        this.figures = figures;
    }

    public List<DataTable> of(Proposal proposal) {
        TableFigures columns = new TableFigures(figures);
        return List.of(DataTable.of(
                "Orders",
                Stream.concat(proposal.lines().stream(), proposal.later().stream())
                        .toList(),
                List.of(
                        words("rope", each -> each.need().rope()),
                        words("supplier", each -> each.offer().supplier()),
                        words("offer", each -> each.offer().id()),
                        count("reels", each -> proposal.lines().contains(each) ? each.reels() : 0),
                        count("reels then", Line::reels),
                        columns.length("length", each -> each.offer().made().length()),
                        columns.money("each", Line::each),
                        day("order by", Line::orderBy),
                        day("expected", Line::expected),
                        columns.length("free", each -> each.need().position().free()),
                        columns.length("coming", each -> each.need()
                                .position()
                                .comingBy(each.need().until())),
                        columns.length("booked", each -> each.need().position().booked()),
                        columns.length("left", each -> each.need().left()),
                        columns.length("enough", each -> each.need().enough()),
                        columns.length("weekly", each -> each.need().weekly()))));
    }
}
