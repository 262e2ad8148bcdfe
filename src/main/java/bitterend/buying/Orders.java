package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.market.LeftOut;
import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.market.OnOrder;
import bitterend.market.UsualLateness;
import bitterend.measure.UnitPrice;
import bitterend.packing.PackingProblem;
import bitterend.packing.WorkingDays;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Firm demand: what is ordered of us, what is there, what is on its way, and what can be had.
 *
 * @param day the pieces wanted, the reels on the rack, values and prices; its day is the day reels would be ordered
 * @param onOrder reels on their way, each expected on the day from which it is counted on
 * @param offers those of the market that are looked at, of what can be had
 * @param market what suppliers offer on the day, and what an order comes to
 * @param lateness how much later than their suppliers say reels usually come
 */
public record Orders(
        PackingProblem day, List<OnOrder> onOrder, List<Offer> offers, Market market, UsualLateness lateness) {
    public Orders {
        onOrder = List.copyOf(onOrder);
        offers = offers.stream()
                .sorted(Comparator.comparing(Offer::id, NaturalOrder.IDS))
                .toList();
    }

    /** With all that can be had. */
    public Orders(PackingProblem day, List<OnOrder> onOrder, Market market, UsualLateness lateness) {
        this(day, onOrder, market.offered(), market, lateness);
    }

    Offer offer(String id) {
        return offers.stream()
                .filter(offer -> offer.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no offer " + id));
    }

    /** The offers that nobody can order, of ropes that pieces may be cut from. */
    public List<LeftOut> leftOut() {
        Set<String> wanted = day.pieces().stream()
                .filter(piece -> !piece.ownRope())
                .flatMap(piece -> piece.choices().stream())
                .map(Piece.RopeChoice::rope)
                .collect(Collectors.toSet());
        return market.leftOut().stream()
                .filter(each -> wanted.contains(each.offer().rope()))
                .toList();
    }

    /** The same of other pieces, of a rack, of orders and offers that are part of these. */
    Orders part(PackingProblem some, List<OnOrder> coming, List<Offer> offered) {
        return new Orders(some, coming, offered, market, lateness);
    }

    /** The same with fewer offers. */
    Orders offering(List<Offer> offered) {
        return part(day, onOrder, offered);
    }

    /** What a length of a rope is worth on the rack. */
    StockValue worth(String rope) {
        StockValue value = day.values().get(rope);
        if (value == null) {
            throw new IllegalArgumentException("no value for rope " + rope);
        }
        return value;
    }

    /** The same of rope that is there already: no more than the cheapest way to have as much of it again. */
    StockValue replaced(String rope) {
        return offers.stream()
                .filter(offer -> offer.rope().equals(rope))
                .flatMap(offer -> Tier.of(this, offer, Freight.CHARGED).stream())
                .map(Tier::byMetre)
                .min(Comparator.comparing(UnitPrice::millisPerMetre))
                .<StockValue>map(cheapest -> new CappedValue(worth(rope), cheapest))
                .orElseGet(() -> worth(rope));
    }

    /** The same behind new coils. */
    StackedWorth stacked(String rope) {
        return new StackedWorth(worth(rope));
    }

    /** The day from which a reel that is ordered now is counted on. */
    LocalDate countedOn(Offer offer) {
        return countedOn(offer, day.day());
    }

    /** What orders of the offer were later in the past counts as well as what reels usually are. */
    private LocalDate countedOn(Offer offer, LocalDate ordered) {
        LocalDate usual = lateness.usual(offer.supplier(), offer.arrives(ordered));
        LocalDate spread = new WorkingDays(day.calendar()).firstFrom(offer.countedOn(ordered));
        return usual.isAfter(spread) ? usual : spread;
    }

    /** The last working day on which a reel may be ordered to be counted on by a day. */
    LocalDate orderBy(Offer offer, LocalDate cutBy) {
        WorkingDays working = new WorkingDays(day.calendar());
        LocalDate order = working.lastUpTo(cutBy);
        while (countedOn(offer, order).isAfter(cutBy)) {
            order = working.before(order, 1);
        }
        return order;
    }
}
