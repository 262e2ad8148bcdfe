package bitterend.quoting.after;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Paid;
import bitterend.stock.Standing;
import bitterend.stock.StockValue;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What each cut took: its rope, its part of the scrap, and its part of what cutting cost by the rule of a quote, which is the
 * value that left the rack with the opening and the fetching of the reel. A draw is all that one plan cut off one reel, or one
 * cut off plan; it falls to its cuts by what they took.
 */
final class RopeTaken {
    private static final Set<Kind> CUTS = EnumSet.of(Kind.CUT, Kind.CUT_SHORT, Kind.CUT_SPARE);

    private final JobBooks books;
    private final Map<String, String> parents;
    private final Map<String, List<Movement>> ofReel = new HashMap<>();
    private final List<Took> all = new ArrayList<>();

    RopeTaken(JobBooks books) {
        this.books = books;
        parents = Standing.parents(books.standing());
        books.standing().stream()
                .filter(movement -> !movement.entry().kind().isOfPieceAlone())
                .forEach(movement -> ofReel.computeIfAbsent(movement.entry().reel(), reel -> new ArrayList<>())
                        .add(movement));
        draws().forEach(this::share);
        credit();
    }

    /**
     * One cut.
     *
     * @param cut the movement
     * @param rope id of the rope
     * @param length the piece and its cut loss, less what of it came back to the rack
     * @param scrap its part of the scrap
     * @param cost its part of what the draw cost
     * @param price what a metre is counted at
     */
    record Took(Movement cut, String rope, Length length, Length scrap, Cost cost, RopePrice price) {
        String piece() {
            return cut.entry().origin().piece();
        }

        /** What bringing the rope cost that it took, its part of the scrap included; nothing where that is not booked. */
        Cost freight() {
            UnitPrice freight = price.freight();
            return freight == null ? Cost.ZERO : freight.of(drawn());
        }

        Length drawn() {
            return length.plus(scrap);
        }

        Took less(Length back, Cost worth) {
            return new Took(cut, rope, length.minus(back), scrap, cost.minus(worth), price);
        }
    }

    /** Every cut, oldest draw first. */
    List<Took> all() {
        return List.copyOf(all);
    }

    private List<List<Movement>> draws() {
        Map<List<String>, List<Movement>> draws = new LinkedHashMap<>();
        for (Movement movement : books.standing()) {
            boolean takes =
                    CUTS.contains(movement.entry().kind()) || movement.entry().kind() == Kind.SCRAPPED;
            String plan = movement.entry().origin().plan();
            if (takes) {
                draws.computeIfAbsent(
                                List.of(movement.entry().reel(), plan, plan.isEmpty() ? "" + movement.number() : ""),
                                key -> new ArrayList<>())
                        .add(movement);
            }
        }
        return List.copyOf(draws.values());
    }

    private void share(List<Movement> draw) {
        List<Movement> cuts = draw.stream()
                .filter(movement -> CUTS.contains(movement.entry().kind()))
                .toList();
        long taken = cuts.stream().mapToLong(RopeTaken::mm).sum();
        if (taken == 0) {
            return;
        }
        Movement first = draw.get(0);
        String rope = first.entry().after().rope();
        RopePrice price = price(first.entry().reel(), rope);
        long scrap = draw.stream()
                .filter(movement -> movement.entry().kind() == Kind.SCRAPPED)
                .mapToLong(RopeTaken::mm)
                .sum();
        Cost cost = cost(draw, rope, price, taken + scrap);
        for (Movement cut : cuts) {
            all.add(new Took(
                    cut,
                    rope,
                    new Length(mm(cut)),
                    new Length(part(scrap, mm(cut), taken)),
                    new Cost(part(cost.millis(), mm(cut), taken)),
                    price));
        }
    }

