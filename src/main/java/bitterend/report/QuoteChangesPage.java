package bitterend.report;

import bitterend.measure.LengthText;
import bitterend.measure.Money;
import bitterend.measure.Written;
import bitterend.quoting.BuildUp.Kind;
import bitterend.quoting.QuotedLine;
import bitterend.quoting.life.QuoteChange;
import bitterend.quoting.life.QuoteName;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.List;

/** What a revision of a quote changed, line by line. */
public final class QuoteChangesPage {
    private final Figures figures;

    public QuoteChangesPage(Figures figures) {
        this.figures = figures;
    }

    /**
     * The page.
     *
     * @param before total of the revision before
     * @param now total of this one
     */
    public Document of(QuoteName quote, List<QuoteChange> changes, Money before, Money now) {
        Writing page = new Writing();
        page.title("What changed in quote", quote.words(), "");
        write(page, changes, before, now);
        return page.document();
    }

    /** The same as a part of another page. */
    void write(Writing page, List<QuoteChange> changes, Money before, Money now) {
        if (changes.isEmpty()) {
            page.paragraph("Nothing: every line is as it was, at the same price.");
        } else {
            TableRows table = new TableRows(
                    Column.words("line"), Column.words("what"), Column.words("before"), Column.words("now"));
            changes.forEach(change -> table.row(
                    change.line(), change.what().words(), words(change, change.before()), words(change, change.now())));
            page.tableApart(table);
        }
        page.paragraph("Total before tax: " + figures.currency().print(before) + " before, "
                + figures.currency().print(now) + " now.");
    }

    private String words(QuoteChange change, List<QuotedLine> lines) {
        return lines.isEmpty() ? "" : words(change.what(), lines.get(0));
    }

    private String words(QuoteChange.What what, QuotedLine line) {
        return switch (what) {
            case NEW, DROPPED -> line.what().quantity() + " of "
                    + finished(line) + ", "
                    + line.what().rope() + ", " + figures.currency().print(line.price());
            case ROPE -> line.what().rope() + (line.what().ownRope() ? ", the customer's own" : "");
            case LENGTH -> finished(line);
            case ENDS -> figures.written(line.what().ends());
            case LEGS -> Integer.toString(line.what().legs());
            case QUANTITY -> Integer.toString(line.what().quantity());
            case MINUTES -> line.minutes() + " min";
            case HARDWARE -> figures.currency().print(line.hardwareEach());
            case SAMPLES -> figures.currency().print(line.of(Kind.SAMPLES));
            case PRICE -> figures.currency().print(line.price());
        };
    }

    /** Kept as text that says it exactly; on a page in metres or feet as everywhere. */
    private String finished(QuotedLine line) {
        String kept = line.what().finished();
        return LengthText.parseFine(kept)
                .value()
                .map(exact -> figures.briefly(Written.worked(exact)))
                .orElse(kept);
    }
}
