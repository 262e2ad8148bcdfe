package bitterend.exchange.quotes;

import bitterend.exchange.CustomerQuoteJson;
import bitterend.exchange.QuoteJson;
import bitterend.exchange.QuotedWorkJson;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.quoting.Delivery;
import bitterend.quoting.Quote;
import bitterend.quoting.life.QuoteEvent.Said;
import bitterend.quoting.life.QuoteName;
import bitterend.quoting.life.QuoteStanding.Head;
import bitterend.report.page.PageMark;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A kept quote as the text of its file. */
final class KeptQuoteJson {
    static final String FORMAT = "bitterend/kept-quote/1";

    private final MoneyText money;

    KeptQuoteJson(MoneyText money) {
        this.money = money;
    }

    String text(QuoteFolder.Draft draft, QuoteName name) {
        Quote quote = draft.quote().apply(name);
        KeptQuote.Pages pages = draft.pages().apply(quote, name);
        QuoteJson json = new QuoteJson(money);
        return new JsonTree()
                .with("format", FORMAT)
                .with("quote", name.number())
                .with("revision", name.revision())
                .with("at", draft.at().toString())
                .with("who", draft.said().who())
                .with("note", draft.said().note())
                .with("once", draft.said().id())
                .with("from", draft.from())
                .with("customer", quote.request().customer())
                .with("day", quote.request().day().toString())
                .with("validUntil", quote.validUntil().toString())
                .with("total", money.print(quote.total()))
                .with("request", draft.rows().stream().map(KeptQuoteJson::row).toList())
                .with("inside", json.inside(quote))
                .with(
                        "forCustomer",
                        new CustomerQuoteJson(money).tree(quote, false, PageMark.printedOn(pages.forCustomer())))
                .with("pageForFile", PageForm.blocks(pages.forFile()))
                .with("pageForCustomer", PageForm.blocks(pages.forCustomer()))
                .text();
    }

    private static JsonTree row(Map<String, String> row) {
        JsonTree tree = new JsonTree();
        new TreeMap<>(row).forEach(tree::with);
        return tree;
    }

    Optional<KeptQuote> read(InputFile file, Findings findings) {
        int before = findings.sorted().size();
        Optional<KeptQuote> read = JsonDocument.readPart(file, FORMAT, findings, this::quote);
        return read.filter(any -> findings.sorted().stream().skip(before).noneMatch(each -> each.isError()));
    }

    private KeptQuote quote(JsonObject object) {
        Fields fields = object.fields();
        List<Map<String, String>> rows = new ArrayList<>();
        for (JsonObject row : object.objects("request")) {
            Map<String, String> texts = new TreeMap<>();
            row.names().forEach(name -> texts.put(name, row.fields().text(name).orElse("")));
            rows.add(texts);
        }
        return new KeptQuote(
                head(fields),
                fields.require("at", Codec.MOMENT.in(), Instant.EPOCH),
                new Said(
                        fields.require("who", Readings::text, "?"),
                        fields.text("note").orElse(""),
                        fields.text("once").orElse("")),
                new QuotedWorkJson(money).read(object.object("inside")),
                rows,
                new KeptQuote.Pages(PageForm.read(object, "pageForFile"), PageForm.read(object, "pageForCustomer")),
                made(object.object("forCustomer")));
    }

    private static Optional<LocalDate> made(JsonObject forCustomer) {
        String words = forCustomer.fields().text("made").orElse("");
        forCustomer.leave();
        return Delivery.dayOf(words);
    }

    private Head head(Fields fields) {
        return new Head(
                new QuoteName(
                        fields.require("quote", Readings::orderId, "?"),
                        fields.require("revision", Readings.whole(1, QuoteFolder.MOST_REVISIONS), 1)),
                fields.text("customer").orElse(""),
                fields.require("day", Readings::day, LocalDate.EPOCH),
                fields.require("validUntil", Readings::day, LocalDate.EPOCH),
                fields.require("total", money::parse, Money.ZERO),
                fields.optional("from", Codec.ANY.in(), ""));
    }
}
