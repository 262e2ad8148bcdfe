package bitterend.stock;

import bitterend.finding.CommandWord;
import bitterend.measure.Length;
import bitterend.measure.Written;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** What people do with reels besides cutting them; every act is a movement of the ledger. */
public final class Rack {
    private final Ledger ledger;
    private final UnaryOperator<Event.Act> caller;

    /**
     * The rack as one person works at it.
     *
     * @param who name of the person
     */
    public Rack(Ledger ledger, String who) {
        this(ledger, act -> act.by(who));
    }

    /**
     * The rack as somebody works at it.
     *
     * @param caller puts into an act who does it, and under which id
     */
    public Rack(Ledger ledger, UnaryOperator<Event.Act> caller) {
        this.ledger = ledger;
        this.caller = caller;
    }

    /** A reel that came in; its id must be new, or that of a reel that never came: everything of it was taken back. */
    public Event receive(Reel reel, String note) {
        return receive(reel, Promised.NOTHING, note);
    }

    /** The same of a reel that may have been on order. */
    public Event receive(Reel reel, Promised promised, String note) {
        return receive(List.of(new CameIn(reel, promised, Paid.NOT_SAID)), note);
    }

    /** The same of several reels at once. */
    public Event receive(List<CameIn> reels, String note) {
        return book(Event.Kind.RECEIVED, note, books -> CameIn.book(reels, books, note));
    }

    /** A new figure for the length of a reel; the note of the movement says which flaws ended with it. */
    public Event count(String reel, Written length, Length uncertainty, Reel.Known known, String note) {
        return count(List.of(Counted.of(reel, length, uncertainty, known)), note);
    }

    /** The same of several reels at once; one that was not found is on hold until it is. */
    public Event count(List<Counted> counted, String note) {
        counted.forEach(Counted::refuseUnlessCertain);
        return book(
                Event.Kind.COUNTED,
                note,
                books -> counted.forEach(each -> books.append(each.entry(standing(books, each.reel()), note))));
    }

    public Event hold(String reel, String note) {
        return change(
                Event.Kind.HELD,
                Kind.ON_HOLD,
                reel,
                note,
                old -> old.withCustody(old.custody().onHold()));
    }

    /**
     * Ends a hold; of a reel that is not on hold, its reservation; of one that is neither, what is held of it for one alone. A
     * customer's own rope serves its order alone.
     */
    public Event release(String reel, String note) {
        return book(Event.Kind.RELEASED, note, books -> {
            Reel old = standing(books, reel).reel();
            Reel.Custody custody = old.custody();
            boolean whole =
                    custody.isOnHold() || custody.isReserved() || custody.held().isEmpty();
            books.append(
                    whole
                            ? new Entry(Kind.RELEASED, old.withCustody(custody.released()), note)
                            : HeldRope.released(old, "", note));
        });
    }

    /** Keeps a reel for one order; a hold stays. */
    public Event reserve(String reel, String order, String note) {
        return change(Event.Kind.RESERVED, Kind.RESERVED, reel, note, old -> {
            if (order.isEmpty()) {
                throw new LedgerException.Refused("say which order " + reel + " is kept for");
            }
            if (old.custody().isCustomersOwn()) {
                throw new LedgerException.Refused(reel + " is " + old.custody().owner() + "'s own rope, for order "
                        + old.custody().order());
            }
            return old.withCustody(old.custody().reservedFor(order));
        });
    }

    /**
     * Keeps some of a reel for an order or a customer until a day; what was held for the same before gives way to it.
     *
     * @param day today: what is held no longer takes no room
     */
    public Event holdRope(String reel, Held held, LocalDate day, String note) {
        return change(
                Event.Kind.RESERVED,
                Kind.RESERVED,
                reel,
                HeldRope.said(held, "held", note),
                old -> HeldRope.with(old, held, day));
    }

    /**
     * Ends what is held of a reel.
     *
     * @param name the order or customer that it is held for
     */
    public Event releaseRope(String reel, String name, String note) {
        return book(
                Event.Kind.RELEASED,
                note,
                books -> books.append(HeldRope.released(standing(books, reel).reel(), name, note)));
    }

    public Event move(String reel, String place, String note) {
        return change(
                Event.Kind.MOVED,
                Kind.MOVED,
                reel,
                note,
                old -> old.withWhere(old.where().at(place)));
    }

    /** Wound over: the inner end is the working end now. */
    public Event rewind(String reel, String note) {
        return change(Event.Kind.REWOUND, Kind.REWOUND, reel, note, RopeWork::rewound);
    }

    /** Flaws that were found; they must lie on the reel. One that overlaps a known flaw becomes one with it. */
    public Event addFlaws(String reel, List<Flaw> found, String note) {
        return change(Event.Kind.FLAW_FOUND, Kind.FLAW_FOUND, reel, note, old -> {
            if (found.stream().anyMatch(flaw -> flaw.to().isLongerThan(old.length()))) {
                throw new LedgerException.Refused("the flaw lies behind the end of reel " + reel);
            }
            List<Flaw> flaws = new ArrayList<>(old.flaws());
            flaws.addAll(found);
            return old.withFlaws(Flaw.merged(flaws));
        });
    }

