package bitterend.report.sheet;

import bitterend.report.page.Document;
import java.util.Map;

/** Any document as HTML that opens without a network, and as PDF; its pictures are drawn in the page. */
public final class DocumentPaper {
    private final SheetPage page = new SheetPage();

    /** For a screen or a browser's printer. */
    public String html(Document document) {
        return render(
                document,
                SheetPage.fonts() + SheetPage.style("sheet") + SheetPage.style("screen") + SheetPage.style("scroll"));
    }

    /** The same page on paper, without lines drawn in type: its faces have none, and sheets draw reels to scale. */
    public byte[] pdf(Document document, Paper paper) {
        return SheetPdf.pdf(render(
                document.undrawn().unlinked(),
                SheetPage.style("sheet") + SheetPdf.pageStyle(paper) + SheetPdf.nameStyle(document.name())));
    }

    private String render(Document document, String style) {
        String own = SheetPage.style("document");
        return page.render("document.jte", Map.of("document", document, "style", style + own));
    }
}
