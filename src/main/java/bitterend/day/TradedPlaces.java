package bitterend.day;

import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.ReelDraw;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Who came to whose reel between two plans. Where two pieces exchange their reels, directly or over others, neither is the
 * reason of the other.
 */
final class TradedPlaces {
    private final Map<String, String> before;
    private final Map<String, List<String>> newcomers = new HashMap<>();

    /** @param before reel of each piece in the earlier plan, by id */
    TradedPlaces(Map<String, String> before, CutPlan now) {
        this.before = before;
        for (ReelDraw draw : now.draws()) {
            newcomers.put(
                    draw.reel(),
                    draw.cuts().stream()
                            .map(Cut::piece)
                            .filter(piece -> !draw.reel().equals(before.get(piece)))
                            .toList());
        }
    }

    /** Whether a piece left its own reel to one that left its reel to another, and so on, to this cause. */
    boolean isForItsPart(String piece, String cause) {
        Deque<String> open = new ArrayDeque<>(List.of(piece));
        Set<String> seen = new HashSet<>(open);
        while (!open.isEmpty()) {
            for (String next : tookThePlaceOf(open.remove())) {
                if (next.equals(cause)) {
                    return true;
                }
                if (seen.add(next)) {
                    open.add(next);
                }
            }
        }
        return false;
    }

    private List<String> tookThePlaceOf(String piece) {
        String was = before.get(piece);
        return was == null ? new ArrayList<>() : newcomers.getOrDefault(was, List.of());
    }
}
