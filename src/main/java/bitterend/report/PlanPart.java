package bitterend.report;

import bitterend.packing.ReelDraw;
import java.time.LocalDate;
import java.util.Set;

/**
 * Which part of a plan a page shows.
 *
 * @param whole whether it is all of it
 * @param reels else these reels
 * @param day the day they are cut on, as far as one can be named
 */
public record PlanPart(boolean whole, Set<String> reels, LocalDate day) {
    public PlanPart {
        reels = Set.copyOf(reels);
    }

    /** All of a plan of this day. */
    public static PlanPart whole(LocalDate day) {
        return new PlanPart(true, Set.of(), day);
    }

    boolean has(ReelDraw draw) {
        return whole || reels.contains(draw.reel());
    }
}
