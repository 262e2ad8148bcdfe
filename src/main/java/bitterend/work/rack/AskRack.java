package bitterend.work.rack;

import bitterend.day.Trace;
import bitterend.measure.Length;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.stock.Paid;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import bitterend.work.ShopAccess;
import java.util.List;
import java.util.Optional;

/** What is on the rack and how it came there: questions that write nothing. */
public final class AskRack {
    private final ShopAccess at;

    public AskRack(ShopAccess at) {
        this.at = at;
    }

    /** Every reel; {@code all} also those of which nothing is left. */
    public List<Holding> holdings(boolean all) {
        return at.reading(ledger -> ledger.read(Ledger.Stock::holdings)).stream()
                .filter(holding -> all || !holding.gone())
                .toList();
    }

    /** The other lofts on the server of the ledger, sorted; none where it is a file. */
    public List<String> lofts() {
        return at.reading(ledger -> ledger.read(stock -> ledger.neighbours().names()));
    }

    /** What is found of a reel, a piece or a lot. */
    public sealed interface Found {
        /** Every movement of a reel, oldest first. */
        record History(List<Movement> movements) implements Found {
            public History {
                movements = List.copyOf(movements);
            }
        }

        /**
         * Where a piece came from.
         *
         * @param movements that cut it, or are about it
         * @param events further events about it
         * @param ancestry its reel, and the reels that this came off
         * @param reel its reel as it is now
         */
        record OfPiece(List<Movement> movements, List<Event> events, List<String> ancestry, Reel reel)
                implements Found {
            public OfPiece {
                movements = List.copyOf(movements);
                events = List.copyOf(events);
                ancestry = List.copyOf(ancestry);
            }
        }

        /** What was cut of a lot, and what of it is on the rack. */
        record OfLot(List<Movement> pieces, List<Holding> rack) implements Found {
            public OfLot {
                pieces = List.copyOf(pieces);
                rack = List.copyOf(rack);
            }
        }

        /** Nothing. */
        record Nothing(Booking.Refused why) implements Found {}
    }

    /** Every movement of a reel. */
    public Found history(String reel) {
        List<Movement> history = at.reading(ledger -> ledger.read(stock -> stock.history(reel)));
        return history.isEmpty()
                ? nothing("there is no reel " + reel + "; see bitterend stock list SHOP --all")
                : new Found.History(history);
    }

    /** Why an id cannot be given to a reel that comes; nothing for one that can. */
    public Optional<String> taken(String reel) {
        return at.reading(ledger -> ledger.read(stock -> Rack.taken(stock, reel)));
    }

    /** What was paid for a reel and for bringing it; nothing where the ledger does not know. */
    public Optional<Paid.OfReel> paid(String reel) {
        return Optional.ofNullable(at.reading(ledger -> ledger.read(Paid::of)).get(reel));
    }

    /** What put right later what was paid for a reel, and was not taken back; oldest first. */
    public List<Paid.Corrected> corrected(String reel) {
        return at.reading(ledger -> ledger.read(stock -> Paid.Corrected.of(stock, reel)));
    }

    /** The length that a reel came with, by which a price by length is read; nothing where there is no such reel. */
    public Optional<Length> cameWith(String reel) {
        return at.reading(ledger -> ledger.read(stock -> stock.history(reel))).stream()
                .reduce((first, later) -> later.entry().kind() == Movement.Kind.RECEIVED ? later : first)
                .map(movement -> movement.entry().after().length());
    }

    /** A piece to its reel, lot, certificate and plan. */
    public Found piece(String piece) {
        return at.reading(ledger -> ledger.read(stock -> {
            Trace trace = new Trace(stock);
            List<Movement> found = trace.ofPiece(piece);
            if (found.isEmpty()) {
                return nothing("nothing was cut for piece " + piece);
            }
            String reel = trace.reelOf(piece);
            return new Found.OfPiece(
                    found,
                    trace.eventsOf(piece),
                    trace.ancestry(reel),
                    stock.findHolding(reel)
                            .orElseThrow(() -> new LedgerException("the ledger has lost reel " + reel))
                            .reel());
        }));
    }

    /** A lot to every piece. */
    public Found lot(String lot) {
        return at.reading(ledger -> ledger.read(stock -> {
            Trace trace = new Trace(stock);
            List<Movement> pieces = trace.ofLot(lot);
            List<Holding> rack = trace.rackOf(lot);
            return pieces.isEmpty() && rack.isEmpty()
                    ? nothing("nothing was cut of lot " + lot + ", and none of it is on the rack")
                    : new Found.OfLot(pieces, rack);
        }));
    }

    private static Found nothing(String why) {
        return new Found.Nothing(new Booking.Refused(why));
    }
}
