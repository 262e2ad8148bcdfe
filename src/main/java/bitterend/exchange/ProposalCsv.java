package bitterend.exchange;

import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Readings;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.finding.Nearest;
import bitterend.market.Offer;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import bitterend.stock.Reel;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A proposal of what to order, as a person has edited it. */
public final class ProposalCsv {
    static final CsvColumns COLUMNS = new CsvColumns(
            List.of("quantity"),
            List.of("offer", "rope", "supplier", "length", "expected", "price", "certificate", "note"));

    /** As much as a row may order. */
    private static final int MOST_REELS = 1_000;

    private final Shop shop;
    private final LocalDate day;
    private final Findings findings = new Findings();
    private final Ropes ropes;
    private final Map<String, Offer> offers;

    private ProposalCsv(Shop shop, LocalDate day) {
        this.shop = shop;
        this.day = day;
        ropes = new Ropes(
                shop.catalogue().ropes(),
                shop.catalogue().ropes().stream().map(rope -> rope.id()).collect(Collectors.toSet()),
                true,
                RopesJson.NAME);
        offers = shop.supplies().offers().stream().collect(Collectors.toMap(Offer::id, offer -> offer));
    }

    /**
     * A row that orders something.
     *
     * @param place where it is in the file
     * @param offer what is ordered, at the price that the row states
     * @param of id of the offer of the shop; empty where it is of none
     * @param reels how many; at least 1
     * @param expected the day they are wanted
     */
    public record Row(String place, Offer offer, String of, int reels, LocalDate expected, String note) {}

    /**
     * What a file says.
     *
     * @param rows that order something; none where one of the file cannot be read
     * @param findings what is wrong with it
     */
    public record Read(List<Row> rows, List<Finding> findings) {
        public Read {
            rows = List.copyOf(rows);
            findings = List.copyOf(findings);
        }
    }

    /**
     * Reads a proposal; days and decimal commas may be typed as they are where the shop is.
     *
     * @param day of the order
     */
    public static Read read(Path file, Shop shop, LocalDate day) {
        ProposalCsv reader = new ProposalCsv(shop, day);
        List<Row> rows = InputFile.named(file, reader.findings)
                .map(input -> reader.rows(input.in(shop.settings().locale())))
                .orElse(List.of());
        return new Read(reader.findings.hasErrors() ? List.of() : rows, reader.findings.sorted());
    }

    private List<Row> rows(InputFile file) {
        List<Row> rows = new ArrayList<>();
        ProposalDoubts doubts = new ProposalDoubts(offers, shop.settings().money(), day);
        for (Fields row : new CsvTable(file, COLUMNS, findings).rows()) {
            int reels = row.optional("quantity", Readings.whole(0, MOST_REELS), 0);
            if (row.sound() && reels > 0) {
                Row read = row.text("offer").isPresent() ? ofOffer(row, reels) : ofNone(row, reels);
                if (row.sound()) {
                    doubts.of(row, read);
                    rows.add(read);
                }
            }
        }
        return rows;
    }

    /** Of an offer of the shop: what the row leaves out is as there, and what it states besides price and day must be. */
    private Row ofOffer(Fields row, int reels) {
        Offer offer = row.require("offer", this::offer, NONE);
        if (!row.sound()) {
            return new Row(row.place(), NONE, "", reels, day, "");
        }
        mustBe(row, "rope", offer.rope(), "the rope of offer " + offer.id());
        mustBe(row, "supplier", offer.supplier(), "the supplier of offer " + offer.id());
        Written written =
                row.optional("length", Readings::presentAsWritten, offer.made().written());
        if (!written.equals(offer.made().written())) {
            row.error(
                    "length",
                    "the length of offer " + offer.id() + ", "
                            + offer.made().written().kept());
        }
        Money price = row.optional("price", this::money, offer.terms().price().at(reels));
        return row(row, offer.costing(price), offer.id(), reels, offer.arrives(day));
    }

    private static void mustBe(Fields row, String name, String is, String what) {
        Optional<String> text = row.text(name);
        if (text.isPresent() && !text.get().strip().equals(is)) {
            row.error(name, what + ", " + is);
        }
    }

    private static final Offer NONE =
            new Offer("none", "", "none", Offer.Made.plain(new Length(1)), Offer.Terms.of(Money.ZERO));

    private Parsed<Offer> offer(String text) {
        Offer found = offers.get(text);
        return found != null
                ? Parsed.of(found)
                : Parsed.refused("an offer of " + OffersCsv.NAME + Nearest.hint(text, offers.keySet()));
    }

    private Parsed<Money> money(String text) {
        return OffersCsv.amount(text, shop.settings().money());
    }

    /** Of no offer that the shop knows: the row says it all. */
    private Row ofNone(Fields row, int reels) {
        String rope = RopeColumn.read(row, ropes);
        Written length = row.require("length", Readings::presentAsWritten, Written.worked(new Length(1)));
        Offer.Made made = new Offer.Made(
                length, Ratio.ZERO, Reel.Known.NOMINAL, false, row.optional("certificate", Readings::text, ""), false);
        Money price = row.require("price", this::money, Money.ZERO);
        Offer offer = new Offer("", row.optional("supplier", Readings::text, ""), rope, made, Offer.Terms.of(price));
        if (row.text("expected").isEmpty()) {
            row.error("expected", "the day they are wanted, since no offer says when they come");
        }
        return row(row, offer, "", reels, day);
    }

    private static Row row(Fields row, Offer offer, String of, int reels, LocalDate usual) {
        return new Row(
                row.place(),
                offer.certified(
                        row.optional("certificate", Readings::text, offer.made().certificate())),
                of,
                reels,
                row.optional("expected", Readings::dayOfTable, usual),
                row.optional("note", Readings::text, ""));
    }
}
