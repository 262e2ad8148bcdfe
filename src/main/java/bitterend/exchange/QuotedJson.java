package bitterend.exchange;

import bitterend.demand.CodeInForce;
import bitterend.demand.SpliceCard;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.quoting.LineQuote;
import bitterend.quoting.Quote;
import bitterend.quoting.QuoteLine;
import bitterend.quoting.Variation;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;

/** What both forms of a quote say: whom it is for, its lines with their prices, what could be had instead. */
final class QuotedJson {
    private final MoneyText money;

    QuotedJson(MoneyText money) {
        this.money = money;
    }

    /** Its name and its days. */
    static JsonTree head(String format, Quote quote) {
        return new JsonTree()
                .with("format", format)
                .with("request", quote.request().id())
                .with("number", quote.number())
                .with("revision", quote.revision())
                .with("customer", quote.request().customer())
                .with("day", quote.request().day().toString())
                .with("validUntil", quote.validUntil().toString());
    }

    /** What could be had instead, of the kinds wanted. */
    List<JsonTree> variations(Quote quote, Predicate<Variation.Kind> wanted) {
        return quote.variations().stream()
                .filter(each -> wanted.test(each.kind()))
                .map(each -> new JsonTree()
                        .with("kind", each.kind().word())
                        .with("line", each.line())
                        .with("what", each.changed().name())
                        .with(
                                "finished",
                                LengthText.exact(each.changed()
                                        .assembly()
                                        .make()
                                        .finished()
                                        .exact()))
                        .with("rope", each.changed().rope())
                        .with("ends", each.changed().pieces().get(0).ends())
                        .with("note", each.changed().assembly().ordered().note())
                        .with("quantity", each.changed().quantity())
                        .with("each", money.print(each.price().each()))
                        .with("price", money.print(each.price().price()))
                        .with("total", money.print(each.total())))
                .toList();
    }

    /** Lines that are not in it. */
    static List<JsonTree> lacking(Quote quote) {
        return quote.notPriced().stream()
                .map(each -> new JsonTree().with("line", each.line()).with("why", each.why()))
                .toList();
    }

    /** A line and its price. */
    JsonTree line(LineQuote quoted) {
        QuoteLine line = quoted.line();
        return new JsonTree()
                .with("line", line.name())
                .with("rope", line.rope())
                .with(
                        "finished",
                        LengthText.exact(line.assembly().make().finished().exact()))
                .with("legs", line.assembly().ordered().legs())
                .with("ends", line.pieces().get(0).ends())
                .with("code", code(line))
                .with("quantity", line.quantity())
                .with("due", line.due().equals(LocalDate.MAX) ? "" : line.due().toString())
                .with("each", money.print(quoted.buildUp().each()))
                .with("price", money.print(quoted.buildUp().price()));
    }

    /** The code it is made under; empty where nothing is lifted. */
    private static String code(QuoteLine line) {
        return line.demanded()
                .findCard()
                .flatMap(SpliceCard::findCode)
                .map(CodeInForce::words)
                .orElse("");
    }
}
