package bitterend.exchange;

import bitterend.day.Receipt;
import bitterend.day.Receipt.Line;
import bitterend.day.Receipt.Ordered;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import java.util.Set;

/** What a list says that came in, against what was ordered and what is on the rack, for programs. */
public final class ReceiptJson {
    private final MoneyText money;

    public ReceiptJson(MoneyText money) {
        this.money = money;
    }

    /**
     * Every line with what is booked of it.
     *
     * @param sure reels that are booked although they are set apart
     * @param event number of the event that it was booked as; 0 while it is not
     */
    public String text(Receipt receipt, Set<String> sure, long event) {
        return new JsonTree()
                .with("format", "bitterend/receipt/1")
                .with("event", event)
                .with(
                        "lines",
                        receipt.lines().stream().map(line -> line(line, sure)).toList())
                .with("length", LengthText.exact(Receipt.length(receipt.sound())))
                .with("difference", LengthText.exact(Receipt.by(receipt.sound())))
                .with("worth", money.print(Receipt.money(receipt.sound())))
                .with(
                        "notOnTheList",
                        receipt.missing().stream().map(ReceiptJson::missing).toList())
                .with("toKnow", receipt.toKnow())
                .text();
    }

    private JsonTree line(Line line, Set<String> sure) {
        JsonTree tree = new JsonTree()
                .with("at", line.place())
                .with("reel", line.reel())
                .with("rope", line.rope())
                .with("length", line.length().kept());
        if (line.ordered().isThere()) {
            tree.with("onOrder", line.ordered().number())
                    .with("ordered", line.ordered().length().kept())
                    .with("difference", LengthText.exact(line.by()))
                    .with("worth", money.print(line.money()));
        }
        if (line.paid() != null) {
            tree.with("paid", money.print(line.paid()));
        }
        return tree.with(
                        "apart",
                        line.apart().stream().map(apart -> apart.why().exact()).toList())
                .with("takesAWord", line.takesAWord())
                .with("accepted", line.isBooked(sure));
    }

    private static JsonTree missing(Ordered ordered) {
        return new JsonTree()
                .with("onOrder", ordered.number())
                .with("rope", ordered.rope())
                .with("length", ordered.length().kept())
                .with("reels", ordered.quantity());
    }
}