    private Cost cost(List<Movement> draw, String rope, RopePrice price, long drawn) {
        JobBooks.OfRope known = books.rates().ropes().get(rope);
        boolean full = wasFull(draw.get(0));
        Cost handling = full
                ? books.rates().opening().plus(books.rates().fetching())
                : books.rates().fetching();
        if (known == null || known.list().millisPerMetre() == 0) {
            return price.price().of(new Length(drawn)).plus(handling);
        }
        StockValue value = known.value();
        Movement first = draw.get(0);
        Length before = first.entry().left().plus(new Length(mm(first)));
        Length left = draw.get(draw.size() - 1).entry().left();
        Cost was = full ? value.unopened(before) : value.of(before);
        Cost gone = was.minus(value.of(left)).minus(kept(draw, value));
        return new Cost(part(
                        gone.millis(),
                        price.price().millisPerMetre(),
                        known.list().millisPerMetre()))
                .plus(handling);
    }

    /** What coils are worth that the plan put aside off this reel. */
    private Cost kept(List<Movement> draw, StockValue value) {
        String plan = draw.get(0).entry().origin().plan();
        String reel = draw.get(0).entry().reel();
        return plan.isEmpty()
                ? Cost.ZERO
                : books.standing().stream()
                        .filter(movement -> movement.entry().kind() == Kind.KEPT
                                && movement.entry().origin().plan().equals(plan)
                                && movement.entry().origin().parent().equals(reel)
                                && !isBack(movement))
                        .map(movement -> value.of(movement.entry().left()))
                        .reduce(Cost.ZERO, Cost::plus);
    }

    /** Whether a coil is of a spoiled piece: then a movement of its event says so. */
    private boolean isBack(Movement coil) {
        return books.standing().stream()
                .anyMatch(movement ->
                        movement.event() == coil.event() && movement.entry().kind() == Kind.SPOILED);
    }

    /** A reel is full until the first movement after which it is not. */
    private boolean wasFull(Movement first) {
        List<Movement> history = ofReel.getOrDefault(first.entry().reel(), List.of());
        int place = history.indexOf(first);
        return place > 0 && history.get(place - 1).entry().after().full();
    }

    private RopePrice price(String reel, String rope) {
        String at = reel;
        while (!at.isEmpty()) {
            Paid.OfReel paid = books.rates().reels().get(at);
            if (paid != null) {
                return new RopePrice(
                        paid.byMetre(),
                        RopePrice.Source.PAID,
                        paid.freightByMetre().orElse(null));
            }
            at = parents.getOrDefault(at, "");
        }
        JobBooks.OfRope known = books.rates().ropes().get(rope);
        return known == null ? new RopePrice(new UnitPrice(0), RopePrice.Source.LIST) : known.usual();
    }

    /** Sound rope of spoiled pieces that came back is credited to the last cut of that piece before. */
    private void credit() {
        for (Movement coil : books.standing()) {
            if (coil.entry().kind() == Kind.KEPT && isBack(coil)) {
                books.standing().stream()
                        .filter(movement -> movement.event() == coil.event()
                                && movement.entry().kind() == Kind.SPOILED)
                        .findFirst()
                        .ifPresent(spoiled -> credit(coil, spoiled));
            }
        }
    }

    private void credit(Movement coil, Movement spoiled) {
        String piece = spoiled.entry().origin().piece();
        for (int i = all.size() - 1; i >= 0; i--) {
            Took took = all.get(i);
            if (took.piece().equals(piece) && took.cut().number() < spoiled.number()) {
                Length back = coil.entry().left();
                all.set(i, took.less(back, worth(took, back)));
                return;
            }
        }
    }

    private Cost worth(Took took, Length back) {
        JobBooks.OfRope known = books.rates().ropes().get(took.rope());
        return known == null || known.list().millisPerMetre() == 0
                ? took.price().price().of(back)
                : new Cost(part(
                        known.value().of(back).millis(),
                        took.price().price().millisPerMetre(),
                        known.list().millisPerMetre()));
    }

    private static long mm(Movement movement) {
        return -movement.by().mm();
    }

    private static long part(long whole, long share, long of) {
        return BigInteger.valueOf(whole)
                .multiply(BigInteger.valueOf(share))
                .divide(BigInteger.valueOf(of))
                .longValueExact();
    }
}
