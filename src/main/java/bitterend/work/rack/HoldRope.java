package bitterend.work.rack;

import bitterend.demand.Piece;
import bitterend.exchange.OrderLine;
import bitterend.exchange.Shop;
import bitterend.measure.Length;
import bitterend.packing.Words;
import bitterend.stock.Held;
import bitterend.stock.LedgerException;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import bitterend.work.ShopNow;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Holds rope of a reel for an order or a customer until a day. */
public final class HoldRope {
    private final RackDesk desk;
    private final Shop shop;
    private final Set<String> cut;

    public HoldRope(RackDesk desk, ShopNow now) {
        this.desk = desk;
        shop = now.shop();
        cut = now.rack().map(rack -> rack.cut().keySet()).orElse(Set.of());
    }

    /**
     * What is to be held.
     *
     * @param reel the reel
     * @param length how much of it
     * @param kind for an order or for a customer
     * @param name which
     * @param until the last day
     * @param day today
     */
    public record Request(String reel, Length length, Held.For kind, String name, LocalDate until, LocalDate day) {}

    /** Books it, or says why not. */
    public Booking hold(Request request) {
        return Booking.of(() -> {
            Held held = held(request);
            Booking booking = desk.rack(rack -> rack.holdRope(request.reel(), held, request.day(), desk.note()));
            return booking instanceof Booking.Booked booked
                    ? new Booking.Booked(booked.event(), told(held, reel(request.reel())))
                    : booking;
        });
    }

    private Held held(Request request) {
        if (request.until().isBefore(request.day())) {
            throw new LedgerException.Contradictory(
                    request.until() + " has passed on " + request.day() + "; say a day that is still to come");
        }
        if (!request.length().isPositive()) {
            throw new LedgerException.Contradictory("say how much is held: a length above nothing");
        }
        if (!Held.isName(request.name())) {
            throw new LedgerException.Contradictory("name an order or a customer, without a semicolon");
        }
        Held held = new Held(
                request.length(),
                request.kind(),
                request.name(),
                request.until(),
                desk.note().replace(';', ','));
        if (held.kind() == Held.For.ORDER && lines(held).isEmpty()) {
            throw new LedgerException.Refused("there is no order " + held.name()
                    + " in orders.csv; rope for an order that is still to come is held for its customer");
        }
        return held;
    }

    private Optional<Reel> reel(String id) {
        return shop.reels().stream().filter(reel -> reel.id().equals(id)).findFirst();
    }

    private List<OrderLine> lines(Held held) {
        return shop.orders().stream()
                .filter(line -> held.serves(
                        line.assembly().ordered().source().order(),
                        line.assembly().ordered().customer()))
                .toList();
    }

    /** What a person should know of it: that nobody of the name has an order, or that a piece takes more than is held. */
    private List<String> told(Held held, Optional<Reel> reel) {
        if (lines(held).isEmpty()) {
            return List.of("no order in hand is for customer " + held.name()
                    + "; the rope serves the orders that name the customer exactly so");
        }
        List<String> told = new ArrayList<>();
        List<Piece> open = lines(held).stream()
                .flatMap(line -> line.demanded().pieces().stream())
                .filter(piece -> !cut.contains(piece.id()))
                .filter(piece ->
                        reel.filter(each -> piece.isAllowedOn(each.rope())).isPresent())
                .toList();
        if (open.isEmpty()) {
            told.add("no piece of " + held.whom() + " is still to be cut that may come off this rope");
        }
        open.stream()
                .filter(piece -> piece.cut().isLongerThan(held.length()))
                .findFirst()
                .ifPresent(
                        piece -> told.add(
                                piece.id() + " takes " + Words.of(piece.cut()) + ", more than the "
                                        + Words.of(held.length()) + " held: "
                                        + (piece.finished().roundedDown().isLongerThan(held.length())
                                                ? "they do not serve it; hold what it takes"
                                                : "the rest comes off the same reel as long as it is there; better hold what it takes")));
        return told;
    }
}
