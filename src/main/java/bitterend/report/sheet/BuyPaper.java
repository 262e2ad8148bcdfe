package bitterend.report.sheet;

import bitterend.report.BuySection;
import java.util.List;
import java.util.Map;

/** A buying study as HTML that opens without a network, and as PDF, its pictures drawn in the page. */
public final class BuyPaper {
    private final SheetPage page = new SheetPage();

    /** For a screen or a browser's printer. */
    public String html(String shop, List<BuySection> sections) {
        return render(shop, sections, SheetPage.fonts() + SheetPage.style("sheet") + SheetPage.style("screen"));
    }

    /** The same page on paper. */
    public byte[] pdf(String shop, List<BuySection> sections, Paper paper) {
        return SheetPdf.pdf(render(shop, sections, SheetPage.style("sheet") + SheetPdf.pageStyle(paper)));
    }

    private String render(String shop, List<BuySection> sections, String style) {
        String own = SheetPage.style("buy");
        return page.render("buy.jte", Map.of("shop", shop, "sections", sections, "style", style + own));
    }
}