    /** What was written down wrongly of a reel is put right. */
    public Event correct(Correction correction) {
        return book(Event.Kind.CORRECTED, correction.why(), correction::book);
    }

    /** Some rope off the working end onto a reel or coil of its own. */
    public Event split(String reel, Written typed, String newId, String note) {
        Length length = typed.roundedDown();
        return book(Event.Kind.SPLIT, note, books -> {
            Reel old = standing(books, reel).reel();
            if (!length.isPositive() || !length.isShorterThan(old.length())) {
                throw new LedgerException.Refused("only a part of reel " + reel + " can be split off");
            }
            refuseKnown(books, newId);
            books.append(new Entry(Kind.SPLIT, RopeWork.takenOff(old, length).orElseThrow(), note));
            books.append(new Entry(Kind.SPLIT, RopeWork.front(old, newId, typed), false, note, Origin.off(reel, "")));
        });
    }

    /**
     * A reel that goes to another loft of the shop; of one on the same server it is on the way until it comes in there.
     *
     * @param loft its name on the server, or any words
     */
    public Event send(String reel, String loft, String note) {
        return book(Event.Kind.SENT, note, books -> {
            Reel leaving = standing(books, reel).reel();
            books.append(new Entry(Kind.SENT, leaving, true, note, Origin.NONE));
            Transfers.send(books, ledger.neighbours(), loft);
        });
    }

    /** Rope that leaves the shop or is written off: returned or condemned. */
    public Event remove(Kind kind, String reel, String note) {
        if (kind != Kind.RETURNED && kind != Kind.CONDEMNED) {
            throw new IllegalArgumentException(kind + " removes no rope");
        }
        return book(Event.Kind.valueOf(kind.name()), note, books -> {
            Reel leaving = standing(books, reel).reel();
            books.append(new Entry(kind, leaving, true, note, Origin.NONE));
        });
    }

    /**
     * A reel sold as it is.
     *
     * @param day rope that was to be used before it is refused: whoever buys it cannot know
     * @param today rope of it that is held today is refused
     */
    public Event sell(String reel, String note, LocalDate day, LocalDate today) {
        return book(Event.Kind.SOLD, note, books -> {
            Reel leaving = standing(books, reel).reel();
            refuseUnlessForSale(leaving);
            leaving.custody().heldOn(today).stream().findFirst().ifPresent(held -> {
                throw new LedgerException.Refused(
                        "of reel " + reel + " " + HeldRope.said(held, "is held", "") + ": stock release it first");
            });
            pastItsLastDay(leaving, day).ifPresent(why -> {
                throw new LedgerException.Refused(why);
            });
            books.append(new Entry(Kind.SOLD, leaving, true, note, Origin.NONE));
        });
    }

    /** Why rope is not sold on a day without a word; nothing when it is in date. */
    public static Optional<String> pastItsLastDay(Reel reel, LocalDate day) {
        return day.isAfter(reel.papers().useBy())
                ? Optional.of("reel " + reel.id() + " was to be used by "
                        + reel.papers().useBy()
                        + "; the buyer must know. If it is sold all the same, say it with --sure")
                : Optional.empty();
    }

    /** Rope that is a customer's own, or kept for an order, is not sold to another. */
    public static void refuseUnlessForSale(Reel reel) {
        reel.custody().notForSale().ifPresent(why -> {
            throw new LedgerException.Refused("reel " + reel.id() + " is " + why);
        });
    }

    private Event change(Event.Kind act, Kind kind, String reel, String note, UnaryOperator<Reel> change) {
        return book(
                act,
                note,
                books -> books.append(
                        new Entry(kind, change.apply(standing(books, reel).reel()), note)));
    }

    private Event book(Event.Kind kind, String note, Consumer<Ledger.Books> work) {
        return ledger.change(caller.apply(Event.Act.of(kind, "", note)), work).orElseThrow();
    }

    /** Whether an id is that of a reel that is there or was; not where everything of it was taken back. */
    public static boolean isKnown(Ledger.Stock stock, String id) {
        return !Standing.movements(stock.history(id)).isEmpty();
    }

    /** Why an id cannot be given to another reel; nothing for one that can. */
    public static Optional<String> taken(Ledger.Stock stock, String id) {
        return isKnown(stock, id)
                ? Optional.of("there is a reel " + id + " already; give this one a new id")
                : Optional.empty();
    }

    static void refuseKnown(Ledger.Stock stock, String id) {
        Optional<String> taken = taken(stock, id);
        if (taken.isPresent()) {
            throw new LedgerException.Refused(taken.get());
        }
    }

    /** A reel that is on the rack. */
    static Holding standing(Ledger.Stock stock, String reel) {
        Holding holding = known(stock, reel);
        if (holding.gone()) {
            throw new LedgerException.Refused(
                    "nothing is left of reel " + reel + "; see bitterend stock history SHOP " + CommandWord.of(reel));
        }
        return holding;
    }

    /** A reel that is on the rack or was. */
    static Holding known(Ledger.Stock stock, String reel) {
        return stock.findHolding(reel)
                .orElseThrow(() ->
                        new LedgerException.Refused("there is no reel " + reel + "; see bitterend stock list SHOP"));
    }
}
