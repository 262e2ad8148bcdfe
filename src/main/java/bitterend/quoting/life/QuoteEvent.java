package bitterend.quoting.life;

import java.time.Instant;
import java.time.LocalDate;

/**
 * Something that happened to a quote after it was drawn up, and still holds.
 *
 * @param place where it is written down
 * @param at when it was written down
 * @param said who says what, and why
 * @param what what happened
 * @param quote to which revision
 * @param day the day it happened
 * @param order number of the order that came of it; empty where it was not accepted
 */
public record QuoteEvent(Place place, Instant at, Said said, What what, QuoteName quote, LocalDate day, String order) {
    /** What may happen to a quote. */
    public enum What {
        SENT,
        ACCEPTED,
        DECLINED;

        /** What the quote is then. */
        public QuoteState state() {
            return QuoteState.valueOf(name());
        }
    }

    /**
     * Where it is written down.
     *
     * @param ledger whether as an event of the ledger; else as a file beside the quotes
     * @param number its number there
     */
    public record Place(boolean ledger, long number) {}

    /**
     * Who says so.
     *
     * @param who name of the person
     * @param note in his words; may be empty
     * @param id chosen by the caller: the same id sent twice counts once
     */
    public record Said(String who, String note, String id) {}
}
