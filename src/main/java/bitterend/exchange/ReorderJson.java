package bitterend.exchange;

import bitterend.buying.reorder.Line;
import bitterend.buying.reorder.Need;
import bitterend.buying.reorder.Position;
import bitterend.buying.reorder.Proposal;
import bitterend.buying.reorder.Terms;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.JsonTree;
import bitterend.market.Bill;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.measure.RatioText;
import java.time.LocalDate;

/** What to order again now, exact and for programs. */
public final class ReorderJson {
    private final MoneyText money;

    public ReorderJson(MoneyText money) {
        this.money = money;
    }

    public String text(Proposal proposal) {
        return new JsonTree()
                .with("format", "bitterend/reorder/2")
                .with("day", proposal.day().toString())
                .with("lines", proposal.lines().stream().map(this::line).toList())
                .with(
                        "orders",
                        proposal.bill().orders().stream().map(this::order).toList())
                .with("sum", money.print(proposal.bill().sum()))
                .with("allowed", proposal.bill().isAllowed())
                .with("beyondBudget", proposal.unpaid().stream().map(this::line).toList())
                .with("later", proposal.later().stream().map(this::line).toList())
                .with(
                        "bookedNotOffered",
                        proposal.booked().stream()
                                .map(each -> position(each.position(), LocalDate.MAX)
                                        .with("rope", each.rope())
                                        .with("beyond", LengthText.exact(each.beyond())))
                                .toList())
                .with("notOffered", (Object) proposal.unoffered())
                .with("leftOut", MarketJson.leftOut(proposal.leftOut()))
                .with("restsOn", restsOn(proposal.terms()))
                .text();
    }

    private JsonTree restsOn(Terms terms) {
        return new JsonTree()
                .with("service", RatioText.exact(terms.service()))
                .with("budget", terms.hasBudget() ? money.print(terms.budget()) : "")
                .with("budgetOfTheShopHolds", terms.isHeldByShop())
                .with("mostWeeks", terms.mostWeeks())
                .with("interest", RatioText.exact(terms.interest()))
                .with("room", money.print(terms.room()));
    }

    private JsonTree order(Bill.Order order) {
        return new JsonTree()
                .with("supplier", order.supplier().name())
                .with("goods", money.print(order.goods()))
                .with("freight", money.print(order.freight().sum()))
                .with("sum", money.print(order.sum()));
    }

    private JsonTree line(Line line) {
        Need need = line.need();
        return position(need.position(), need.until())
                .with("rope", need.rope())
                .with("offer", line.offer().id())
                .with("supplier", line.offer().supplier())
                .with("reels", line.reels())
                .with("length", line.offer().made().written().kept())
                .with("price", money.print(line.each()))
                .with(
                        "orderBy",
                        line.orderBy().equals(LocalDate.MAX)
                                ? ""
                                : line.orderBy().toString())
                .with("expected", line.expected().toString())
                .with("why", Codec.word(line.why()))
                .with("left", LengthText.exact(need.left()))
                .with("enough", LengthText.exact(need.enough()))
                .with("past", need.hasPast())
                .with("weeks", need.hasPast() ? need.weeks() : 0)
                .with("use", LengthText.exact(need.use()))
                .with("season", need.isOfTheSeason());
    }

    private static JsonTree position(Position position, LocalDate until) {
        return new JsonTree()
                .with("free", LengthText.exact(position.free()))
                .with("comingInTime", LengthText.exact(position.comingBy(until)))
                .with("booked", LengthText.exact(position.booked()))
                .with(
                        "shortFrom",
                        position.shortFrom().equals(LocalDate.MAX)
                                ? ""
                                : position.shortFrom().toString());
    }
}
