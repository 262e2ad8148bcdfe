package bitterend.packing;

import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.UnitPrice;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A small shop for a test. Until told otherwise a millimetre of rope is worth 1 in 1/1000 minor unit however short it is, a
 * cut loses 10 mm, and nothing else costs anything.
 */
public final class Sketch {
    public static final String ROPE = "white";
    public static final String OTHER_ROPE = "navy";
    public static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final List<Piece> pieces = new ArrayList<>();
    private final List<Reel> reels = new ArrayList<>();
    private final List<Pin> pins = new ArrayList<>();
    private final Map<String, String> earlier = new TreeMap<>();
    private final Map<String, Arrival> arrivals = new TreeMap<>();
    private final Map<String, RunId> places = new TreeMap<>();
    private Prices prices = Prices.NONE;
    private StockValue value = length -> new Cost(length.mm());
    private long loss = 10;

    public Sketch loss(long mm) {
        loss = mm;
        return this;
    }

    public Sketch value(StockValue curve) {
        value = curve;
        return this;
    }

    public Sketch prices(Prices all) {
        prices = all;
        return this;
    }

    public Sketch with(ReelSketch reel) {
        reels.add(reel.reel());
        return this;
    }

    /** A piece that is not planned. */
    public Sketch with(PieceSketch piece) {
        pieces.add(piece.piece());
        return this;
    }

    /** A piece planned on a run, the first of a reel being 1. */
    public Sketch with(PieceSketch piece, String reel, int run) {
        Piece planned = piece.piece();
        pieces.add(planned);
        places.put(planned.id(), new RunId(reel, run));
        return this;
    }

    public Sketch pin(String piece, String reel) {
        pins.add(new Pin(piece, reel));
        return this;
    }

    public Sketch issue(String piece, String reel, int plan) {
        pins.add(new Pin(piece, reel, plan));
        return this;
    }

    public Sketch earlier(String piece, String reel) {
        earlier.put(piece, reel);
        return this;
    }

    /** A reel that is on order, counted on from a day. */
    public Sketch coming(String reel, LocalDate from) {
        arrivals.put(reel, new Arrival(reel.substring(0, reel.indexOf(':')), from, from));
        return this;
    }

    public PackingProblem problem() {
        Map<String, Rope> ropes = Map.of(ROPE, rope(ROPE), OTHER_ROPE, rope(OTHER_ROPE));
        Map<String, StockValue> values = Map.of(ROPE, value, OTHER_ROPE, value);
        return new PackingProblem(
                DAY, ropes, pieces, reels, values, prices, pins, earlier, ShopCalendar.USUAL, Horizon.ALL, arrivals);
    }

    public Packing packing() {
        return new Packing(places);
    }

    private Rope rope(String id) {
        return new Rope(
                id,
                id,
                new RopeIdentity(
                        Kinds.DOUBLE_BRAID, Kinds.POLYESTER, "", "", Diameter.ofMillimetres(12), Lay.NONE, "", id, ""),
                new LinearMass(100_000),
                new UnitPrice(1_000),
                new Rope.Cutting(new Length(loss), new Length(1)),
                new Rope.Worth(new Length(1), new Length(1)),
                new Length(200_000));
    }
}
