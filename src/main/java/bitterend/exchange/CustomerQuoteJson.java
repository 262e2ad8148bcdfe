package bitterend.exchange;

import bitterend.demand.Assembly;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.LengthText;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.RatioText;
import bitterend.quoting.Letter;
import bitterend.quoting.LineQuote;
import bitterend.quoting.Quote;
import bitterend.quoting.Recipient;
import bitterend.quoting.TaxSum;
import bitterend.quoting.Variation;

/** A quote as JSON as the customer may see it. */
public final class CustomerQuoteJson {
    private final MoneyText money;
    private final QuotedJson quoted;

    public CustomerQuoteJson(MoneyText money) {
        this.money = money;
        quoted = new QuotedJson(money);
    }

    /**
     * Format {@code bitterend/quote-for-customer/1}: prices and what they are for.
     *
     * @param apart whether it says what each line costs by itself
     * @param mark the mark on its page, which binds a signature to that
     */
    public String of(Quote quote, boolean apart, String mark) {
        return tree(quote, apart, mark).text();
    }

    /** The same as an object of another document. */
    public JsonTree tree(Quote quote, boolean apart, String mark) {
        Letter letter = quote.policy().letter();
        Recipient recipient = quote.request().recipient();
        return QuotedJson.head("bitterend/quote-for-customer/1", quote)
                .with("customerNumber", recipient.number())
                .with("customerAddress", recipient.address())
                .with("customerContact", recipient.contact())
                .with("shopAddress", letter.address())
                .with("shopContact", letter.contact())
                .with("payment", recipient.payment(letter))
                .with("delivery", letter.terms().delivery())
                .with("made", quote.made())
                .with(
                        "lines",
                        quote.lines().stream()
                                .map(line -> toldLine(quote, line))
                                .toList())
                .with("total", money.print(quote.total()))
                .with("taxes", quote.taxes().stream().map(this::tax).toList())
                .with("totalWithTax", money.print(quote.totalWithTax()))
                .with("variations", quoted.variations(quote, kind -> apart || kind != Variation.Kind.APART))
                .with("notPriced", QuotedJson.lacking(quote))
                .with("mark", mark);
    }

    private JsonTree tax(TaxSum tax) {
        return new JsonTree()
                .with("name", tax.rate().name())
                .with("rate", RatioText.exact(tax.rate().rate()))
                .with("of", money.print(tax.net()))
                .with("tax", money.print(tax.tax()));
    }

    /** A line with what else the customer is told of it. */
    private JsonTree toldLine(Quote quote, LineQuote quoted) {
        Assembly assembly = quoted.line().assembly();
        return this.quoted
                .line(quoted)
                .with(
                        "tax",
                        quote.policy().letter().taxes().isEmpty()
                                ? ""
                                : TaxSum.rate(quote, quoted).name())
                .with("note", assembly.ordered().note())
                .with("asWritten", assembly.make().finished().kept())
                .with("certificate", assembly.terms().certificate())
                .with(
                        "sample",
                        LengthText.exact(assembly.make().extras().sample().exact()))
                .with("testing", !quoted.line().asked().test().equals(Money.ZERO));
    }
}
