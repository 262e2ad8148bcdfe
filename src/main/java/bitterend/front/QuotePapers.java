package bitterend.front;

import bitterend.exchange.Shop;
import bitterend.exchange.quotes.KeptQuote;
import bitterend.quoting.Quote;
import bitterend.quoting.life.QuoteName;
import bitterend.report.Figures;
import bitterend.report.page.Block;
import bitterend.report.page.Document;
import bitterend.work.quotes.KeepQuote;
import java.util.ArrayList;
import java.util.List;

/**
 * The pages that are filed with a quote, as both fronts print it.
 *
 * @param shop the shop
 * @param figures in which units they are
 * @param apart whether the customer's page says what each line costs by itself
 */
public record QuotePapers(Shop shop, Figures figures, boolean apart) implements KeepQuote.Paper {
    @Override
    public KeptQuote.Pages apply(Quote quote, QuoteName name) {
        return new KeptQuote.Pages(
                revised(TradePages.forFile(shop, quote, figures), name),
                revised(TradePages.forCustomer(shop, quote, figures, apart), name));
    }

    private static Document revised(Document page, QuoteName name) {
        if (name.revision() == 1) {
            return page;
        }
        List<Block> blocks = new ArrayList<>(page.blocks());
        int below = !blocks.isEmpty() && blocks.get(0) instanceof Block.Title ? 1 : 0;
        blocks.add(
                below,
                new Block.Paragraph(
                        0,
                        "Revision " + name.revision() + "; it takes the place of revision " + (name.revision() - 1)
                                + "."));
        return new Document(blocks);
    }
}
