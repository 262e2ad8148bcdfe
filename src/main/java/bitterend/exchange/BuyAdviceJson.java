package bitterend.exchange;

import bitterend.buying.Advice;
import bitterend.buying.Aim;
import bitterend.buying.Assumed;
import bitterend.buying.Cover;
import bitterend.buying.Orders;
import bitterend.buying.Purchase;
import bitterend.buying.ReelLine;
import bitterend.buying.ReelSet;
import bitterend.buying.Shortage;
import bitterend.buying.Spending;
import bitterend.buying.Tie;
import bitterend.buying.TooLong;
import bitterend.buying.Way;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.JsonTree;
import bitterend.market.Bill;
import bitterend.market.Bill.Objection;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.measure.RatioText;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What {@code buy} answers for the orders in hand to other programs. */
public final class BuyAdviceJson {
    private final MoneyText money;

    public BuyAdviceJson(MoneyText money) {
        this.money = money;
    }

    /**
     * {@code {"format": "bitterend/buy/1", ...}}: the ways to buy, the next best of the least cost, what cannot be had, where
     * rope is short.
     *
     * @param orders what it was found for
     * @param assumed what the advice rests on
     * @param day the day it was asked
     * @param until how far ahead it was looked where rope is short
     * @param ropes where it is
     */
    public String advice(
            Orders orders, Advice advice, Assumed assumed, LocalDate day, LocalDate until, List<Shortage> ropes) {
        List<JsonTree> unheld = new ArrayList<>();
        advice.unheld()
                .forEach(each -> unheld.add(new JsonTree()
                        .with("piece", each.piece())
                        .with("cut", LengthText.exact(each.cut()))
                        .with("why", each.why())));
        return new JsonTree()
                .with("format", "bitterend/buy/1")
                .with("day", day.toString())
                .with("ways", advice.ways().stream().map(this::way).toList())
                .with(
                        "recommended",
                        advice.findRecommended().map(way -> words(way.aims())).orElse(List.of()))
                .with("paidBound", money.exact(advice.paidBound()))
                .with("ties", advice.ties().stream().map(this::tie).toList())
                .with("best", purchase(advice.best()))
                .with("next", advice.next().stream().map(this::purchase).toList())
                .with("allCompared", advice.allCompared())
                .with("unheld", unheld)
                .with("late", advice.late())
                .with("tooLong", advice.tooLong().stream().map(this::tooLong).toList())
                .with("leftOut", MarketJson.leftOut(orders.leftOut()))
                .with(
                        "affordable",
                        advice.findAffordable().map(this::way).stream().toList())
                .with("unpaid", advice.unpaid())
                .with("assumed", assumed(assumed))
                .with("shortage", ShortageJson.tree(day, until, ropes))
                .text();
    }

    private JsonTree way(Way way) {
        return new JsonTree()
                .with("aims", words(way.aims()))
                .with("purchase", purchase(way.purchase()))
                .with("orders", MarketJson.orders(way.bill(), money, "goods"))
                .with("belowMinimumOrder", belowMinimumOrder(way.bill()))
                .with("covers", way.covers().stream().map(BuyAdviceJson::cover).toList())
                .with("overBudget", money.exact(way.overBudget()))
                .with("overWeeks", way.overWeeks());
    }

    private static List<String> words(List<Aim> aims) {
        return aims.stream().map(Codec::word).toList();
    }

    private List<JsonTree> belowMinimumOrder(Bill bill) {
        return bill.objections().stream()
                .filter(Objection.BelowMinimumOrder.class::isInstance)
                .map(Objection.BelowMinimumOrder.class::cast)
                .map(below -> new JsonTree()
                        .with("supplier", below.supplier().name())
                        .with("goods", money.print(below.goods()))
                        .with("minimumOrder", money.print(below.supplier().minimumOrder())))
                .toList();
    }

    private static JsonTree cover(Cover cover) {
        return new JsonTree()
                .with("rope", cover.rope())
                .with("free", LengthText.exact(cover.free()))
                .with("onOrder", LengthText.exact(cover.onOrder()))
                .with("bought", LengthText.exact(cover.bought()))
                .with("wanted", LengthText.exact(cover.wanted()))
                .with("left", LengthText.exact(cover.left()))
                .with("weekly", cover.isKnown() ? LengthText.exact(cover.weekly()) : "")
                .with(
                        "weeks",
                        cover.isKnown() ? BigDecimal.valueOf(cover.tenths(), 1).toPlainString() : "");
    }

    private JsonTree tie(Tie tie) {
        return new JsonTree()
                .with("cheaper", set(tie.cheaper()))
                .with("taken", set(tie.taken()))
                .with("difference", money.exact(tie.difference()))
                .with("unproven", money.exact(tie.unproven()))
                .with("saved", money.exact(tie.saved()));
    }

    private static List<JsonTree> set(ReelSet set) {
        return set.counts().entrySet().stream()
                .map(entry -> new JsonTree().with("offer", entry.getKey()).with("reels", entry.getValue()))
                .toList();
    }

    private JsonTree tooLong(TooLong each) {
        return new JsonTree()
                .with("set", set(each.set()))
                .with("rope", each.rope())
                .with("weeks", BigDecimal.valueOf(each.tenths(), 1).toPlainString())
                .with("saved", money.exact(each.saved()));
    }

    private JsonTree assumed(Assumed assumed) {
        Spending spending = assumed.spending();
        return new JsonTree()
                .with("seconds", assumed.time().toSeconds())
                .with("budget", spending.hasBudget() ? money.print(spending.budget()) : "")
                .with("mostWeeks", spending.hasMostWeeks() ? Integer.toString(spending.mostWeeks()) : "")
                .with("interest", RatioText.percent(assumed.interest()))
                .with("room", money.exact(assumed.room()))
                .with(
                        "lateness",
                        assumed.lateness().days() + (assumed.lateness().working() ? " working days" : " days"));
    }

    private JsonTree purchase(Purchase purchase) {
        return new JsonTree()
                .with("lines", purchase.lines().stream().map(this::line).toList())
                .with("cost", money.exact(purchase.cost()))
                .with("bound", money.exact(purchase.bound()))
                .with("paid", money.exact(purchase.paid()))
                .with("freight", money.exact(purchase.bill().freight()))
                .with("left", money.exact(purchase.left()))
                .with("leftMetres", LengthText.exact(purchase.rest().metres()))
                .with("leftCoils", purchase.rest().coils())
                .with("unplanned", purchase.unplanned());
    }

    private JsonTree line(ReelLine line) {
        LocalDate orderBy = line.orderBy();
        return new JsonTree()
                .with("offer", line.offer().id())
                .with("reels", line.reels())
                .with("each", money.exact(line.each()))
                .with("freight", money.exact(line.freight()))
                .with("length", LengthText.exact(line.offer().made().length()))
                .with("written", line.offer().made().written().text())
                .with("oneLot", line.oneLot())
                .with("orderBy", orderBy.equals(LocalDate.MAX) ? "" : orderBy.toString())
                .with("cut", line.need().cut())
                .with("noRopeWithout", line.need().without())
                .with("cheaper", line.need().known() ? line.need().cheaper() : List.of());
    }
}
