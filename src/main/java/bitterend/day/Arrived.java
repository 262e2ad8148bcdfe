package bitterend.day;

import bitterend.packing.Arrival;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What an earlier plan promised off reels that were on order is off the reels that came of those orders. */
public final class Arrived {
    private Arrived() {}

    /** An earlier plan with each reel that came since under the id that it has on the rack. */
    public static CutPlan named(CutPlan earlier, RackToday rack) {
        return named(earlier, ids(rack));
    }

    /** The same for a later question, in which some of these reels may have been on order still. */
    public static CutPlan named(CutPlan earlier, RackToday rack, PackingProblem later) {
        Map<String, String> ids = ids(rack);
        ids.keySet().removeIf(later::isComing);
        return named(earlier, ids);
    }

    private static Map<String, String> ids(RackToday rack) {
        Map<String, String> ids = new HashMap<>();
        rack.came().forEach((order, reels) -> {
            for (int i = 0; i < reels.size(); i++) {
                ids.put(Arrival.idOf(order, i + 1), reels.get(i));
            }
        });
        return ids;
    }

    private static CutPlan named(CutPlan earlier, Map<String, String> ids) {
        if (earlier.draws().stream().noneMatch(draw -> ids.containsKey(draw.reel()))) {
            return earlier;
        }
        List<ReelDraw> draws = earlier.draws().stream()
                .map(draw -> draw.off(ids.getOrDefault(draw.reel(), draw.reel())))
                .toList();
        return earlier.withDraws(draws);
    }
}
