package bitterend.day;

import bitterend.finding.CommandWord;
import bitterend.measure.Length;
import bitterend.measure.Written;
import bitterend.packing.Words;
import bitterend.stock.Event;
import bitterend.stock.Held;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;
import bitterend.stock.Ordered;
import bitterend.stock.PieceCut;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import bitterend.stock.RopeWork;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** A cut that is in no plan: sold over the counter, a sample, or a piece of an order off another reel than planned. */
public final class BenchCut {
    private final Ledger ledger;
    private final UnaryOperator<Event.Act> caller;

    /**
     * Cutting by somebody.
     *
     * @param caller puts into an act who does it, and under which id
     */
    public BenchCut(Ledger ledger, UnaryOperator<Event.Act> caller) {
        this.ledger = ledger;
        this.caller = caller;
    }

    /**
     * What is cut.
     *
     * @param reel the reel it comes off
     * @param length how long it came out
     * @param loss rope lost at the cut
     * @param sure whether it may reach over a flaw, or be far off what its piece needs
     * @param day the day it is
     */
    public record Cut(String reel, Length length, Length loss, boolean sure, LocalDate day) {}

    /** Rope sold over the counter. */
    public Event sold(Cut cut, String customer) {
        Event.Act act = Event.Act.of(Event.Kind.SOLD, "", customer).with("customer", customer);
        PieceCut piece = new PieceCut(cut.length(), Ordered.NONE);
        return book(act, cut, new What(Kind.SOLD, "over the counter: " + customer, Origin.NONE, piece, customer));
    }

    /** A sample, cut off and used up. */
    public Event sample(Cut cut, String why) {
        return book(
                Event.Act.of(Event.Kind.CUT, "", why),
                cut,
                new What(Kind.SCRAPPED, "sample: " + why, Origin.NONE, PieceCut.NONE));
    }

    /**
     * A piece that nothing ordered may be made of, as no order asks for it, or not off this reel.
     *
     * @param name what it was cut for, in the cutter's words
     */
    public Event spare(Cut cut, String name) {
        Event.Act act = Event.Act.of(Event.Kind.CUT, "", "");
        return ledger.change(caller.apply(act), books -> {
                    Origin origin = CutPieces.spareAtOnce(books, Origin.ofPiece("", name));
                    write(books, cut, new What(Kind.CUT_SPARE, "", origin, new PieceCut(cut.length(), Ordered.NONE)));
                })
                .orElseThrow();
    }

    /**
     * A piece of an order.
     *
     * @param ordered what was ordered
     * @param needed cut length it needs on this reel's rope; a shorter one leaves the piece open
     */
    public record Wanted(Ordered ordered, Length needed) {}

    /**
     * Books a piece of an order.
     *
     * @param rules what is wanted, asked for while no one else can book; it throws where the piece may not be cut so
     */
    public Event piece(Cut cut, String piece, Function<Ledger.Stock, Wanted> rules) {
        Event.Act act = Event.Act.of(Event.Kind.CUT, "", "").with("piece " + piece, "");
        return ledger.change(caller.apply(act), books -> {
                    if (new CutPieces(books).cuts().containsKey(piece)) {
                        throw new LedgerException.Refused("piece " + piece
                                + " is cut already; see bitterend stock trace SHOP " + CommandWord.of(piece));
                    }
                    Wanted wanted = rules.apply(books);
                    Length needed = wanted.needed();
                    boolean tooShort = cut.length().isShorterThan(needed);
                    checkConfirmed(cut, piece, needed);
                    Origin origin = Origin.ofPiece("", piece);
                    What what = new What(
                            tooShort ? Kind.CUT_SHORT : Kind.CUT,
                            tooShort ? "needed " + Words.of(needed) : "",
                            tooShort ? CutPieces.shortOf(books, origin) : origin,
                            new PieceCut(cut.length(), wanted.ordered()));
                    write(books, cut, what);
                })
                .orElseThrow();
    }

    private static void checkConfirmed(Cut cut, String piece, Length needed) {
        if (MeasuredPiece.isFarOff(cut.length(), needed) && !cut.sure()) {
            throw new LedgerException.Contradictory("piece " + piece + " needs " + Words.of(needed) + "; "
                    + Words.of(cut.length()) + " is more than 5 % off. If it is so, say it with --sure");
        }
    }

