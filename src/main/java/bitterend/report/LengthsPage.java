package bitterend.report;

import bitterend.catalogue.Catalogue;
import bitterend.catalogue.Rope;
import bitterend.demand.Assembly;
import bitterend.demand.Demanded;
import bitterend.demand.Derivation;
import bitterend.demand.Piece;
import bitterend.finding.CommandWord;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Written;
import bitterend.report.page.Block;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Cut lengths on a page: a list of every piece, or how the length of one order line came about. */
public final class LengthsPage {
    private final Figures figures;

    public LengthsPage(Figures figures) {
        this.figures = figures;
    }

    /** One row for each order line and cut length, on the rope as ordered. */
    public Document list(String shop, List<Piece> pieces, Catalogue catalogue) {
        Writing page = new Writing();
        page.title("Cut lengths, " + shop);
        TableRows table = new TableRows(
                Column.words("order/line"),
                Column.figure("pieces"),
                Column.words("rope"),
                Column.words("ends"),
                Column.words("finished"),
                Column.figure("cut length\n" + figures.unit()));
        Map<Alike, Integer> rows = new LinkedHashMap<>();
        pieces.forEach(piece -> rows.merge(Alike.of(piece), 1, Integer::sum));
        rows.forEach((row, count) -> table.row(
                row.line(),
                Integer.toString(count),
                row.rope(),
                EndsInWords.of(row.ends()),
                figures.written(row.finished()),
                figures.bare(catalogue.rope(row.rope()).cutting().exactly(row.cut()))));
        page.table(table);
        page.gap();
        rows.keySet().stream()
                .findFirst()
                .ifPresent(row -> page.paragraph("How a length came about, such as the first: bitterend lengths SHOP "
                        + CommandWord.of(row.line())));
        Cautions.write(page, List.of());
        return page.document();
    }

    /** The derivation of an order line on every rope it may be made of, below the drawing of its piece. */
    public Document derivation(Assembly assembly, Demanded demanded, Catalogue catalogue, Block.Picture drawing) {
        Writing page = new Writing();
        Piece.Source source = assembly.ordered().source();
        String part = assembly.membership().part();
        page.title("Order " + source.order() + ", line " + source.line() + (part.isEmpty() ? "" : ", " + part)
                + customer(assembly));
        page.picture(drawing);
        for (Derivation derivation : demanded.derivations()) {
            derivation(page, derivation, catalogue.rope(derivation.rope()));
        }
        demanded.layouts().forEach(layout -> new LayoutBlock(figures).write(page, layout));
        Cautions.writeForTheBench(
                page,
                demanded.findings().stream()
                        .filter(finding -> !finding.isError())
                        .map(finding -> finding.in(figures.units()))
                        .toList());
        return page.document();
    }

    private static String customer(Assembly assembly) {
        String customer = assembly.ordered().customer();
        return customer.isEmpty() ? "" : ", for " + customer;
    }

    private void derivation(Writing page, Derivation derivation, Rope rope) {
        List<String> pieces = derivation.pieces();
        FineLength cut = rope.cutting().exactly(derivation.cut());
        page.heading("Cut " + FindingsPage.count(pieces.size(), "piece") + " of " + figures.length(cut) + " from "
                + rope.name() + " (" + rope.id() + ")");
        page.paragraph("For " + named(pieces) + ".");
        page.gap();
        AlignedAmounts amounts = AlignedAmounts.of(PrintedAmounts.of(derivation, rope, figures));
        SourceNotes sources = new SourceNotes();
        TableRows table = new TableRows(
                Column.words(""),
                Column.figure(figures.fineUnit() + amounts.unitPadding()),
                Column.words("worked out"),
                Column.words("source"));
        for (int i = 0; i < derivation.lines().size(); i++) {
            Derivation.Line line = derivation.lines().get(i);
            table.row(line.label(), amounts.line(i), figures.sentence(line.formula()), sources.mark(line.provenance()));
        }
        table.row("", "-".repeat(amounts.width()), "", "");
        table.row("cut length", amounts.sum(), "= " + figures.length(cut), "");
        page.table(table);
        if (!sources.notes().isEmpty()) {
            page.gap();
            sources.notes().forEach(note -> page.paragraph(note));
        }
        if (!derivation.notes().isEmpty()) {
            page.gap();
            derivation.notes().forEach(note -> page.paragraph(sentence(figures.sentence(note))));
        }
    }

    /** A note as a sentence: a capital in front, a full stop behind. */
    public static String sentence(String note) {
        return note.substring(0, 1).toUpperCase(Locale.ROOT) + note.substring(1) + ".";
    }

    private static String named(List<String> pieces) {
        return pieces.size() <= 4 ? String.join(", ", pieces) : pieces.get(0) + " to " + pieces.get(pieces.size() - 1);
    }

    /** What pieces of one row have in common. */
    private record Alike(String line, String rope, String ends, Written finished, Length cut) {
        static Alike of(Piece piece) {
            return new Alike(
                    piece.order() + "/" + piece.source().line(),
                    piece.orderedRope(),
                    piece.ends(),
                    piece.finished(),
                    piece.cut());
        }
    }
}
