package bitterend.packing;

import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * A day's question: which piece comes off which run. Ids are unique within each list, and every piece, reel, pin and
 * value speaks of a rope, piece or reel that is listed. The reels leave alone what of them is held on the day, less what is
 * pinned to it.
 *
 * @param day the day the rope is cut
 * @param ropes the ropes concerned, by id
 * @param pieces what is wanted
 * @param reels what is there
 * @param values worth of a run by rope id
 * @param prices what the soft rules cost
 * @param pins draws that must stay
 * @param earlier reel of each piece in an earlier plan, of the day or before it, by piece id; empty for a fresh plan
 * @param calendar days off, and how far ahead work is urgent
 * @param horizon how far the pieces listed look ahead, and how many were left for later
 * @param arrivals when the reels come that are on order, by reel id; every other reel is in the house
 * @param customers whose an order is, by order, where rope is held for that customer
 */
public record PackingProblem(
        LocalDate day,
        Map<String, Rope> ropes,
        List<Piece> pieces,
        List<Reel> reels,
        Map<String, StockValue> values,
        Prices prices,
        List<Pin> pins,
        Map<String, String> earlier,
        ShopCalendar calendar,
        Horizon horizon,
        Map<String, Arrival> arrivals,
        Map<String, String> customers) {

    public PackingProblem {
        ropes = java.util.Collections.unmodifiableMap(new TreeMap<>(ropes));
        values = java.util.Collections.unmodifiableMap(new TreeMap<>(values));
        earlier = java.util.Collections.unmodifiableMap(new TreeMap<>(earlier));
        pieces = List.copyOf(pieces);
        pins = List.copyOf(pins);
        HeldRope held = new HeldRope(day, ropes, pieces, reels, pins);
        reels = reels.stream().map(held::on).toList();
        arrivals = java.util.Collections.unmodifiableMap(new TreeMap<>(arrivals));
        customers = java.util.Collections.unmodifiableMap(new TreeMap<>(customers));
    }

    /** A question in which no rope is held for a customer. */
    public PackingProblem(
            LocalDate day,
            Map<String, Rope> ropes,
            List<Piece> pieces,
            List<Reel> reels,
            Map<String, StockValue> values,
            Prices prices,
            List<Pin> pins,
            Map<String, String> earlier,
            ShopCalendar calendar,
            Horizon horizon,
            Map<String, Arrival> arrivals) {
        this(day, ropes, pieces, reels, values, prices, pins, earlier, calendar, horizon, arrivals, Map.of());
    }

    /** A question of rope that is all in the house. */
    public PackingProblem(
            LocalDate day,
            Map<String, Rope> ropes,
            List<Piece> pieces,
            List<Reel> reels,
            Map<String, StockValue> values,
            Prices prices,
            List<Pin> pins,
            Map<String, String> earlier,
            ShopCalendar calendar,
            Horizon horizon) {
        this(day, ropes, pieces, reels, values, prices, pins, earlier, calendar, horizon, Map.of());
    }

    /** A question about all there is to cut. */
    public PackingProblem(
            LocalDate day,
            Map<String, Rope> ropes,
            List<Piece> pieces,
            List<Reel> reels,
            Map<String, StockValue> values,
            Prices prices,
            List<Pin> pins,
            Map<String, String> earlier,
            ShopCalendar calendar) {
        this(day, ropes, pieces, reels, values, prices, pins, earlier, calendar, Horizon.ALL);
    }

    /** A question of a shop that is closed at weekends alone and has the usual limits of urgency. */
    public PackingProblem(
            LocalDate day,
            Map<String, Rope> ropes,
            List<Piece> pieces,
            List<Reel> reels,
            Map<String, StockValue> values,
            Prices prices,
            List<Pin> pins,
            Map<String, String> earlier) {
        this(day, ropes, pieces, reels, values, prices, pins, earlier, ShopCalendar.USUAL);
    }

    /** The same question about these pieces alone; pins and earlier places of other pieces are left out. */
    public PackingProblem about(List<Piece> some) {
        Set<String> ids = new HashSet<>();
        some.forEach(piece -> ids.add(piece.id()));
        Map<String, String> places = new TreeMap<>(earlier);
        places.keySet().retainAll(ids);
        List<Pin> fixed = pins.stream().filter(pin -> ids.contains(pin.piece())).toList();
        return new PackingProblem(
                day, ropes, some, reels, values, prices, fixed, places, calendar, horizon, arrivals, customers);
    }

    /** The same question with these draws that must stay. */
    public PackingProblem withPins(List<Pin> fixed) {
        return new PackingProblem(
                day, ropes, pieces, reels, values, prices, fixed, earlier, calendar, horizon, arrivals, customers);
    }

    /** The same question, where these orders are known to be of these customers. */
    public PackingProblem ofCustomers(Map<String, String> byOrder) {
        return new PackingProblem(
                day, ropes, pieces, reels, values, prices, pins, earlier, calendar, horizon, arrivals, byOrder);
    }

    /** The same question, said to look so far ahead. */
    PackingProblem looking(Horizon far) {
        return new PackingProblem(
                day, ropes, pieces, reels, values, prices, pins, earlier, calendar, far, arrivals, customers);
    }

    /** The same question after an earlier plan: the reel of each piece by its id. */
    public PackingProblem withEarlier(Map<String, String> places) {
        return new PackingProblem(
                day, ropes, pieces, reels, values, prices, pins, places, calendar, horizon, arrivals, customers);
    }

    /** The same question where the soft rules cost something else. */
    public PackingProblem withPrices(Prices others) {
        return new PackingProblem(
                day, ropes, pieces, reels, values, others, pins, earlier, calendar, horizon, arrivals, customers);
    }

    /** The same question where runs are worth something else. */
    public PackingProblem withValues(Map<String, StockValue> worth) {
        return withRack(ropes, worth, reels);
    }

    /** The same question of another rack, with its ropes and what a run of each is worth. */
    public PackingProblem withRack(Map<String, Rope> held, Map<String, StockValue> worth, List<Reel> there) {
        Map<String, Arrival> still = new TreeMap<>(arrivals);
        still.keySet().retainAll(there.stream().map(Reel::id).toList());
        return new PackingProblem(
                day, held, pieces, there, worth, prices, pins, earlier, calendar, horizon, still, customers);
    }

    /** The same question with further reels, which come then; a reel that is there already is a caller's bug. */
    public PackingProblem withComing(Map<Reel, Arrival> coming) {
        List<Reel> all = new ArrayList<>(reels);
        Map<String, Arrival> days = new TreeMap<>(arrivals);
        Set<String> ids = new HashSet<>();
        reels.forEach(reel -> ids.add(reel.id()));
        coming.forEach((reel, arrival) -> {
            if (!ids.add(reel.id())) {
                throw new IllegalArgumentException("two reels " + reel.id());
            }
            all.add(reel);
            days.put(reel.id(), arrival);
        });
        return new PackingProblem(
                day, ropes, pieces, all, values, prices, pins, earlier, calendar, horizon, days, customers);
    }

    /** The same question of the rope that is in the house alone. */
    public PackingProblem inTheHouse() {
        return arrivals.isEmpty()
                ? this
                : withRack(
                        ropes,
                        values,
                        reels.stream().filter(reel -> !isComing(reel.id())).toList());
    }

    /** Whether a reel is on order and not in the house yet. */
    public boolean isComing(String reel) {
        return arrivals.containsKey(reel);
    }

    /** The rope on a reel. */
    public Rope ropeOn(Reel reel) {
        return rope(reel.rope());
    }

    /** A rope by its id; an unknown id is a caller's bug. */
    public Rope rope(String id) {
        Rope rope = ropes.get(id);
        if (rope == null) {
            throw new IllegalArgumentException("no rope " + id);
        }
        return rope;
    }

    /** A reel by its id, looked up one by one; an unknown id is a caller's bug. */
    public Reel reel(String id) {
        return reels.stream()
                .filter(reel -> reel.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no reel " + id));
    }

    /** What a run of this reel is worth; nothing when the rope is a customer's own. */
    public StockValue valueOn(Reel reel) {
        StockValue value = values.get(reel.rope());
        if (reel.custody().isCustomersOwn()) {
            return StockValue.NOTHING;
        }
        if (value == null) {
            throw new IllegalArgumentException("no value for rope " + reel.rope());
        }
        return value;
    }
}
