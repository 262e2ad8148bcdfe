package bitterend.packing.explain;

import bitterend.measure.Cost;
import bitterend.packing.Reason;
import bitterend.packing.RunId;
import java.util.List;
import java.util.Optional;

/**
 * What a plan does with one piece, and what else it might do.
 *
 * @param piece id of the piece
 * @param places the run it comes off; empty when it is not planned
 * @param why why it is there, or why it is not planned
 * @param elsewhere every other run of the rack, those it could go to first and by what that would cost
 * @param help what would bring it into the plan; empty when it is planned
 */
public record PieceAnswer(
        String piece, List<RunId> places, List<Reason> why, List<Elsewhere> elsewhere, List<Reason> help) {
    public PieceAnswer {
        places = List.copyOf(places);
        why = List.copyOf(why);
        elsewhere = List.copyOf(elsewhere);
        help = List.copyOf(help);
    }

    /** The run it comes off, if it is planned. */
    public Optional<RunId> place() {
        return places.stream().findFirst();
    }

    public boolean isPlanned() {
        return !places.isEmpty();
    }

    /**
     * Another run for the piece, everything else staying as it is.
     *
     * @param run the run
     * @param bars the rules that keep it off that run; empty when it could go there
     * @param change what the plan would cost more there, less when negative; zero when it cannot go there
     */
    public record Elsewhere(RunId run, List<Reason> bars, Cost change) {
        public Elsewhere {
            bars = List.copyOf(bars);
        }

        public boolean isOpen() {
            return bars.isEmpty();
        }
    }
}
