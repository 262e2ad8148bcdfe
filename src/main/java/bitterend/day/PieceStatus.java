package bitterend.day;

import bitterend.stock.Reel;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How far a piece has come.
 *
 * @param piece id of the piece
 * @param state how far
 * @param plan the plan that cuts it; empty unless it is planned
 * @param cuts the reel it was cut off, as it was then; empty while it is not cut
 * @param found what it measures finished, and what was found when it was looked over
 */
public record PieceStatus(String piece, State state, String plan, List<Reel> cuts, LookedOver found) {
    public PieceStatus {
        cuts = List.copyOf(cuts);
    }

    /** How far a piece has come, in the order in which it goes. */
    public enum State {
        /** In no plan. */
        OPEN,
        /** In the plan in force, not cut. */
        PLANNED,
        /** Cut, and not what is ordered now: too short, or of another rope. */
        SHORT,
        CUT,
        SPLICED,
        /** Looked over and found good. */
        PASSED,
        DELIVERED;

        /** The word on pages. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** The reel it was cut off. */
    public Optional<Reel> reel() {
        return cuts.stream().findFirst();
    }

    public boolean is(State other) {
        return state == other;
    }
}
