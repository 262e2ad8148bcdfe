package bitterend.exchange;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.JsonTree;
import bitterend.market.Bill;
import bitterend.market.LeftOut;
import bitterend.measure.MoneyText;
import java.util.List;

/** What the market says, for programs: the same in every answer that asks it. */
final class MarketJson {
    private MarketJson() {}

    /** Offers that nobody can order, each with the word for its reason. */
    static List<JsonTree> leftOut(List<LeftOut> offers) {
        return offers.stream()
                .map(each -> new JsonTree().with("offer", each.offer().id()).with("why", Codec.word(each.why())))
                .toList();
    }

    /**
     * The orders of a bill, one to each supplier.
     *
     * @param goods the name that an answer has for the reels without freight
     */
    static List<JsonTree> orders(Bill bill, MoneyText money, String goods) {
        return bill.orders().stream()
                .map(order -> new JsonTree()
                        .with("supplier", order.supplier().name())
                        .with(goods, money.print(order.goods()))
                        .with("freightByReel", money.print(order.freight().byReel()))
                        .with("freightByWeight", money.print(order.freight().byMass()))
                        .with("freightByOrder", money.print(order.freight().byOrder()))
                        .with("freightPaid", order.freight().free())
                        .with("sum", money.print(order.sum())))
                .toList();
    }
}