    private record What(Kind kind, String note, Origin origin, PieceCut piece, String customer) {
        /** Of what is ordered, for who ordered it. */
        What(Kind kind, String note, Origin origin, PieceCut piece) {
            this(kind, note, origin, piece, piece.ordered().wish().customer());
        }

        String order() {
            return piece.ordered().piece().order();
        }
    }

    private Event book(Event.Act act, Cut cut, What what) {
        return ledger.change(caller.apply(act), books -> write(books, cut, what))
                .orElseThrow();
    }

    private static void write(Ledger.Books books, Cut cut, What what) {
        Reel reel = standing(books, cut);
        if (what.kind() == Kind.SOLD) {
            Rack.refuseUnlessForSale(reel);
        }
        if (cut.length().isLongerThan(reel.length())) {
            reel = RopeWork.counted(reel, Written.worked(cut.length()), Length.ZERO, Reel.Known.COUNTED);
            books.append(new Entry(Kind.COUNTED, reel, "longer than the ledger knew"));
        }
        Length taken = Length.min(cut.length().plus(cut.loss()), reel.length());
        refuseHeld(reel, what, cut, taken);
        Optional<Reel> after = RopeWork.takenOff(served(reel, what, taken), taken);
        books.append(
                new Entry(what.kind(), after.orElse(reel), after.isEmpty(), what.note(), what.origin(), what.piece()));
    }

    /** A good piece, or what is sold, takes of what is held for it. */
    private static Reel served(Reel reel, What what, Length taken) {
        return what.kind() == Kind.CUT || what.kind() == Kind.SOLD
                ? reel.withCustody(reel.custody().served(held -> held.serves(what.order(), what.customer()), taken))
                : reel;
    }

    /** What is held for others is not cut before it is released. */
    private static void refuseHeld(Reel reel, What what, Cut cut, Length taken) {
        List<Held> others = reel.custody().heldOn(cut.day()).stream()
                .filter(held -> !held.serves(what.order(), what.customer()))
                .toList();
        Length held = others.stream().map(Held::length).reduce(Length.ZERO, Length::plus);
        Length left = Length.max(Length.ZERO, reel.contents().certainEnd().minus(taken));
        if (held.isLongerThan(left)) {
            throw new LedgerException.Refused("of reel " + reel.id() + " " + Words.of(held) + " is held for "
                    + others.stream()
                            .map(each -> each.whom() + " until " + each.until())
                            .collect(Collectors.joining(", "))
                    + ", and this cut leaves " + Words.of(left) + " for certain"
                    + "; where the rope is free all the same: bitterend stock release SHOP "
                    + CommandWord.of(reel.id()) + " --for "
                    + CommandWord.of(others.get(0).name()));
        }
    }

    private static Reel standing(Ledger.Stock stock, Cut cut) {
        Holding holding = stock.findHolding(cut.reel())
                .filter(each -> !each.gone())
                .orElseThrow(() -> new LedgerException.Refused(
                        "there is no reel " + cut.reel() + " on the rack; see bitterend stock list SHOP"));
        Reel reel = holding.reel();
        if (reel.custody().state() == Reel.State.ON_HOLD) {
            throw new LedgerException.Refused("reel " + cut.reel()
                    + " is on hold; when that is over: bitterend stock release SHOP " + CommandWord.of(cut.reel()));
        }
        Length most = reel.length().plus(reel.contents().uncertainty());
        if (cut.length().isLongerThan(most)) {
            throw new LedgerException.Refused("reel " + cut.reel() + " has no more than " + Words.of(most)
                    + " by the ledger. When it really was longer, book that first; how: bitterend stock count --help");
        }
        boolean overFlaw =
                reel.flaws().stream().anyMatch(flaw -> flaw.avoidFrom().isShorterThan(cut.length()));
        if (overFlaw && !cut.sure()) {
            throw new LedgerException.Contradictory(Words.of(cut.length()) + " off reel " + cut.reel()
                    + " reach over a flaw; if that is so, say --sure");
        }
        return reel;
    }
}
