package bitterend.exchange.quotes;

import bitterend.exchange.form.JsonTree;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.quoting.BuildUp.Kind;
import bitterend.quoting.QuotedLine;
import bitterend.quoting.life.QuoteChange;
import bitterend.quoting.life.QuoteEvent;
import bitterend.quoting.life.QuoteName;
import bitterend.quoting.life.QuoteStanding;
import bitterend.quoting.life.QuoteState;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What is said of kept quotes under {@code --json}. */
public final class QuotesJson {
    private final MoneyText money;

    public QuotesJson(MoneyText money) {
        this.money = money;
    }

    /** Format {@code bitterend/quotes/1}: how every kept quote stands, and the sums. */
    public String list(LocalDate day, List<QuoteStanding> quotes) {
        List<JsonTree> sums = new ArrayList<>();
        for (QuoteState state : QuoteState.values()) {
            List<QuoteStanding> of =
                    quotes.stream().filter(each -> each.state() == state).toList();
            sums.add(new JsonTree()
                    .with("state", state.word())
                    .with("quotes", of.size())
                    .with(
                            "total",
                            money.print(
                                    of.stream().map(each -> each.head().total()).reduce(Money.ZERO, Money::plus))));
        }
        return new JsonTree()
                .with("format", "bitterend/quotes/1")
                .with("day", day.toString())
                .with("quotes", quotes.stream().map(this::tree).toList())
                .with("sums", sums)
                .text();
    }

    private JsonTree tree(QuoteStanding quote) {
        QuoteStanding.Head head = quote.head();
        return new JsonTree()
                .with("quote", head.name().number())
                .with("revision", head.name().revision())
                .with("customer", head.customer())
                .with("day", head.day().toString())
                .with("validUntil", head.validUntil().toString())
                .with("total", money.print(head.total()))
                .with("from", head.from())
                .with("state", quote.state().word())
                .with("events", quote.events().stream().map(QuotesJson::tree).toList());
    }

    private static JsonTree tree(QuoteEvent event) {
        return new JsonTree()
                .with("what", event.what().state().word())
                .with("quote", event.quote().toString())
                .with("day", event.day().toString())
                .with("at", event.at().toString())
                .with("who", event.said().who())
                .with("note", event.said().note())
                .with("order", event.order())
                .with("event", event.place().ledger() ? event.place().number() : 0);
    }

    /** Format {@code bitterend/quote-booked/1}: how a quote stands after something happened to it. */
    public String booked(QuoteStanding quote, long event, List<String> told) {
        return new JsonTree()
                .with("format", "bitterend/quote-booked/1")
                .with("event", event)
                .with("told", (Object) told)
                .with(tree(quote))
                .text();
    }

    /** Format {@code bitterend/quote-changes/1}: what a revision changed. */
    public String changes(QuoteName quote, List<QuoteChange> changes) {
        return new JsonTree()
                .with("format", "bitterend/quote-changes/1")
                .with("quote", quote.number())
                .with("revision", quote.revision())
                .with(
                        "changes",
                        changes.stream()
                                .map(change -> new JsonTree()
                                        .with("line", change.line())
                                        .with("what", change.what().words())
                                        .with("before", line(change.before()))
                                        .with("now", line(change.now())))
                                .toList())
                .text();
    }

    private JsonTree line(List<QuotedLine> lines) {
        JsonTree tree = new JsonTree();
        for (QuotedLine line : lines) {
            tree.with("rope", line.what().rope())
                    .with("finished", line.what().finished())
                    .with("ends", line.what().ends())
                    .with("legs", line.what().legs())
                    .with("quantity", line.what().quantity())
                    .with("minutes", line.minutes())
                    .with("hardware", money.print(line.of(Kind.HARDWARE)))
                    .with("samples", money.print(line.of(Kind.SAMPLES)))
                    .with("price", money.print(line.price()));
        }
        return tree;
    }
}
