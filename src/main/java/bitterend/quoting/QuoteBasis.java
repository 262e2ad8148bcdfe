package bitterend.quoting;

import bitterend.demand.Assembly;
import bitterend.demand.Demanded;
import bitterend.demand.Piece;
import bitterend.packing.PackingProblem;
import bitterend.quoting.sharing.NewRope;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What a shop knows when it makes a price.
 *
 * @param book the booked work and today's rack
 * @param newRopes every rope of the catalogue as it is bought, by id
 * @param pastWeeks the past weeks, the oldest first; empty where no history is kept
 * @param model what an assembly asks of the bench
 */
public record QuoteBasis(
        PackingProblem book,
        Map<String, NewRope> newRopes,
        List<PastWeek> pastWeeks,
        Function<Assembly, Demanded> model) {
    public QuoteBasis {
        newRopes = Collections.unmodifiableMap(new TreeMap<>(newRopes));
        pastWeeks = List.copyOf(pastWeeks);
    }

    /**
     * A week of the past.
     *
     * @param monday its first day
     * @param pieces what was cut for the orders placed in it
     */
    public record PastWeek(LocalDate monday, List<Piece> pieces) {
        public PastWeek {
            pieces = List.copyOf(pieces);
        }
    }

    /** A rope as it is bought; an unknown id is a caller's bug. */
    public NewRope newRope(String id) {
        NewRope rope = newRopes.get(id);
        if (rope == null) {
            throw new IllegalArgumentException("no new reels of rope " + id);
        }
        return rope;
    }
}
