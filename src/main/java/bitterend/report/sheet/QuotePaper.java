package bitterend.report.sheet;

import bitterend.report.QuoteDocument;
import java.util.Map;

/** Pages about quotes as HTML that opens without a network, and as PDF. */
public final class QuotePaper {
    private final SheetPage page = new SheetPage();

    /** For a screen or a browser's printer. */
    public String html(QuoteDocument document) {
        return render(document, SheetPage.fonts() + SheetPage.style("sheet") + SheetPage.style("screen"));
    }

    /** The same page on paper. */
    public byte[] pdf(QuoteDocument document, Paper paper) {
        return SheetPdf.pdf(render(document, SheetPage.style("sheet") + SheetPdf.pageStyle(paper)));
    }

    private String render(QuoteDocument document, String style) {
        return page.render("quote.jte", Map.of("document", document, "style", style));
    }
}
