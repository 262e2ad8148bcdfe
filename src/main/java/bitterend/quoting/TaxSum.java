package bitterend.quoting;

import bitterend.measure.Money;
import bitterend.measure.Ratio;
import bitterend.quoting.Letter.TaxRate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The tax of all lines of one rate.
 *
 * @param rate the rate
 * @param net the prices of its lines before tax
 * @param tax on their sum, to the nearest coin, halves up
 */
public record TaxSum(TaxRate rate, Money net, Money tax) {
    /** By rate, in the order in which the lines meet them; empty where the shop states no rates. */
    static List<TaxSum> of(Quote quote) {
        Letter letter = quote.policy().letter();
        if (letter.taxes().isEmpty()) {
            return List.of();
        }
        Map<TaxRate, Money> nets = new LinkedHashMap<>();
        for (LineQuote line : quote.lines()) {
            nets.merge(rate(quote, line), line.buildUp().price(), Money::plus);
        }
        List<TaxSum> sums = new ArrayList<>();
        nets.forEach((rate, net) -> sums.add(new TaxSum(rate, net, Amounts.share(net, rate.rate()))));
        return sums;
    }

    /** The rate that a line names, else the customer's, else the usual one; not of a shop that states no rates. */
    public static TaxRate rate(Quote quote, LineQuote line) {
        Letter letter = quote.policy().letter();
        String own = line.line().asked().terms().tax();
        String named = own.isEmpty() ? quote.request().recipient().tax() : own;
        return named.equals(TaxRate.NO_TAX)
                ? new TaxRate(TaxRate.NO_TAX, Ratio.ZERO)
                : letter.findTax(named).orElse(letter.taxes().get(0));
    }
}
