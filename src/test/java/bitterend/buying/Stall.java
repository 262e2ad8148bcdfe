package bitterend.buying;

import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.demand.Piece;
import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.market.Supplier;
import bitterend.market.UsualLateness;
import bitterend.measure.Cost;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Money;
import bitterend.measure.UnitPrice;
import bitterend.packing.PackingProblem;
import bitterend.packing.Prices;
import bitterend.packing.ShopCalendar;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A rope whose metre costs one coin and whose remnants are worth nothing, unless a test says otherwise. */
final class Stall {
    static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    static final String ROPE = "P12";

    private Stall() {}

    static Rope rope() {
        return new Rope(
                ROPE,
                "Polyester double braid 12 mm",
                new RopeIdentity(
                        Kinds.DOUBLE_BRAID,
                        Kinds.POLYESTER,
                        "",
                        "",
                        Diameter.ofMillimetres(12),
                        Lay.NONE,
                        "",
                        "white",
                        "blue"),
                new LinearMass(110_000),
                new UnitPrice(Cost.MILLIS_PER_MINOR),
                new Rope.Cutting(Length.ZERO, new Length(10)),
                new Rope.Worth(Length.ofMetres(3), Length.ofMetres(40)),
                Length.ofMetres(100));
    }

    static Offer offer(String id, long metres, long price) {
        return new Offer(id, "", ROPE, Offer.Made.plain(Length.ofMetres(metres)), Offer.Terms.of(new Money(price)));
    }

    static Offer limited(Offer offer, int supply, int minimum, int leadDays) {
        return new Offer(
                offer.id(),
                offer.supplier(),
                offer.rope(),
                offer.made(),
                new Offer.Terms(
                        offer.terms().price(),
                        Money.ZERO,
                        supply,
                        minimum,
                        new Offer.Lead(leadDays, 0),
                        LocalDate.MAX));
    }

    /** Pairs of metres and number. */
    static List<Piece> pieces(int... metresAndNumbers) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < metresAndNumbers.length; i += 2) {
            for (int n = 1; n <= metresAndNumbers[i + 1]; n++) {
                pieces.add(piece("A", i + 1 + "." + n, metresAndNumbers[i], LocalDate.MAX));
            }
        }
        return pieces;
    }

    static Piece piece(String order, String number, long metres, LocalDate due) {
        return new Piece(
                order + "/" + number,
                new Piece.Source(order, number.substring(0, number.indexOf('.')), due, 5),
                List.of(new Piece.RopeChoice(ROPE, Length.ofMetres(metres))),
                Piece.Matching.NONE,
                "",
                false,
                Length.ofMetres(metres),
                "plain / plain");
    }

    static Orders orders(List<Piece> pieces, List<Offer> offers) {
        return orders(pieces, List.of(), StockValue.NOTHING, offers);
    }

    static Orders orders(List<Piece> pieces, List<Reel> rack, StockValue value, List<Offer> offers) {
        PackingProblem day = new PackingProblem(
                DAY, Map.of(ROPE, rope()), pieces, rack, Map.of(ROPE, value), Prices.NONE, List.of(), Map.of());
        return new Orders(day, List.of(), market(offers, List.of()), late(0));
    }

    static UsualLateness late(int workingDays) {
        return new UsualLateness(ShopCalendar.USUAL, new ShopCalendar.Ahead(workingDays, true));
    }

    static Market market(List<Offer> offers, List<Supplier> suppliers) {
        return new Market(DAY, offers, suppliers, Map.of(ROPE, rope().mass()));
    }

    static Reel reel(String id, long metres) {
        return new Reel(
                id,
                ROPE,
                "",
                new Reel.Contents(Length.ofMetres(metres), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(),
                Reel.Papers.NONE,
                Reel.Custody.FREE,
                false,
                Reel.Where.UNKNOWN);
    }

    static Offer sold(String id, String supplier, long metres, long price) {
        Offer offer = offer(id, metres, price);
        return new Offer(id, supplier, offer.rope(), offer.made(), offer.terms());
    }

    static Orders sent(List<Piece> pieces, List<Offer> offers, List<Supplier> suppliers) {
        Orders plain = orders(pieces, offers);
        return new Orders(plain.day(), List.of(), market(offers, suppliers), late(0));
    }
}
