package bitterend.stock;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.stock.Movement.Kind;
import java.math.BigInteger;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A reel of an order of reels that came, against what was ordered.
 *
 * @param event number of the event that booked it
 * @param day the day it came
 * @param reel its id
 * @param rope id of its rope
 * @param promised what was ordered
 * @param labelled what its label or the meter said
 * @param paid what was paid for it, without freight: as it was put right, else as was said when it came, else the price of its order
 * @param found its length by the first count before anything was cut; {@code labelled} where nobody counted it
 */
public record Delivery(
        long event,
        LocalDate day,
        String reel,
        String rope,
        Promised promised,
        Money paid,
        Length labelled,
        Length found) {
    /** How much shorter it is than was ordered; nothing where it is not. */
    public Length shortBy() {
        return Length.max(Length.ZERO, promised.length().minus(found));
    }

    /** How much shorter it is than the supplier may send it; nothing where it is not. */
    public Length beyond() {
        return Length.max(Length.ZERO, shortBy().minus(promised.allowed()));
    }

    /** What so much of it was paid for: its share of what the reel was paid for, rounded down to 1/1000 of the smallest coin. */
    public Cost paidFor(Length length) {
        return new Cost(BigInteger.valueOf(paid.fine().millis())
                .multiply(BigInteger.valueOf(length.mm()))
                .divide(BigInteger.valueOf(promised.length().mm()))
                .longValueExact());
    }

    /** How many days after the day it was expected it came; none where it came in time. */
    public long daysLate() {
        return Math.max(0, ChronoUnit.DAYS.between(promised.expected(), day));
    }

    /** Every reel that came of an order whose terms its event keeps, and was not taken back; in the order of the ledger. */
    public static List<Delivery> of(Ledger.Stock stock) {
        Map<String, List<Movement>> histories = histories(stock);
        List<Event> standing = Standing.events(stock.events());
        return of(standing, histories, Paid.said(standing, histories));
    }

    /**
     * The same of what was read already.
     *
     * @param standing events that were not taken back
     * @param histories movements that were not taken back, by reel
     * @param said what events said of reels, by id
     */
    static List<Delivery> of(List<Event> standing, Map<String, List<Movement>> histories, Map<String, Paid> said) {
        List<Delivery> all = new ArrayList<>();
        List<Event> received = standing.stream()
                .filter(event -> event.act().kind() == Event.Kind.RECEIVED)
                .toList();
        for (Event event : received) {
            for (String order : event.named(Event.ON_ORDER)) {
                Promised.of(event, order).ifPresent(promised -> CameIn.reels(event, order)
                        .forEach(reel -> of(event, promised, histories.getOrDefault(reel, List.of()), said)
                                .ifPresent(all::add)));
            }
        }
        return all;
    }

    /** Movements that were not taken back, by reel. */
    static Map<String, List<Movement>> histories(Ledger.Stock stock) {
        Map<String, List<Movement>> histories = new HashMap<>();
        Standing.movements(stock.movements()).forEach(movement -> histories
                .computeIfAbsent(movement.entry().reel(), reel -> new ArrayList<>())
                .add(movement));
        return histories;
    }

    private static Optional<Delivery> of(
            Event event, Promised promised, List<Movement> history, Map<String, Paid> said) {
        return history.stream()
                .filter(movement -> movement.event() == event.number())
                .findFirst()
                .map(movement -> movement.entry().after())
                .map(came -> new Delivery(
                        event.number(),
                        came.papers().received(),
                        came.id(),
                        came.rope(),
                        promised,
                        said.getOrDefault(came.id(), Paid.NOT_SAID).priceOr(promised.price()),
                        came.length(),
                        found(history)));
    }

    /** The length of a reel by its first count before anything was cut from it; what it came with where nobody counted it. */
    static Length found(List<Movement> history) {
        for (Movement movement : history.subList(1, history.size())) {
            Kind kind = movement.entry().kind();
            if (kind == Kind.COUNTED) {
                return movement.entry().after().length();
            }
            if (!kind.leavesOneReel()) {
                break;
            }
        }
        return history.get(0).entry().after().length();
    }
}
