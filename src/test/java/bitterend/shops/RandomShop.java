package bitterend.shops;

import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.Prices;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A shop made up by a seed: several ropes with substitutes, lots, certificates, customers' own rope, reels on hold and
 * reserved, use-by dates, pins, matched sets of both bonds, flaws, lead trims, inner wraps, uncertain lengths, several
 * value curves, prices that may be zero, and often too little stock. Every feature is absent from some shops.
 */
public final class RandomShop {
    /** The day of every random shop. */
    public static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private RandomShop() {}

    /** The shop of a seed; the same one every time. */
    public static PackingProblem of(long seed, ShopSize size) {
        Dice dice = new Dice(seed);
        List<Rope> ropes = new RandomRopes(dice).ropes(dice.between(1, size.ropes()));
        Map<String, Rope> catalogue = new TreeMap<>();
        Map<String, StockValue> values = new TreeMap<>();
        for (Rope rope : ropes) {
            catalogue.put(rope.id(), rope);
            values.put(rope.id(), RandomRopes.value(dice, rope));
        }
        List<Reel> reels = new RandomReels(dice, size).reels(ropes);
        List<Piece> pieces = new RandomPieces(dice, size).pieces(ropes, reels);
        return new PackingProblem(
                DAY,
                catalogue,
                pieces,
                reels,
                values,
                prices(dice),
                pins(dice, pieces, reels),
                earlier(dice, pieces, reels));
    }

    private static Prices prices(Dice dice) {
        if (dice.chance(25)) {
            return Prices.NONE;
        }
        long metre = 300_000;
        Cost age = dice.chance(50) ? Cost.ZERO : dice.cost(metre);
        return new Prices(
                dice.cost(2 * metre), dice.cost(metre), dice.cost(metre), dice.cost(metre), dice.cost(metre), age);
    }

    private static List<Pin> pins(Dice dice, List<Piece> pieces, List<Reel> reels) {
        List<Pin> pins = new ArrayList<>();
        int often = dice.mood() / 4;
        for (Piece piece : pieces) {
            List<Reel> suitable = suitable(piece, reels);
            if (dice.chance(often) && !suitable.isEmpty()) {
                int issued = pins.size() % 3 == 2 ? 7 : 0;
                pins.add(new Pin(piece.id(), dice.pick(suitable).id(), issued));
            }
        }
        return pins;
    }

    private static Map<String, String> earlier(Dice dice, List<Piece> pieces, List<Reel> reels) {
        Map<String, String> earlier = new TreeMap<>();
        int often = dice.chance(60) ? 0 : 70;
        for (Piece piece : pieces) {
            List<Reel> suitable = suitable(piece, reels);
            if (dice.chance(often) && !suitable.isEmpty()) {
                earlier.put(piece.id(), dice.pick(suitable).id());
            }
        }
        return earlier;
    }

    private static List<Reel> suitable(Piece piece, List<Reel> reels) {
        return reels.stream()
                .filter(reel -> piece.lengthOn(reel.rope()).isPresent())
                .toList();
    }
}
