package bitterend.exchange;

import bitterend.exchange.form.JsonTree;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.quoting.RopeBuying;
import bitterend.quoting.RopeBuying.Why;

/** The new reels of a quote as JSON: what is taken, what was left out and why, and what the orders come to. */
final class QuoteBuyingJson {
    private final MoneyText money;

    QuoteBuyingJson(MoneyText money) {
        this.money = money;
    }

    JsonTree buying(RopeBuying buying) {
        return new JsonTree()
                .with("sizes", buying.sizes().stream().map(this::size).toList())
                .with("leftOut", MarketJson.leftOut(buying.leftOut()))
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

    private static String word(Why why) {
        return switch (why) {
            case TOO_LATE -> "too late";
            case BELOW_MINIMUM -> "below minimum";
            case BREAK_NOT_REACHED -> "break not reached";
            case ABOVE_SUPPLY -> "above supply";
        };
    }
}
