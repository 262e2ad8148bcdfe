package bitterend.exchange;

import bitterend.exchange.form.JsonTree;
import bitterend.market.Bill;
import bitterend.market.LeftOut;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.quoting.RopeBuying;
import bitterend.quoting.RopeBuying.Why;
import java.util.List;

/** The new reels of a quote as JSON: what is taken, what was left out and why, and what the orders come to. */
final class QuoteBuyingJson {
    private final MoneyText money;

    QuoteBuyingJson(MoneyText money) {
        this.money = money;
    }

    JsonTree buying(RopeBuying buying) {
        return new JsonTree()
                .with("sizes", buying.sizes().stream().map(this::size).toList())
                .with(
                        "leftOut",
                        buying.leftOut().stream()
                                .map(each -> new JsonTree()
                                        .with("offer", each.offer().id())
                                        .with("why", word(each.why())))
                                .toList())
                .with(
                        "notTaken",
                        buying.notTaken().stream()
                                .map(each -> new JsonTree()
                                        .with("offer", each.offer().id())
                                        .with("from", each.from())
                                        .with("why", word(each.why())))
                                .toList())
                .with("cheapestOffer", money.exact(buying.lowest()));
    }

    private JsonTree size(RopeBuying.Size size) {
        return new JsonTree()
                .with("offer", size.offer().id())
                .with("length", LengthText.exact(size.offer().usable()))
                .with("from", size.from())
                .with("paid", money.exact(size.paid()))
                .with("reels", size.reels())
                .with("but", size.but().stream().map(QuoteBuyingJson::word).toList());
    }

    List<JsonTree> orders(Bill bill) {
        return bill.orders().stream()
                .map(order -> new JsonTree()
                        .with("supplier", order.supplier().name())
                        .with("reels", money.print(order.goods()))
                        .with("freightByReel", money.print(order.freight().byReel()))
                        .with("freightByWeight", money.print(order.freight().byMass()))
                        .with("freightByOrder", money.print(order.freight().byOrder()))
                        .with("freightPaid", order.freight().free())
                        .with("sum", money.print(order.sum())))
                .toList();
    }

    /** The word of a reason that any part of the program writes. */
    static String word(LeftOut.Why why) {
        return switch (why) {
            case JOINED -> "joined";
            case NO_LONGER_VALID -> "no longer valid";
            case NOTHING_LEFT -> "nothing left";
            case SUPPLY_BELOW_MINIMUM -> "supply below minimum";
        };
    }

    private static String word(Why why) {
        return switch (why) {
            case TOO_LATE -> "too late";
            case BELOW_MINIMUM -> "below minimum";
            case BREAK_NOT_REACHED -> "break not reached";
            case ABOVE_SUPPLY -> "above supply";
        };
    }
}
