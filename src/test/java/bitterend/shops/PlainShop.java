package bitterend.shops;

import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.packing.PackingProblem;
import bitterend.packing.Prices;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import bitterend.stock.RisingValue;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A shop with one rope, plain ends and nothing special, built line by line for tests that reckon by hand. */
public final class PlainShop {
    /** The day of every plain shop. */
    public static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final Rope rope;
    private final List<Reel> reels = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private Prices prices = Prices.NONE;

    private PlainShop(Rope rope) {
        this.rope = rope;
    }

    /** Rope {@code R} at 1 minor unit per millimetre, kept from {@code keepFromMm}, good as new from the same length. */
    public static PlainShop of(long lossMm, long keepFromMm) {
        return of(lossMm, keepFromMm, new UnitPrice(1_000_000));
    }

    /** The same at another price. */
    public static PlainShop of(long lossMm, long keepFromMm, UnitPrice price) {
        RopeIdentity identity = new RopeIdentity(
                Kinds.THREE_STRAND,
                Kinds.POLYESTER,
                "",
                "",
                Diameter.ofMillimetres(12),
                Lay.RIGHT_ORDINARY,
                "",
                "white",
                "");
        return new PlainShop(new Rope(
                "R",
                "plain rope",
                identity,
                new LinearMass(0),
                price,
                new Rope.Cutting(new Length(lossMm), new Length(1)),
                new Rope.Worth(new Length(keepFromMm), new Length(keepFromMm)),
                Length.ofMetres(200)));
    }

    /** A part reel with nothing special. */
    public PlainShop reel(String id, long lengthMm, Flaw... flaws) {
        return reel(new Reel(
                id,
                "R",
                "L1",
                new Reel.Contents(new Length(lengthMm), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(flaws),
                Reel.Papers.NONE,
                Reel.Custody.FREE,
                false,
                Reel.Where.UNKNOWN));
    }

    public PlainShop reel(Reel reel) {
        reels.add(reel);
        return this;
    }

    /** Pieces of one line, {@code ORDER/1.1} and on, due a month later. */
    public PlainShop pieces(String order, long cutMm, int count) {
        for (int i = 1; i <= count; i++) {
            piece(order + "/1." + i, order, cutMm, DAY.plusDays(30), Piece.Matching.NONE);
        }
        return this;
    }

    public PlainShop piece(String id, String order, long cutMm, LocalDate due, Piece.Matching matching) {
        pieces.add(new Piece(
                id,
                new Piece.Source(order, "1", due, 5),
                List.of(new Piece.RopeChoice("R", new Length(cutMm))),
                matching,
                "",
                false,
                new Length(cutMm),
                "plain / plain"));
        return this;
    }

    public PlainShop prices(Prices newPrices) {
        prices = newPrices;
        return this;
    }

    public PackingProblem problem() {
        StockValue value = new RisingValue(rope.price(), rope.worth(), Ratio.ONE, Cost.ZERO);
        return new PackingProblem(
                DAY, Map.of("R", rope), pieces, reels, Map.of("R", value), prices, List.of(), Map.of());
    }
}
