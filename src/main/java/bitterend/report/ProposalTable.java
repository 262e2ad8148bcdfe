package bitterend.report;

import static bitterend.report.TableFigures.count;
import static bitterend.report.TableFigures.day;
import static bitterend.report.TableFigures.words;

import bitterend.buying.reorder.Line;
import bitterend.buying.reorder.Proposal;
import bitterend.measure.MoneyText;
import bitterend.report.table.DataTable;
import java.util.List;
import java.util.stream.Stream;

/** A proposal of what to order as a table that a person edits: quantity 0 stands for what is not to be ordered yet. */
public final class ProposalTable {
    private ProposalTable() {}

    /** With the plain headings that {@code stock order} reads. */
    public static List<DataTable> of(Proposal proposal, MoneyText money) {
        return List.of(DataTable.of(
                "Proposal",
                Stream.of(proposal.lines(), proposal.unpaid(), proposal.later())
                        .flatMap(List::stream)
                        .toList(),
                List.of(
                        words("offer", each -> each.offer().id()),
                        words("rope", each -> each.need().rope()),
                        words("supplier", each -> each.offer().supplier()),
                        words("length", each -> each.offer().made().written().kept()),
                        count("quantity", each -> proposal.lines().contains(each) ? each.reels() : 0),
                        day("expected", Line::expected),
                        words("price", each -> money.print(each.each())),
                        words("note", each -> ""))));
    }
}
