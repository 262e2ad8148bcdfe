package bitterend.serve;

import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Kind;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * By how much the readings of the counter are off those of the plan, where pieces came out otherwise than planned: the rope
 * behind them begins earlier or later by that. Behind a flaw it begins where the flaw ends, as planned.
 */
final class MovedReadings {
    private static final Set<Kind> CUTS = EnumSet.of(Kind.CUT, Kind.CUT_SHORT, Kind.CUT_SPARE);

    private MovedReadings() {}

    /**
     * @param cut the pieces of the plan that are cut
     * @param history every movement of the reel, oldest first
     * @return true lengths by the piece still to be cut, negative for earlier; no piece that is cut where it was planned
     */
    static Map<String, Length> of(ReelDraw draw, Set<String> cut, List<Movement> history) {
        Map<String, Length> moved = new HashMap<>();
        for (RunDraw run : draw.runs()) {
            Length by = Length.ZERO;
            for (Cut each : run.cuts()) {
                if (cut.contains(each.piece())) {
                    by = by.plus(cameOut(each, history).minus(each.length()));
                } else if (!by.equals(Length.ZERO)) {
                    moved.put(each.piece(), by);
                }
            }
        }
        return moved;
    }

    private static Length cameOut(Cut cut, List<Movement> history) {
        return history.stream()
                .map(Movement::entry)
                .filter(entry ->
                        CUTS.contains(entry.kind()) && entry.origin().piece().equals(cut.piece()))
                .map(entry -> entry.piece().length())
                .reduce((first, later) -> later)
                .orElse(cut.length());
    }
}
