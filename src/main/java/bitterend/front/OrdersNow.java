package bitterend.front;

import bitterend.report.Figures;
import bitterend.report.OrderWords;
import bitterend.report.page.Document;
import bitterend.report.page.Writing;
import bitterend.work.ShopNow;
import bitterend.work.orders.AskOrders;
import java.time.LocalDate;
import java.time.ZoneId;

/** How things stand with the orders of a shop, for the pages that say so. */
public final class OrdersNow {
    private OrdersNow() {}

    /** What changed of one cut piece, or that it is spare; a line each, usually none. */
    public static Document about(ShopNow shop, String piece, Figures figures) {
        LocalDate day = shop.shop().day().orElseGet(() -> LocalDate.now(ZoneId.systemDefault()));
        Writing page = new Writing();
        words(shop, figures)
                .first(new AskOrders(shop, day).ofCuts().about(piece))
                .forEach(words -> page.paragraph(words + "."));
        return page.document();
    }

    /** What stands at the top of a page: what changed after cutting, and what is spare; usually nothing. */
    public static Document top(ShopNow shop, LocalDate day, Figures figures) {
        return words(shop, figures).top(new AskOrders(shop, day).ofCuts());
    }

    public static OrderWords words(ShopNow shop, Figures figures) {
        return new OrderWords(figures, shop.at().named());
    }
}
