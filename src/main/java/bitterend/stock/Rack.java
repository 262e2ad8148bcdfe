package bitterend.stock;

import bitterend.measure.Length;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** What people do with reels besides cutting them; every act is a movement of the ledger. */
public final class Rack {
    private final Ledger ledger;
    private final String who;

    /**
     * The rack as one person works at it.
     *
     * @param who name of the person
     */
    public Rack(Ledger ledger, String who) {
        this.ledger = ledger;
        this.who = who;
    }

    /** A reel that came in; its id must be new. */
    public Movement receive(Reel reel, String note) {
        return ledger.change(who, books -> {
            if (books.findHolding(reel.id()).isPresent()) {
                throw new LedgerException.Refused("there is a reel " + reel.id() + " already; give this one a new id");
            }
            return books.append(new Entry(Kind.RECEIVED, reel, note));
        });
    }

    /** A new figure for the length of a reel. */
    public Movement count(String reel, Length length, Length uncertainty, Reel.Known known, String note) {
        return change(Kind.COUNTED, reel, note, old -> {
            if (!length.minus(uncertainty).isPositive()) {
                throw new LedgerException.Refused("nothing is certain of a length that may be wrong by all of it");
            }
            return RopeWork.counted(old, length, uncertainty, known);
        });
    }

    public Movement hold(String reel, String note) {
        return change(
                Kind.ON_HOLD,
                reel,
                note,
                old -> old.withCustody(new Reel.Custody(
                        old.custody().owner(), Reel.State.ON_HOLD, old.custody().order())));
    }

    /** Free again, a customer's own rope for its order alone. */
    public Movement release(String reel, String note) {
        return change(Kind.RELEASED, reel, note, old -> {
            Reel.Custody custody = old.custody();
            String order = custody.isCustomersOwn() ? custody.order() : "";
            return old.withCustody(new Reel.Custody(custody.owner(), Reel.State.FREE, order));
        });
    }

    public Movement reserve(String reel, String order, String note) {
        return change(Kind.RESERVED, reel, note, old -> {
            if (old.custody().isCustomersOwn()) {
                throw new LedgerException.Refused(reel + " is " + old.custody().owner() + "'s own rope, for order "
                        + old.custody().order());
            }
            return old.withCustody(new Reel.Custody("", Reel.State.RESERVED, order));
        });
    }

    public Movement move(String reel, String place, String note) {
        return change(
                Kind.MOVED,
                reel,
                note,
                old -> old.withWhere(
                        new Reel.Where(place, old.where().mass(), old.where().draw())));
    }

    /** Wound over: the inner end is the working end now. */
    public Movement rewind(String reel, String note) {
        return change(Kind.REWOUND, reel, note, RopeWork::rewound);
    }

    /** A flaw that was found; it must lie on the reel. */
    public Movement addFlaw(String reel, Flaw flaw, String note) {
        return change(Kind.FLAW_FOUND, reel, note, old -> {
            if (flaw.to().isLongerThan(old.length())) {
                throw new LedgerException.Refused("the flaw lies behind the end of reel " + reel);
            }
            List<Flaw> flaws = new ArrayList<>(old.flaws());
            flaws.add(flaw);
            return old.withFlaws(flaws);
        });
    }

    /** Some rope off the working end onto a reel or coil of its own. */
    public Movement split(String reel, Length length, String newId, String note) {
        return ledger.change(who, books -> {
            Holding holding = standing(books, reel);
            Reel old = holding.reel();
            if (!length.isPositive() || !length.isShorterThan(old.length())) {
                throw new LedgerException.Refused("only a part of reel " + reel + " can be split off");
            }
            if (books.findHolding(newId).isPresent()) {
                throw new LedgerException.Refused("there is a reel " + newId + " already; give this one a new id");
            }
            books.append(new Entry(Kind.SPLIT, RopeWork.takenOff(old, length).orElseThrow(), note));
            Entry part = new Entry(
                    Kind.SPLIT, RopeWork.front(old, newId, length), false, note, new Origin(reel, "", "", "", 0));
            return books.append(part);
        });
    }

    /** Rope that leaves the shop or is written off: returned, sold or condemned. */
    public Movement remove(Kind kind, String reel, String note) {
        if (kind != Kind.RETURNED && kind != Kind.SOLD && kind != Kind.CONDEMNED) {
            throw new IllegalArgumentException(kind + " removes no rope");
        }
        return ledger.change(
                who, books -> books.append(new Entry(kind, standing(books, reel).reel(), true, note, Origin.NONE)));
    }

    /** Takes a movement back by one against it; only the last movement of a reel that still stands can be. */
    public Movement undo(long number, String note) {
        return ledger.change(who, books -> {
            Movement wrong = books.findMovement(number)
                    .orElseThrow(() -> new LedgerException.Refused("there is no movement " + number));
            if (wrong.entry().origin().undoes() != 0) {
                throw new LedgerException.Refused("movement " + number + " takes another back; make that one again");
            }
            List<Movement> standing =
                    Standing.movements(books.history(wrong.entry().reel()));
            Movement last = standing.isEmpty() ? wrong : standing.get(standing.size() - 1);
            if (!standing.contains(wrong)) {
                throw new LedgerException.Refused("movement " + number + " has been taken back already");
            }
            if (last.number() != number) {
                throw new LedgerException.Refused(
                        "movement " + last.number() + " (" + last.entry().kind().word() + ") of reel "
                                + wrong.entry().reel() + " came later: take that one back first");
            }
            return books.append(against(wrong, standing, note));
        });
    }

    private static Entry against(Movement wrong, List<Movement> standing, String note) {
        Origin was = wrong.entry().origin();
        Origin origin = new Origin("", was.plan(), "", was.piece(), wrong.number());
        if (standing.size() == 1) {
            return new Entry(Kind.UNDONE, wrong.entry().after(), true, note, origin);
        }
        Entry before = standing.get(standing.size() - 2).entry();
        return new Entry(Kind.UNDONE, before.after(), before.gone(), note, origin);
    }

    private Movement change(Kind kind, String reel, String note, UnaryOperator<Reel> change) {
        return ledger.change(
                who,
                books -> books.append(
                        new Entry(kind, change.apply(standing(books, reel).reel()), note)));
    }

    /** A reel that is on the rack. */
    private static Holding standing(Ledger.Stock stock, String reel) {
        Holding holding = stock.findHolding(reel)
                .orElseThrow(() -> new LedgerException.Refused("there is no reel " + reel + "; see stock list"));
        if (holding.gone()) {
            throw new LedgerException.Refused("nothing is left of reel " + reel + "; see stock history");
        }
        return holding;
    }
}
