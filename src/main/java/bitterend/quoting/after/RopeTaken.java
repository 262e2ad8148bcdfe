package bitterend.quoting.after;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Moments;
import bitterend.measure.UnitPrice;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Paid;
import bitterend.stock.Standing;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What each cut of a job took: its rope, its part of the scrap, and its part of what cutting cost by the rule of a quote, which
 * is the value that left the rack on that day with the opening and the fetching of the reel. A draw is all that one plan cut off
 * one reel, or what was cut of the job off plan off one reel on one day, one cut behind the other; it falls to its cuts by what
 * they took. Until the last piece of a planned draw is cut, the draw counts as it is planned, so that what a piece took is the
 * same before the others are cut and after.
 */
final class RopeTaken {
    private static final Set<Kind> CUTS = EnumSet.of(Kind.CUT, Kind.CUT_SHORT, Kind.CUT_SPARE);

    private final JobBooks books;
    private final Map<String, String> parents;
    private final Map<String, List<Movement>> ofReel = new HashMap<>();
    private final List<Took> all = new ArrayList<>();
    /** The movement of the same reel before it, by number. */
    private final Map<Long, Movement> before = new HashMap<>();

    /** @param lineOf of which line of the quote each line of an order is: draws without a piece of these are left out */
    RopeTaken(JobBooks books, Map<String, String> lineOf) {
        this.books = books;
        parents = Standing.parents(books.standing());
        books.standing().stream()
                .filter(movement -> !movement.entry().kind().isOfPieceAlone())
                .forEach(this::follow);
        draws(lineOf).stream()
                .filter(draw -> draw.stream().anyMatch(movement -> isOf(movement, lineOf)))
                .forEach(this::share);
        credit();
    }

    private void follow(Movement movement) {
        List<Movement> history = ofReel.computeIfAbsent(movement.entry().reel(), reel -> new ArrayList<>());
        if (!history.isEmpty()) {
            before.put(movement.number(), history.get(history.size() - 1));
        }
        history.add(movement);
    }

    private static boolean isOf(Movement movement, Map<String, String> lineOf) {
        return !PieceLine.of(movement.entry().origin().piece(), lineOf).isEmpty();
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
     * @param asPlanned whether its draw is not cut whole yet and counts as it is planned
     */
    record Took(Movement cut, String rope, Length length, Length scrap, Cost cost, RopePrice price, boolean asPlanned) {
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
            return new Took(cut, rope, length.minus(back), scrap, cost.minus(worth), price, asPlanned);
        }
    }

    /** Every cut, oldest draw first. */
    List<Took> all() {
        return List.copyOf(all);
    }

    private List<List<Movement>> draws(Map<String, String> lineOf) {
        Map<List<String>, List<Movement>> draws = new LinkedHashMap<>();
        Map<Long, String> rows = new HashMap<>();
        for (Movement movement : books.standing()) {
            String plan = movement.entry().origin().plan();
            if (takes(movement)) {
                String row = plan.isEmpty() ? row(movement, lineOf, rows) : "";
                draws.computeIfAbsent(List.of(movement.entry().reel(), plan, row), key -> new ArrayList<>())
                        .add(movement);
            }
        }
        return List.copyOf(draws.values());
    }

    /** The name of the row of cuts off plan that a movement goes on with, or that it begins. */
    private String row(Movement movement, Map<String, String> lineOf, Map<Long, String> rows) {
        Movement previous = before.get(movement.number());
        String row = previous != null
                        && Moments.day(previous.at()).equals(Moments.day(movement.at()))
                        && isOffPlan(previous, lineOf)
                        && isOffPlan(movement, lineOf)
                ? rows.getOrDefault(previous.number(), "")
                : "" + movement.number();
        rows.put(movement.number(), row);
        return row;
    }

    private static boolean isOffPlan(Movement movement, Map<String, String> lineOf) {
        Movement.Entry entry = movement.entry();
        return CUTS.contains(entry.kind()) && entry.origin().plan().isEmpty() && isOf(movement, lineOf);
    }

