package bitterend.exchange;

import bitterend.catalogue.Catalogue;
import bitterend.demand.Piece;
import bitterend.finding.Finding;
import bitterend.market.Market;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.packing.Pin;
import bitterend.quoting.Recipient;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A shop folder, read without errors. Every list is sorted by id, so that the order of rows in the files does not matter.
 *
 * @param settings units, currency, prices
 * @param catalogue ropes and how ends are made
 * @param orders what is ordered, with the pieces it asks for
 * @param reels what is on the rack
 * @param pins draws that must stay
 * @param supplies offers, rope on order, past orders, learned values
 * @param customers whom the shop writes to, by name
 * @param digests SHA-256 of every file read, by file name
 * @param leftOut why order lines were left out; empty when all of them can be made
 */
public record Shop(
        Settings settings,
        Catalogue catalogue,
        List<OrderLine> orders,
        List<Reel> reels,
        List<Pin> pins,
        Supplies supplies,
        Map<String, Recipient> customers,
        Map<String, String> digests,
        List<Finding> leftOut) {

    public Shop {
        orders = List.copyOf(orders);
        reels = List.copyOf(reels);
        pins = List.copyOf(pins);
        leftOut = List.copyOf(leftOut);
        customers = Map.copyOf(customers);
        digests = Collections.unmodifiableMap(new TreeMap<>(digests));
    }

    /** The day {@code shop.json} names, if it names one. */
    public Optional<LocalDate> day() {
        return settings.day().equals(LocalDate.MIN) ? Optional.empty() : Optional.of(settings.day());
    }

    /** Every piece to cut, by order, line and number. */
    public List<Piece> pieces() {
        return orders.stream()
                .flatMap(line -> line.demanded().pieces().stream())
                .toList();
    }

    /** The finished length of every line of the order book and of past orders. */
    public List<Length> orderedLengths() {
        Stream<Length> ordered =
                orders.stream().map(line -> line.assembly().make().finished().roundedUp());
        Map<String, Length> past = new TreeMap<>();
        supplies.history()
                .piecesByWeek()
                .forEach(week -> week.forEach(piece -> past.put(
                        piece.source().order() + "/" + piece.source().line(),
                        piece.finished().roundedUp())));
        return Stream.concat(ordered, past.values().stream()).toList();
    }

    /** What can be had on a day. */
    public Market market(LocalDate day) {
        Map<String, LinearMass> masses = new TreeMap<>();
        catalogue.ropes().forEach(rope -> masses.put(rope.id(), rope.mass()));
        return new Market(day, supplies.offers(), supplies.suppliers(), masses);
    }

    /** What is on each reel. */
    public List<Length> reelLengths() {
        return reels.stream().map(Reel::length).toList();
    }

    /** The parts of an order line, the main one first; none when there is no such line. */
    public List<OrderLine> orderLines(String order, String line) {
        return orders.stream()
                .filter(each -> each.assembly().ordered().source().order().equals(order)
                        && each.assembly().ordered().source().line().equals(line))
                .toList();
    }
}
