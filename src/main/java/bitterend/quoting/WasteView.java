package bitterend.quoting;

import bitterend.measure.Cost;
import java.time.LocalDate;
import java.util.List;

/** The waste of a job seen in one way: what cutting it costs beyond the rope in its pieces. May be negative. */
public sealed interface WasteView {
    /**
     * It lies between two amounts.
     *
     * @param low least
     * @param middle found, or the mean
     * @param high most
     * @param samples how often it was looked at
     * @param weeks the past weeks that were looked at; none where the view is of no past
     */
    record Span(Cost low, Cost middle, Cost high, int samples, PastWeeks weeks) implements WasteView {
        /** Of no past. */
        public Span(Cost low, Cost middle, Cost high, int samples) {
            this(low, middle, high, samples, PastWeeks.NONE);
        }

        public boolean isExact() {
            return low.equals(high);
        }
    }

    /**
     * Past weeks that were looked at.
     *
     * @param mondays the first day of each, the oldest first
     * @param ofSeason whether they are of the time of year of the quote alone
     * @param outOf how many weeks they were taken from evenly: all with work in the rope, of the season or of all of the past
     */
    record PastWeeks(List<LocalDate> mondays, boolean ofSeason, int outOf) {
        static final PastWeeks NONE = new PastWeeks(List.of(), false, 0);

        public PastWeeks {
            mondays = List.copyOf(mondays);
        }
    }

    /**
     * It cannot be told.
     *
     * @param reason in a sentence without a full stop
     */
    record NotKnown(String reason) implements WasteView {}
}
