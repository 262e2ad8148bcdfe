package bitterend.work;

import bitterend.stock.Event;
import bitterend.stock.LedgerException;
import java.util.List;
import java.util.function.Supplier;

/** What became of something that was to be booked. */
public sealed interface Booking {

    /**
     * It is in the ledger.
     *
     * @param event the event
     * @param told what follows from it, in sentences
     */
    record Booked(Event event, List<String> told) implements Booking {
        public Booked {
            told = List.copyOf(told);
        }

        /** Of which nothing more is to be told. */
        public Booked(Event event) {
            this(event, List.of());
        }
    }

    /**
     * It was not booked, nor anything else.
     *
     * @param kind what kind of refusal it is
     * @param why in a sentence
     */
    record Refused(Kind kind, String why) implements Booking {
        /** It does not go with what is there. */
        public Refused(String why) {
            this(Kind.NOT_POSSIBLE, why);
        }

        /** As the ledger or a rule of the bench put it; a ledger that cannot be used at all is no refusal. */
        public static Refused of(LedgerException fault) {
            if (fault instanceof LedgerException.Refused) {
                return new Refused(Kind.NOT_POSSIBLE, fault.sentence());
            }
            if (fault instanceof LedgerException.Contradictory) {
                return new Refused(Kind.CONTRADICTORY, fault.sentence());
            }
            if (fault instanceof LedgerException.StockChanged) {
                return new Refused(Kind.STOCK_CHANGED, fault.sentence());
            }
            throw fault;
        }

        /** The same in other words. */
        public Refused withWhy(String other) {
            return new Refused(kind, other);
        }
    }

    /** Why something is refused. */
    enum Kind {
        /** It does not go with what is there. */
        NOT_POSSIBLE,
        /** What was asked for contradicts itself, or needs a word more. */
        CONTRADICTORY,
        /** Reels have changed since a plan saw them. */
        STOCK_CHANGED
    }

    /** Books something, or says why not. */
    static Booking of(Supplier<Booking> deed) {
        try {
            return deed.get();
        } catch (LedgerException fault) {
            return Refused.of(fault);
        }
    }
}
