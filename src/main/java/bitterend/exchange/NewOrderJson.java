package bitterend.exchange;

import bitterend.exchange.form.JsonTree;
import bitterend.market.Bill;
import bitterend.market.NewOrder;
import bitterend.measure.MoneyText;
import java.util.List;

/** What is ordered of suppliers, for programs. */
public final class NewOrderJson {
    private final MoneyText money;

    public NewOrderJson(MoneyText money) {
        this.money = money;
    }

    /**
     * An order, and whether it is written to {@code on-order.csv}.
     *
     * @param already numbers of the same reels that were ordered today before
     */
    public String text(NewOrder order, boolean written, List<String> already) {
        return new JsonTree()
                .with("format", "bitterend/order/1")
                .with("day", order.day().toString())
                .with("written", written)
                .with(
                        "orders",
                        order.bill().orders().stream()
                                .map(each -> order(order, each))
                                .toList())
                .with("sum", money.print(order.bill().sum()))
                .with("allowed", order.bill().isAllowed())
                .with("orderedToday", (Object) already)
                .text();
    }

    /** An order that was taken back, or that there is none. */
    public static String takenBack(List<String> numbers) {
        return new JsonTree()
                .with("format", "bitterend/order/1")
                .with("takenBack", (Object) numbers)
                .text();
    }

    private JsonTree order(NewOrder order, Bill.Order each) {
        return new JsonTree()
                .with("supplier", each.supplier().name())
                .with("address", each.supplier().address())
                .with("contact", each.supplier().contact())
                .with("goods", money.print(each.goods()))
                .with("freight", money.print(each.freight().sum()))
                .with("sum", money.print(each.sum()))
                .with(
                        "lines",
                        order.of(each.supplier().name()).stream()
                                .map(this::line)
                                .toList());
    }

    private JsonTree line(NewOrder.Line line) {
        return new JsonTree()
                .with("number", line.number())
                .with("offer", line.of())
                .with("rope", line.offer().rope())
                .with("length", line.offer().made().written().kept())
                .with("reels", line.reels())
                .with("price", money.print(line.offer().terms().price().at(line.reels())))
                .with("expected", line.expected().toString())
                .with("certificate", line.offer().made().certificate())
                .with("note", line.note());
    }
}
