package bitterend.report.sheet;

import bitterend.report.page.Document;
import java.util.Map;

/** Documents and splice cards as part of a page that has more on it: the blocks, and the style they want. */
public final class PagePart {
    private PagePart() {}

    /** The faces and the rules that every page of this program shares. */
    public static String css() {
        return SheetPage.fonts()
                + SheetPage.style("sheet")
                + SheetPage.style("document")
                + SheetPage.style("scroll")
                + SheetPage.style("cards");
    }

    /** The blocks as HTML, everything printed escaped. */
    public static String blocks(Document document) {
        return new SheetPage().render("documentbody.jte", Map.of("document", document.undrawn()));
    }
}
