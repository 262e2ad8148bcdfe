package bitterend.exchange;

import bitterend.exchange.form.Fields;
import bitterend.market.Offer;
import bitterend.market.ReelPrice;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;

/** What is odd about the rows of a proposal though they can be ordered: a warning each. */
final class ProposalDoubts {
    private final Map<String, Offer> offers;
    private final MoneyText money;
    private final LocalDate day;
    private final Map<String, Integer> reels = new TreeMap<>();

    /**
     * @param offers of the shop, by id
     * @param day of the order
     */
    ProposalDoubts(Map<String, Offer> offers, MoneyText money, LocalDate day) {
        this.offers = offers;
        this.money = money;
        this.day = day;
    }

    /** Warns of a row that was read whole; the rows come in the order of the file. */
    void of(Fields row, ProposalCsv.Row read) {
        if (read.expected().isBefore(day)) {
            row.warning("expected", "a day from " + day + " on, the day of the order");
        }
        Offer offer = offers.get(read.of());
        if (offer != null) {
            ReelPrice price = offer.terms().price();
            once(row, read, price);
            price(row, read, price);
        }
    }

    private void once(Fields row, ProposalCsv.Row read, ReelPrice price) {
        int all = reels.merge(read.of(), read.reels(), Integer::sum);
        if (all > read.reels()) {
            row.warning(
                    "offer",
                    "one row of each offer: with those above it is " + all
                            + " reels, and in one order of so many each costs " + money.print(price.at(all)));
        }
    }

    private void price(Fields row, ProposalCsv.Row read, ReelPrice price) {
        Money stated = read.offer().terms().price().at(read.reels());
        Money usual = price.at(read.reels());
        if (stated.equals(usual)) {
            return;
        }
        if (stated.equals(price.one())) {
            row.warning("price", said(read, usual) + "; " + money.print(stated) + " is what one reel costs");
        }
        price.breaks().forEach((from, each) -> {
            if (stated.equals(each)) {
                row.warning(
                        "price", said(read, usual) + "; " + money.print(stated) + " is the price from " + from + " on");
            }
        });
    }

    private String said(ProposalCsv.Row read, Money usual) {
        return money.print(usual) + " each, the price of " + read.reels() + (read.reels() == 1 ? " reel" : " reels")
                + " of " + read.of();
    }
}
