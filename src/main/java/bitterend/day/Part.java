package bitterend.day;

import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import java.util.List;
import java.util.Map;

/**
 * Which part of a plan was cut, and what was measured at the bench.
 *
 * @param reels only these reels; empty for all
 * @param upTo on the reel of each of these pieces only the pieces up to it; empty for all
 * @param measured length of pieces that did not come out as planned
 * @param scrapReason why rope was scrapped, where it was not for its length alone; may be empty
 */
public record Part(List<String> reels, List<String> upTo, Map<String, Length> measured, String scrapReason) {
    public static final Part ALL = new Part(List.of(), List.of(), Map.of(), "");

    public Part {
        reels = List.copyOf(reels);
        upTo = List.copyOf(upTo);
        measured = Map.copyOf(measured);
    }

    boolean has(ReelDraw draw) {
        boolean named = reels.contains(draw.reel());
        boolean pieceNamed = draw.cuts().stream().map(Cut::piece).anyMatch(upTo::contains);
        return (reels.isEmpty() && upTo.isEmpty()) || named || pieceNamed;
    }

    /** How many cuts of a draw are meant. */
    int cutsOf(ReelDraw draw) {
        List<String> pieces = draw.cuts().stream().map(Cut::piece).toList();
        int last = upTo.stream().mapToInt(pieces::indexOf).max().orElse(-1);
        return last < 0 ? pieces.size() : last + 1;
    }
}
