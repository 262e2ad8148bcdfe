package bitterend.stock;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Reels that go from one loft to another of the same server: sent by an event of the one, come in by an event of the other
 * that names the first by its link of the chain. In between they are on the way.
 */
public final class Transfers {
    /** A fact of what was sent: the name of the loft. */
    static final String TO = "sent to";

    /** Facts of what came in: by which loft it was sent, by which event there, and the link of that. */
    private static final String FROM = "sent by";

    private static final String EVENT = "sent by event";
    private static final String LINK = "sent by link";

    private final Ledger ledger;
    private final UnaryOperator<Event.Act> caller;

    /** @param caller puts into an act who does it, and under which id */
    public Transfers(Ledger ledger, UnaryOperator<Event.Act> caller) {
        this.ledger = ledger;
        this.caller = caller;
    }

    /**
     * A reel that was sent and has not come in.
     *
     * @param from the loft that sent it
     * @param to the loft that it is for
     * @param event number of the event by which it was sent
     * @param reel as it was sent
     */
    public record OnTheWay(String from, String to, long event, String link, Reel reel) {
        private static OnTheWay of(String from, Event sent) {
            return new OnTheWay(
                    from,
                    sent.fact(TO),
                    sent.number(),
                    sent.hash(),
                    sent.movements().get(0).entry().after());
        }
    }

    /** Writes into the event of a reel that leaves to which loft of the server it goes; nothing where the name is of none. */
    static void send(Ledger.Books books, Neighbours lofts, String loft) {
        if (loft.equals(lofts.own())) {
            throw new LedgerException.Refused("loft " + loft + " is this one; to another place in it: stock move");
        }
        if (lofts.names().contains(loft)) {
            books.fact(TO, loft);
        }
    }

    /**
     * A reel that came in from another loft, as it was sent; what was kept for orders there is free, and a customer's own rope
     * stays that.
     *
     * @param id the id that it was sent under
     * @param newId its id here, new
     * @param check handed the reel as it was sent; when it throws, nothing is booked
     */
    public Event arrive(String id, String newId, String note, Consumer<Reel> check) {
        Event.Act act = caller.apply(Event.Act.of(Event.Kind.RECEIVED, "", note));
        return ledger.changeAmong(act, books -> {
                    OnTheWay sent = coming(books, id);
                    check.accept(sent.reel());
                    Rack.refuseKnown(books, newId);
                    books.append(new Movement.Entry(Movement.Kind.RECEIVED, here(sent.reel(), newId), note));
                    books.fact(FROM, sent.from());
                    books.fact(EVENT, "" + sent.event());
                    books.fact(LINK, sent.link());
                })
                .orElseThrow();
    }

    private OnTheWay coming(Ledger.Stock stock, String id) {
        List<OnTheWay> all = incoming(stock, ledger.neighbours()).stream()
                .filter(each -> each.reel().id().equals(id))
                .toList();
        if (all.size() != 1) {
            throw new LedgerException.Refused(
                    all.isEmpty()
                            ? "no reel " + id + " is on the way to this loft; what is: bitterend stock arrive SHOP"
                            : "reels " + id + " are on the way from " + all.size() + " lofts; receive one of them under"
                                    + " stock receive, or let one loft take back and send it anew");
        }
        return all.get(0);
    }

    private static Reel here(Reel sent, String id) {
        Reel.Custody custody = sent.custody();
        Reel.Custody free = custody.isOnHold() ? Reel.Custody.FREE.onHold() : Reel.Custody.FREE;
        return new Reel(
                id,
                sent.rope(),
                sent.lot(),
                sent.contents(),
                sent.flaws(),
                sent.papers(),
                custody.isCustomersOwn() ? custody : free,
                sent.full(),
                sent.where().at(""));
    }

    /** What is on the way to the loft of a ledger and from it. */
    public static List<OnTheWay> onTheWay(Ledger ledger) {
        return ledger.read(stock -> {
            Neighbours lofts = ledger.neighbours();
            List<String> names = lofts.names();
            if (names.isEmpty()) {
                return List.of();
            }
            List<OnTheWay> all = new ArrayList<>(incoming(stock, lofts));
            Function<String, Set<String>> came = each(lofts, Event.Kind.RECEIVED, event -> event.fact(LINK));
            for (Event sent : stock.standing(Event.Kind.SENT)) {
                String loft = sent.fact(TO);
                if (names.contains(loft) && !came.apply(loft).contains(sent.hash())) {
                    all.add(OnTheWay.of(lofts.own(), sent));
                }
            }
            return List.copyOf(all);
        });
    }

    private static List<OnTheWay> incoming(Ledger.Stock stock, Neighbours lofts) {
        Set<String> came = links(stock, Event.Kind.RECEIVED, event -> event.fact(LINK));
        List<OnTheWay> coming = new ArrayList<>();
        for (String loft : lofts.names()) {
            lofts.read(loft, other -> other.standing(Event.Kind.SENT)).stream()
                    .filter(sent -> sent.fact(TO).equals(lofts.own()) && !came.contains(sent.hash()))
                    .forEach(sent -> coming.add(OnTheWay.of(loft, sent)));
        }
        return coming;
    }

    /** The links that events of a kind have in another loft, by its name; its events are read once, when first asked for. */
    private static Function<String, Set<String>> each(Neighbours lofts, Event.Kind kind, Function<Event, String> link) {
        Map<String, Set<String>> read = new HashMap<>();
        return loft -> read.computeIfAbsent(loft, name -> lofts.read(name, other -> links(other, kind, link)));
    }

    private static Set<String> links(Ledger.Stock stock, Event.Kind kind, Function<Event, String> link) {
        return stock.standing(kind).stream().map(link).collect(Collectors.toSet());
    }

    /** The event by which something that was sent came in at its loft. */
    private static Optional<Event> arrival(Neighbours lofts, Event sent) {
        return lofts.read(sent.fact(TO), other -> other.standing(Event.Kind.RECEIVED)).stream()
                .filter(event -> event.fact(LINK).equals(sent.hash()))
                .findFirst();
    }

    /** Refuses to take back what was sent while it stands in the other loft, or nobody can see whether it does. */
    static void refuseArrived(Neighbours lofts, Event sent) {
        String loft = sent.fact(TO);
        if (loft.isEmpty()) {
            return;
        }
        if (!lofts.names().contains(loft)) {
            throw new LedgerException.Refused("it was sent to loft " + loft
                    + ", which is not on the server of this ledger now: nobody can see whether it came in there");
        }
        arrival(lofts, sent).ifPresent(event -> {
            throw new LedgerException.Refused("it came in at loft " + loft + " with event " + event.number()
                    + " there: that is taken back first");
        });
    }

    /** What came in and was never sent, or is no longer, each in a sentence; of lofts that are on the server. */
    public static List<String> faults(Ledger ledger) {
        return ledger.read(stock -> {
            Neighbours lofts = ledger.neighbours();
            List<String> names = lofts.names();
            Function<String, Set<String>> sent = each(lofts, Event.Kind.SENT, Event::hash);
            List<String> faults = new ArrayList<>();
            for (Event came : stock.standing(Event.Kind.RECEIVED)) {
                String loft = came.fact(FROM);
                if (names.contains(loft) && !sent.apply(loft).contains(came.fact(LINK))) {
                    faults.add("event " + came.number() + " (received) says that loft " + loft
                            + " sent it with its event " + came.fact(EVENT)
                            + ", which is not so there: an older copy was put back, or it was changed");
                }
            }
            return List.copyOf(faults);
        });
    }
}
