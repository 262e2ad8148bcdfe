package bitterend.front;

import bitterend.exchange.BuyJson;
import bitterend.exchange.Shop;
import bitterend.report.BuyAdvicePage;
import bitterend.report.Figures;
import bitterend.report.page.Document;
import bitterend.work.trade.AdviseReels.Result.Advised;

/** What is bought and quoted, as both fronts show it. */
public final class TradePages {
    private TradePages() {}

    /** Which reels to buy for the orders in hand, and on which of the days ahead rope is short. */
    public static Document of(Shop shop, Advised advised, Figures figures) {
        return new BuyAdvicePage(figures)
                .of(
                        shop.settings().name(),
                        advised.orders(),
                        advised.advice(),
                        advised.forecast().horizon().until(),
                        advised.forecast().ropes());
    }

    /** The same for programs. */
    public static String json(Shop shop, Advised advised) {
        return new BuyJson(shop.settings().money())
                .advice(
                        advised.advice(),
                        advised.forecast().day(),
                        advised.forecast().horizon().until(),
                        advised.forecast().ropes());
    }
}
