package bitterend.report;

import bitterend.day.PackingNote;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.List;

/** The packing note of a delivery, for the customer. */
public final class PackingNotePage {
    /** Sources in docs/bibliography.md: NAVEDTRA 14081, 29 CFR 1926.251. */
    private static final List<String> CAUTIONS = List.of(
            "Look every assembly over before use; do not use one that is cut, chafed, heated or changed in its splice.",
            "Lengths are as measured here; they change with load, wetting and use.",
            "Lifting and life safety need a competent person and the local code. Nothing here certifies strength.");

    private final Figures figures;

    public PackingNotePage(Figures figures) {
        this.figures = figures;
    }

    public Document of(String shop, PackingNote note) {
        Writing page = new Writing();
        page.title("Packing note for order", note.order(), shop);
        page.paragraph("Order " + note.order() + (note.customer().isEmpty() ? "" : " for " + note.customer())
                + ", delivered " + note.day() + ". Delivery " + note.event() + ".");
        if (!note.note().isEmpty()) {
            page.paragraph(note.note());
        }
        note.lines().forEach(line -> line(page, line));
        page.heading("Still to come");
        page.paragraph(note.toCome().isEmpty() ? "Nothing: the order is complete." : String.join(", ", note.toCome()));
        page.heading("Cautions");
        CAUTIONS.forEach(page::paragraph);
        return page.document();
    }

    private void line(Writing page, PackingNote.Line line) {
        String what = line.product().isEmpty() ? line.rope() : line.product() + ", " + line.rope();
        page.heading("Line " + line.line() + ": " + what);
        page.paragraph((line.words().isEmpty() ? "" : line.words() + ": ") + line.ordered() + " ordered, "
                + figures.written(line.finished()) + " finished, "
                + (line.between().isEmpty() ? "" : line.between() + ", ") + figures.written(EndsInWords.of(line.ends()))
                + "; "
                + FindingsPage.count(line.items().size(), "piece") + " in this delivery.");
        TableRows table = new TableRows(
                Column.words("piece"),
                Column.figure("measured"),
                Column.words("lot"),
                Column.words("certificate"),
                Column.words("looked over"));
        for (PackingNote.Item item : line.items()) {
            table.row(
                    item.piece(),
                    item.found().isMeasured() ? figures.written(item.found().made()) : "not measured",
                    item.lot().isEmpty() ? "not known" : item.lot(),
                    certificate(item.certificate()),
                    item.found().isGood() ? item.found().verdict() : "not recorded");
        }
        page.tableApart(table);
        if (!line.between().isEmpty()) {
            page.paragraph("Measured is the rope alone, from bearing point to bearing point, without its hardware.");
        }
        line.items().stream()
                .map(PackingNote.Item::released)
                .filter(words -> !words.isEmpty())
                .distinct()
                .forEach(words -> page.caution(words + "; its pieces need not match"));
    }

    private static String certificate(PackingNote.Certificate paper) {
        return paper.kind().isEmpty() ? "none" : (paper.kind() + " " + paper.number()).strip();
    }
}
