package bitterend.report;

import bitterend.quoting.QuotedWork;
import bitterend.quoting.life.QuoteChange;
import bitterend.quoting.life.QuoteEvent;
import bitterend.quoting.life.QuoteEvent.Said;
import bitterend.quoting.life.QuoteStanding;
import bitterend.quoting.life.QuoteStanding.Head;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.List;

/** One kept quote: how it stands, its revisions and what each changed, and what happened to it. */
public final class QuoteLifePage {
    private final Figures figures;

    public QuoteLifePage(Figures figures) {
        this.figures = figures;
    }

    /**
     * A revision.
     *
     * @param head its name, days and sum
     * @param said who kept it, and why
     * @param work its lines
     */
    public record Revision(Head head, Said said, QuotedWork work) {}

    /** The page; the revisions in their order. */
    public Document of(QuoteStanding quote, List<Revision> revisions) {
        Writing page = new Writing();
        Head head = quote.head();
        page.paragraph("Quote " + head.name().words()
                + (head.customer().isEmpty() ? "" : ", for " + head.customer()) + ": "
                + figures.currency().print(head.total()) + " before tax, valid until " + head.validUntil() + "; "
                + QuoteListPage.state(quote) + "."
                + (head.from().isEmpty() ? "" : " It was drawn up from quote " + head.from() + "."));
        page.heading("Revisions");
        page.tableApart(revisions(revisions));
        page.heading("What happened to it");
        if (quote.events().isEmpty()) {
            page.paragraph("Nothing yet: it is drawn up.");
        }
        quote.events().forEach(event -> page.paragraph(sentence(event)));
        for (int i = 1; i < revisions.size(); i++) {
            changed(page, revisions.get(i - 1), revisions.get(i));
        }
        return page.document();
    }

    private TableRows revisions(List<Revision> revisions) {
        TableRows table = new TableRows(
                Column.words("revision"),
                Column.words("drawn up"),
                Column.words("valid until"),
                Column.figure("total\n" + figures.currency().currency()),
                Column.words("kept by"));
        for (Revision each : revisions) {
            table.row(
                    Integer.toString(each.head().name().revision()),
                    each.head().day().toString(),
                    each.head().validUntil().toString(),
                    figures.bare(each.head().total()),
                    each.said().who()
                            + (each.said().note().isEmpty()
                                    ? ""
                                    : ": " + each.said().note()));
        }
        return table;
    }

    private static String sentence(QuoteEvent event) {
        return event.day() + ", revision " + event.quote().revision() + ": "
                + event.what().state().word()
                + (event.order().isEmpty() ? "" : ", order " + event.order())
                + ", booked by " + event.said().who()
                + (event.said().note().isEmpty() ? "" : ": " + event.said().note()) + ".";
    }

    private void changed(Writing page, Revision before, Revision now) {
        page.heading("What changed in revision " + now.head().name().revision());
        new QuoteChangesPage(figures)
                .write(
                        page,
                        QuoteChange.between(before.work(), now.work()),
                        before.head().total(),
                        now.head().total());
    }
}
