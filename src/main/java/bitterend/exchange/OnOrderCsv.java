package bitterend.exchange;

import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.finding.NaturalOrder;
import bitterend.market.Offer;
import bitterend.market.OnOrder;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads {@code on-order.csv}: reels that are ordered, but not on the rack yet. */
final class OnOrderCsv {
    static final String NAME = "on-order.csv";
    static final CsvColumns COLUMNS = new CsvColumns(
            List.of("number", "rope", "length", "expected"),
            List.of("quantity", "certificate", "supplier", "price", "note"));

    /** Two in a hundred short, where no offer says how much: our own choice, no source. */
    private static final Ratio CAREFUL = Ratio.percent(2);

    private final Ropes ropes;
    private final List<Offer> offers;
    private final Map<String, List<String>> came;
    private final MoneyText money;
    private final Findings findings;

    /**
     * @param offers what suppliers offer: how much short a reel may come is said there
     * @param came the reels that came already, by order of reels
     */
    OnOrderCsv(Ropes ropes, List<Offer> offers, Map<String, List<String>> came, MoneyText money, Findings findings) {
        this.ropes = ropes;
        this.offers = List.copyOf(offers);
        this.came = Map.copyOf(came);
        this.money = money;
        this.findings = findings;
    }

    /** The reels that are still to come, by number; of an order that came whole the row is warned of. */
    List<OnOrder> read(InputFile file) {
        List<OnOrder> all = new ArrayList<>();
        Map<String, String> ids = new HashMap<>();
        for (Fields row : new CsvTable(file, COLUMNS, findings).rows()) {
            String id = row.require("number", Readings::id, "?" + row.place());
            String supplier = row.optional("supplier", Readings::text, "");
            String rope = RopeColumn.read(row, ropes);
            Offer.Made made = made(row, supplier, rope);
            int quantity = row.optional("quantity", Readings.whole(1, 1_000), 1);
            LocalDate expected = row.require("expected", Readings::dayOfTable, LocalDate.EPOCH);
            Money paid = row.optional(
                    "price",
                    text -> OffersCsv.price(text, made.length(), money),
                    usual(rope, supplier, made, quantity));
            row.once("number", id, ids);
            int there = came.getOrDefault(id, List.of()).size();
            if (row.sound() && there >= quantity) {
                row.warning("number", "a reel that is still to come: this order is received; take the row out");
            } else if (row.sound()) {
                all.add(new OnOrder(id, supplier, rope, made, quantity - there, there, expected, paid));
            }
        }
        all.sort(Comparator.comparing(OnOrder::id, NaturalOrder.IDS));
        return all;
    }

    private Offer.Made made(Fields row, String supplier, String rope) {
        Written length = row.require("length", Readings::presentAsWritten, Written.worked(new Length(1)));
        String certificate = row.optional("certificate", Readings::mark, "");
        List<Offer> ofRope =
                offers.stream().filter(offer -> offer.rope().equals(rope)).toList();
        return mostShort(alike(rope, supplier, length.roundedDown()))
                .map(like -> new Offer.Made(length, like.tolerance(), like.known(), false, certificate, like.oneLot()))
                .orElseGet(() -> new Offer.Made(
                        length,
                        mostShort(ofRope.stream()).map(Offer.Made::tolerance).orElse(CAREFUL),
                        Reel.Known.NOMINAL,
                        false,
                        certificate,
                        false));
    }

    /** Offers of such a reel. */
    private Stream<Offer> alike(String rope, String supplier, Length length) {
        return offers.stream()
                .filter(offer -> offer.rope().equals(rope)
                        && offer.made().length().equals(length)
                        && (supplier.isEmpty()
                                || offer.supplier().isEmpty()
                                || offer.supplier().equals(supplier)));
    }

    /** What such a reel costs of so many by the offers, else by the price of its rope, rounded up to the smallest coin. */
    private Money usual(String rope, String supplier, Offer.Made made, int quantity) {
        return alike(rope, supplier, made.length())
                .map(offer -> offer.terms().price().at(quantity))
                .min(Comparator.naturalOrder())
                .or(() -> ropes.find(rope)
                        .map(each -> each.price().of(made.length()).roundedUp()))
                .orElse(Money.ZERO);
    }

    private static Optional<Offer.Made> mostShort(Stream<Offer> some) {
        return some.map(Offer::made).max(Comparator.comparing(Offer.Made::tolerance));
    }
}
