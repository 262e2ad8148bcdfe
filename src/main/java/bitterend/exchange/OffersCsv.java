package bitterend.exchange;

import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.finding.NaturalOrder;
import bitterend.market.Offer;
import bitterend.market.ReelPrice;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.UnitPrice;
import bitterend.measure.Written;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads {@code offers.csv}: one row for each reel size that a supplier offers. */
final class OffersCsv {
    static final String NAME = "offers.csv";
    private static final int MOST_REELS = 100_000;
    private static final int MOST_LEAD_DAYS = 1_000;
    private static final String EXAMPLE = "5: 347.00; 10: 330.00";
    static final CsvColumns COLUMNS = new CsvColumns(
            List.of("offer", "rope", "length", "price"),
            List.of(
                    "supplier",
                    "breaks",
                    "freight",
                    "supply",
                    "minimum",
                    "tolerance",
                    "lead days",
                    "lead spread",
                    "valid until",
                    "known",
                    "joined",
                    "certificate",
                    "one lot",
                    "note"));

    private final Ropes ropes;
    private final MoneyText money;
    private final Findings findings;

    OffersCsv(Ropes ropes, MoneyText money, Findings findings) {
        this.ropes = ropes;
        this.money = money;
        this.findings = findings;
    }

    /** The offers by id. */
    List<Offer> read(InputFile file) {
        List<Offer> offers = new ArrayList<>();
        Map<String, String> ids = new HashMap<>();
        for (Fields row : new CsvTable(file, COLUMNS, findings).rows()) {
            Offer offer = offer(row);
            row.once("offer", offer.id(), ids);
            if (row.sound()) {
                offers.add(offer);
            }
        }
        offers.sort(Comparator.comparing(Offer::id, NaturalOrder.IDS));
        return offers;
    }

    private Offer offer(Fields row) {
        Offer.Made made = made(row);
        return new Offer(
                row.require("offer", Readings::id, "?" + row.place()),
                row.optional("supplier", Readings::text, ""),
                RopeColumn.read(row, ropes),
                made,
                terms(row, made.length()));
    }

    private static Offer.Made made(Fields row) {
        return new Offer.Made(
                row.require("length", Readings::presentAsWritten, Written.worked(new Length(1))),
                row.optional("tolerance", OffersCsv::tolerance, Ratio.ZERO),
                row.optional("known", Readings.word(Reel.Known.values(), Reel.Known::word), Reel.Known.METERED),
                row.optional("joined", Readings::yesOrNo, false),
                row.optional("certificate", Readings::mark, ""),
                row.optional("one lot", Readings::yesOrNo, false));
    }

    private Offer.Terms terms(Fields row, Length length) {
        int minimum = row.optional("minimum", Readings.whole(1, MOST_REELS), 1);
        int supply = row.optional("supply", Readings.whole(0, MOST_REELS), Offer.Terms.UNLIMITED);
        if (row.sound() && supply < minimum) {
            row.warning("supply", "at least the minimum of " + minimum + ": nothing can be ordered of this offer");
        }
        ReelPrice price = ReelPrice.of(row.require("price", text -> price(text, length), Money.ZERO));
        return new Offer.Terms(
                row.optional("breaks", text -> breaks(text, price, length), price),
                row.optional("freight", this::amount, Money.ZERO),
                supply,
                minimum,
                new Offer.Lead(
                        row.optional("lead days", Readings.whole(0, MOST_LEAD_DAYS), 0),
                        row.optional("lead spread", Readings.whole(0, MOST_LEAD_DAYS), 0)),
                row.optional("valid until", Readings::dayOfTable, LocalDate.MAX));
    }

    /** Prices from so many reels on, {@code 5: 347.00 EUR; 10: 330.00 EUR}, each lower than the one before. */
    private Parsed<ReelPrice> breaks(String text, ReelPrice price, Length length) {
        Parsed<ReelPrice> all = Parsed.of(price);
        for (String part : text.split(";", -1)) {
            all = all.then(before -> broken(before, part.strip(), length));
        }
        return all;
    }

    private Parsed<ReelPrice> broken(ReelPrice before, String part, Length length) {
        int colon = part.indexOf(':');
        if (colon < 0) {
            return Parsed.refused("the fewest reels and what each costs then, such as " + EXAMPLE);
        }
        return Readings.whole(2, MOST_REELS)
                .read(part.substring(0, colon).strip())
                .then(from -> price(part.substring(colon + 1).strip(), length).then(each -> with(before, from, each)));
    }

    private static Parsed<ReelPrice> with(ReelPrice before, int from, Money each) {
        boolean more = before.breaks().isEmpty() || before.breaks().lastKey() < from;
        if (!more || each.compareTo(before.at(from)) >= 0) {
            return Parsed.refused("more reels each time, and a price below the one before, such as " + EXAMPLE);
        }
        SortedMap<Integer, Money> breaks = new TreeMap<>(before.breaks());
        breaks.put(from, each);
        return Parsed.of(new ReelPrice(before.one(), breaks));
    }

    private Parsed<Money> price(String text, Length length) {
        return price(text, length, money);
    }

    /** A price of the reel, or by length; the latter rounded up to the smallest coin. */
    static Parsed<Money> price(String text, Length length, MoneyText money) {
        Optional<UnitPrice> byLength = money.parseByLength(text).value();
        if (byLength.isEmpty()) {
            return amount(text, money);
        }
        Cost reel = byLength.get().of(length);
        return Parsed.of(new Money(-Math.floorDiv(-reel.millis(), Cost.MILLIS_PER_MINOR)));
    }

    private Parsed<Money> amount(String text) {
        return amount(text, money);
    }

    /** An amount that is not negative. */
    static Parsed<Money> amount(String text, MoneyText money) {
        return money.parse(text)
                .then(amount -> amount.minor() < 0
                        ? Parsed.refused("an amount of money that is not negative")
                        : Parsed.of(amount));
    }

    private static Parsed<Ratio> tolerance(String text) {
        return RatioText.parse(text)
                .then(share -> share.isNegative() || share.compareTo(new Ratio(1, 2)) > 0
                        ? Parsed.refused("how much shorter it may come, from 0 to 50 %, such as 1 %")
                        : Parsed.of(share));
    }
}
