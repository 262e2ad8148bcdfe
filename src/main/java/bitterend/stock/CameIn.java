package bitterend.stock;

import bitterend.measure.Money;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A reel that came in.
 *
 * @param promised what was ordered, where it is of an order of reels
 * @param paid what was said of its price when it came
 */
public record CameIn(Reel reel, Promised promised, Paid paid) {
    /** Parts the reels of one order in the fact of an event: no id has it in it. */
    private static final String BETWEEN = "; ";

    /** The number of the order of reels that it is of; empty for none. */
    public String order() {
        return promised.order();
    }

    /** What was paid for it: as was said, else the price of its order; nothing where nobody knows. */
    public Optional<Money> price() {
        return Optional.ofNullable(paid.price())
                .or(() -> Optional.of(promised.price()).filter(price -> price.minor() > 0));
    }

    /** The same with its share of what bringing it cost. */
    CameIn bringing(Money share) {
        return new CameIn(reel, promised, paid.with(share));
    }

    /** The reels of an order that came with an event, in the order in which they were booked. */
    public static List<String> reels(Event event, String order) {
        return List.of(event.fact(Event.ON_ORDER + " " + order).split(BETWEEN));
    }

    /** Books reels that came in together; there must be some. */
    static void book(List<CameIn> all, Ledger.Books books, String note) {
        if (all.isEmpty()) {
            throw new LedgerException.Refused("nothing is to be booked: every reel is set apart to be looked at again");
        }
        SortedMap<String, String> orders = new TreeMap<>();
        for (CameIn each : all) {
            Rack.refuseKnown(books, each.reel.id());
            books.append(new Movement.Entry(Movement.Kind.RECEIVED, each.reel, note));
            each.paid.facts(each.reel.id()).forEach(books::fact);
            if (!each.order().isEmpty()) {
                orders.merge(each.order(), each.reel.id(), (some, one) -> some + BETWEEN + one);
                each.promised.facts().forEach(books::fact);
            }
        }
        orders.forEach((order, reels) -> books.fact(Event.ON_ORDER + " " + order, reels));
    }
}
