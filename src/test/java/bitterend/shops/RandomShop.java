package bitterend.shops;

import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Arrival;
import bitterend.packing.Horizon;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.Prices;
import bitterend.packing.ShopCalendar;
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
 * value curves, prices that may be zero, rope that is on order, and often too little stock. Every feature is absent from some shops.
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
        Prices prices = prices(dice);
        List<Pin> pins = pins(dice, pieces, reels);
        return new PackingProblem(
                DAY,
                catalogue,
                pieces,
                reels,
                values,
                prices,
                pins,
                earlier(dice, pieces, reels),
                ShopCalendar.USUAL,
                Horizon.ALL,
                arrivals(new Dice(seed + 1), reels, pins));
    }

    /** Some full reels are on order still; the sheet of none of them is issued. */
    private static Map<String, Arrival> arrivals(Dice dice, List<Reel> reels, List<Pin> pins) {
        Map<String, Arrival> arrivals = new TreeMap<>();
        int often = dice.mood();
        for (Reel reel : reels) {
            boolean issued =
                    pins.stream().anyMatch(pin -> pin.isIssued() && pin.reel().equals(reel.id()));
            boolean comes = reel.full() && dice.chance(often);
            LocalDate from = DAY.plusDays(dice.pick(List.of(1, 2, 4, 8, 9)));
            if (comes && !issued) {
                arrivals.put(reel.id(), new Arrival("P-" + dice.between(1, 3), from.minusDays(2), from));
            }
        }
        return arrivals;
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