    private static boolean takes(Movement movement) {
        Kind kind = movement.entry().kind();
        return CUTS.contains(kind)
                || kind == Kind.SCRAPPED
                || (kind == Kind.KEPT && movement.by().isNegative());
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
        Optional<ThatDay.PlannedDraw> planned = asPlanned(draw);
        ThatDay.Draw whole = planned.map(ThatDay.PlannedDraw::draw).orElseGet(() -> asCut(draw));
        long of = planned.map(plan -> plan.taken().mm()).orElse(taken);
        Cost cost = cost(first, whole, price, of);
        for (Movement cut : cuts) {
            all.add(new Took(
                    cut,
                    rope,
                    new Length(mm(cut)),
                    new Length(part(whole.scrap().mm(), mm(cut), of)),
                    new Cost(part(cost.millis(), mm(cut), of)),
                    price,
                    planned.isPresent()));
        }
    }

    /** What the plan has of the draw, while its last piece is not cut and rope is on the reel. */
    private Optional<ThatDay.PlannedDraw> asPlanned(List<Movement> draw) {
        Movement.Entry entry = draw.get(draw.size() - 1).entry();
        String plan = entry.origin().plan();
        return plan.isEmpty() || entry.gone()
                ? Optional.empty()
                : books.then().planned(plan, entry.reel()).filter(planned -> !isCut(draw, planned.last()));
    }

    private static boolean isCut(List<Movement> draw, String piece) {
        return draw.stream().map(movement -> movement.entry().origin()).anyMatch(origin -> origin.step()
                .equals(Movement.Origin.ofCut(origin.plan(), piece).step()));
    }

    /** What became of the reel; what others took off it in between is none of this draw. */
    private ThatDay.Draw asCut(List<Movement> draw) {
        Movement first = draw.get(0);
        Movement last = draw.get(draw.size() - 1);
        long others = ofReel.getOrDefault(first.entry().reel(), List.of()).stream()
                .filter(movement -> movement.number() > first.number() && movement.number() < last.number())
                .filter(movement -> takes(movement) && !draw.contains(movement))
                .mapToLong(RopeTaken::mm)
                .sum();
        long scrap = draw.stream()
                .filter(movement -> movement.entry().kind() == Kind.SCRAPPED)
                .mapToLong(RopeTaken::mm)
                .sum();
        return new ThatDay.Draw(
                wasFull(first),
                first.entry().left().plus(new Length(mm(first))),
                new Length(scrap),
                last.entry().left().plus(new Length(others)),
                kept(draw));
    }

    private Cost cost(Movement first, ThatDay.Draw draw, RopePrice price, long taken) {
        ThatDay.Terms then = books.then().of(first);
        Cost handling = draw.full() ? then.opening().plus(then.fetching()) : then.fetching();
        return (then.list().millisPerMetre() == 0
                        ? price.price().of(new Length(taken + draw.scrap().mm()))
                        : scaled(draw.gone(then.value()), price, then))
                .plus(handling);
    }

    /** Worth goes by the price of the catalogue: of rope at another price it is as much more or less. */
    private static Cost scaled(Cost worth, RopePrice price, ThatDay.Terms then) {
        return new Cost(
                part(worth.millis(), price.price().millisPerMetre(), then.list().millisPerMetre()));
    }

    /** The coils that the plan put aside off this reel. */
    private List<Length> kept(List<Movement> draw) {
        String plan = draw.get(0).entry().origin().plan();
        String reel = draw.get(0).entry().reel();
        return plan.isEmpty()
                ? List.of()
                : books.standing().stream()
                        .filter(movement -> movement.entry().kind() == Kind.KEPT
                                && movement.entry().origin().plan().equals(plan)
                                && movement.entry().origin().parent().equals(reel)
                                && !isBack(movement))
                        .map(movement -> movement.entry().left())
                        .toList();
    }

    /** Whether a coil is of a spoiled piece: then a movement of its event says so. */
    private boolean isBack(Movement coil) {
        return books.standing().stream()
                .anyMatch(movement ->
                        movement.event() == coil.event() && movement.entry().kind() == Kind.SPOILED);
    }

    /** A reel is full until the first movement after which it is not. */
    private boolean wasFull(Movement first) {
        Movement previous = before.get(first.number());
        return previous != null && previous.entry().after().full();
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
        return books.rates().usual().getOrDefault(rope, new RopePrice(new UnitPrice(0), RopePrice.Source.LIST));
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
        ThatDay.Terms then = books.then().of(took.cut());
        return then.list().millisPerMetre() == 0
                ? took.price().price().of(back)
                : scaled(then.value().of(back), took.price(), then);
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
