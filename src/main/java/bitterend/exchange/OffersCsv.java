package bitterend.exchange;

import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.finding.NaturalOrder;
import bitterend.market.Offer;
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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code offers.csv}: one row for each reel size that a supplier offers. */
final class OffersCsv {
    static final String NAME = "offers.csv";
    private static final int MOST_REELS = 100_000;
    private static final int MOST_LEAD_DAYS = 1_000;
    static final CsvColumns COLUMNS = new CsvColumns(
            List.of("offer", "rope", "length", "price"),
            List.of(
                    "supplier",
                    "freight",
                    "supply",
                    "minimum",
                    "tolerance",
                    "lead days",
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
                row.optional("certificate", Readings::text, ""),
                row.optional("one lot", Readings::yesOrNo, false));
    }

    private Offer.Terms terms(Fields row, Length length) {
        int minimum = row.optional("minimum", Readings.whole(1, MOST_REELS), 1);
        int supply = row.optional("supply", Readings.whole(0, MOST_REELS), Offer.Terms.UNLIMITED);
        if (row.sound() && supply < minimum) {
            row.warning("supply", "at least the minimum of " + minimum + ": nothing can be ordered of this offer");
        }
        return new Offer.Terms(
                row.require("price", text -> price(text, length), Money.ZERO),
                row.optional("freight", this::amount, Money.ZERO),
                supply,
                minimum,
                row.optional("lead days", Readings.whole(0, MOST_LEAD_DAYS), 0));
    }

    /** A price of the reel, or by length; the latter rounded up to the smallest coin. */
    private Parsed<Money> price(String text, Length length) {
        Optional<UnitPrice> byLength = money.parseByLength(text).value();
        if (byLength.isEmpty()) {
            return amount(text);
        }
        Cost reel = byLength.get().of(length);
        return Parsed.of(new Money(-Math.floorDiv(-reel.millis(), Cost.MILLIS_PER_MINOR)));
    }

    private Parsed<Money> amount(String text) {
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
