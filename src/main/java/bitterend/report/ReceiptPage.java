package bitterend.report;

import bitterend.day.Receipt;
import bitterend.day.Receipt.Line;
import bitterend.day.Receipt.Ordered;
import bitterend.measure.Length;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Wording;
import bitterend.report.page.Writing;
import java.util.List;
import java.util.Optional;

/** What a list says that came in: against what was ordered, in rope and money; what is looked at again, what did not come. */
public final class ReceiptPage {
    private final Figures figures;

    public ReceiptPage(Figures figures) {
        this.figures = figures;
    }

    /** All of it. */
    public Document of(Receipt receipt) {
        Writing page = new Writing();
        page.heading("What came in");
        if (receipt.sound().isEmpty()) {
            page.paragraph("Nothing of the list can be booked as it is.");
        } else {
            came(page, receipt.sound());
        }
        if (!receipt.apart().isEmpty()) {
            page.heading("Set apart: look at these again");
            apart(page, receipt.apart());
        }
        if (!receipt.missing().isEmpty()) {
            page.heading("Ordered, and not on the list");
            receipt.missing().forEach(ordered -> page.paragraph(missing(ordered)));
        }
        if (!receipt.toKnow().isEmpty()) {
            page.heading("To know");
            receipt.toKnow().forEach(sentence -> page.paragraph(Wording.printable(sentence) + "."));
        }
        return page.document();
    }

    private void came(Writing page, List<Line> lines) {
        page.table(table(lines));
        String together = "Together " + FindingsPage.count(lines.size(), "reel") + ", "
                + figures.length(Receipt.length(lines)) + ".";
        page.paragraph(
                lines.stream().noneMatch(line -> line.ordered().isThere())
                        ? together
                        : together + " Against what was ordered " + signed(Receipt.by(lines)) + ", "
                                + figures.money(Receipt.money(lines)) + " by what the rope costs to replace.");
    }

    private void apart(Writing page, List<Line> lines) {
        page.table(table(lines));
        for (Line line : lines) {
            line.apart()
                    .forEach(apart -> page.paragraph(
                            Wording.printable(line.reel() + ", " + line.place() + ": " + figures.sentence(apart.why())
                                    + (apart.takesAWord() ? "" : " (it is not booked)") + ".")));
        }
        if (lines.stream().anyMatch(Line::takesAWord)) {
            page.paragraph("What is only unlikely is measured or read again, and then booked by a word of its own.");
        }
    }

    private TableRows table(List<Line> lines) {
        boolean ordered = lines.stream().anyMatch(line -> line.ordered().isThere());
        boolean paid = lines.stream().anyMatch(line -> line.paid() != null);
        TableRows table = new TableRows(
                Column.words("reel"),
                Column.words("rope"),
                Column.figure("length,\n" + figures.unit()),
                Column.words(ordered ? "of order" : ""),
                Column.figure(ordered ? "ordered,\n" + figures.unit() : ""),
                Column.figure(ordered ? "difference,\n" + figures.unit() : ""),
                Column.figure(ordered ? "money" : ""),
                Column.figure(paid ? "paid" : ""));
        for (Line line : lines) {
            boolean known = line.ordered().isThere();
            table.row(
                    Wording.printable(line.reel()),
                    Wording.printable(line.rope()),
                    figures.bare(line.length().roundedDown()),
                    Wording.printable(line.ordered().number()),
                    known ? figures.bare(line.ordered().length().roundedDown()) : "",
                    known ? plus(line.by()) + figures.bare(line.by()) : "",
                    known ? figures.money(line.money()) : "",
                    Optional.ofNullable(line.paid())
                            .map(figures.currency()::print)
                            .orElse(""));
        }
        return table;
    }

    private String missing(Ordered ordered) {
        return Wording.printable(ordered.number()) + ": " + FindingsPage.count(ordered.quantity(), "reel") + " of "
                + Wording.printable(ordered.rope()) + ", " + figures.written(ordered.length())
                + (ordered.quantity() == 1 ? "." : " each.");
    }

    private String signed(Length by) {
        return plus(by) + figures.length(by);
    }

    private static String plus(Length by) {
        return by.isPositive() ? "+" : "";
    }
}
