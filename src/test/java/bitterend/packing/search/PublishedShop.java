package bitterend.packing.search;

import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.demand.Piece;
import bitterend.demand.Piece.Matching;
import bitterend.demand.Piece.RopeChoice;
import bitterend.measure.Cost;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.UnitPrice;
import bitterend.packing.PackingProblem;
import bitterend.packing.Prices;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A published packing problem as a shop with plain ends. Every stock length is a rope of its own, each a substitute for the
 * others; only a whole reel is worth anything, a cut loses nothing, and a unit of the source is a millimetre here.
 */
final class PublishedShop {
    /** What a unit of money in a source is here: a reel is to be worth what reels are worth. */
    static final long PRICE = 100_000;

    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final Map<String, Rope> ropes = new TreeMap<>();
    private final Map<String, StockValue> values = new TreeMap<>();
    private final List<Reel> reels = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();

    /** So many reels of a length, each at a price. */
    PublishedShop stock(int count, long length, long price) {
        String id = "rope of " + length;
        ropes.put(id, rope(id));
        values.put(id, left -> new Cost(left.mm() == length ? price * PRICE : 0));
        for (int i = 1; i <= count; i++) {
            reels.add(new Reel(
                    length + "-" + i,
                    id,
                    "",
                    new Reel.Contents(new Length(length), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.NOMINAL),
                    List.of(),
                    Reel.Papers.NONE,
                    Reel.Custody.FREE,
                    true,
                    Reel.Where.UNKNOWN));
        }
        return this;
    }

    /** Pieces in the notation {@code 45x97 36x610}: length x demand, the demand left out when it is one. */
    PublishedShop pieces(String demand) {
        for (String item : demand.split(" ")) {
            String[] parts = item.split("x", -1);
            int count = parts.length > 1 ? Integer.parseInt(parts[1]) : 1;
            for (int i = 0; i < count; i++) {
                pieces.add(piece(Long.parseLong(parts[0])));
            }
        }
        return this;
    }

    private Piece piece(long length) {
        String id = "P" + (pieces.size() + 1);
        List<RopeChoice> choices = ropes.keySet().stream()
                .map(rope -> new RopeChoice(rope, new Length(length)))
                .toList();
        Piece.Source source = new Piece.Source(id, "1", DAY, 5);
        return new Piece(id, source, choices, Matching.NONE, "", false, new Length(length), "plain, plain");
    }

    PackingProblem problem() {
        return new PackingProblem(DAY, ropes, pieces, reels, values, Prices.NONE, List.of(), Map.of());
    }

    private static Rope rope(String id) {
        return new Rope(
                id,
                id,
                new RopeIdentity(
                        Kinds.DOUBLE_BRAID, Kinds.POLYESTER, "", "", Diameter.ofMillimetres(12), Lay.NONE, "", "", ""),
                new LinearMass(100_000),
                new UnitPrice(1_000),
                new Rope.Cutting(Length.ZERO, new Length(1)),
                new Rope.Worth(new Length(1), new Length(1)),
                new Length(200_000));
    }
}
