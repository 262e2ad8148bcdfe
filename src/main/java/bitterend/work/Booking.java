package bitterend.work;

import bitterend.stock.Event;
import java.util.List;

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
    }

    /**
     * It does not go with what is there; nothing was booked.
     *
     * @param why in a sentence
     */
    record Refused(String why) implements Booking {}
}
