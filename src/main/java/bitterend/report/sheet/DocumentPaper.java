package bitterend.report.sheet;

import bitterend.report.page.Document;
import java.util.Map;

/** Any document as HTML that opens without a network, and as PDF; its pictures are drawn in the page. */
public final class DocumentPaper {
    private final SheetPage page = new SheetPage();

    /** For a screen or a browser's printer. */
    public String html(Document document) {
        return render(document, SheetPage.fonts() + SheetPage.style("sheet") + SheetPage.style("screen"));
    }

    /** The same page on paper. */
    public byte[] pdf(Document document, Paper paper) {
        return SheetPdf.pdf(typed(render(document, SheetPage.style("sheet") + SheetPdf.pageStyle(paper))));
    }

    /** The faces that a PDF carries draw no lines: lines of a drawn column are typed. */
    private static String typed(String html) {
        return html.replace('│', '|')
                .replace('─', '-')
                .replace('┼', '+')
                .replace('═', '=')
                .replace('╤', '=')
                .replace('┆', ':')
                .replace('╳', 'X')
                .replace('┴', '-');
    }

    private String render(Document document, String style) {
        String own = SheetPage.style("document");
        return page.render("document.jte", Map.of("document", document, "style", style + own));
    }
}
