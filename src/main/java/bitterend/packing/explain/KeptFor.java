package bitterend.packing.explain;

import bitterend.measure.Cost;
import java.time.LocalDate;
import java.util.List;

/**
 * For what a reel is kept that is not cut today, and what that costs the other work in its rope.
 *
 * @param pieces the pieces that it is kept for
 * @param day the day on which they are cut
 * @param undone pieces that would be planned were it not kept; empty where it costs money alone
 * @param saving what the other work would cost less; zero where more of it would be done
 */
public record KeptFor(List<String> pieces, LocalDate day, List<String> undone, Cost saving) {
    public KeptFor {
        pieces = List.copyOf(pieces);
        undone = List.copyOf(undone);
    }
}
