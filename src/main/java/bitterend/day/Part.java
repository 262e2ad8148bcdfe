package bitterend.day;

import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import java.util.Collection;
import java.util.List;

/**
 * Which part of a plan was cut, and what was found at the bench.
 *
 * @param reels only these reels
 * @param upTo on the reel of each of these pieces only the pieces up to it; without reels and pieces all of the plan is meant
 * @param found what was found while it was cut
 */
public record Part(List<String> reels, List<String> upTo, Found found) {
    public static final Part ALL = new Part(List.of(), List.of(), Found.AS_PLANNED);

    public Part {
        reels = List.copyOf(reels);
        upTo = List.copyOf(upTo);
    }

    /** Whether nothing is named. */
    public boolean isAll() {
        return reels.isEmpty() && upTo.isEmpty();
    }

    /** Where nothing is named, these reels; else the same. */
    public Part orElse(Collection<String> these) {
        return isAll() ? new Part(List.copyOf(these), upTo, found) : this;
    }

    /** Whether some of a draw is meant. */
    public boolean has(ReelDraw draw) {
        boolean named = reels.contains(draw.reel());
        boolean pieceNamed = draw.cuts().stream().map(Cut::piece).anyMatch(upTo::contains);
        return isAll() || named || pieceNamed;
    }

    /** How many cuts of a draw are meant. */
    public int cutsOf(ReelDraw draw) {
        List<String> pieces = draw.cuts().stream().map(Cut::piece).toList();
        int last = upTo.stream().mapToInt(pieces::indexOf).max().orElse(-1);
        return last < 0 ? pieces.size() : last + 1;
    }

    /** The pieces of a draw that are meant and were cut off its reel. */
    public List<String> pieces(ReelDraw draw) {
        return draw.cuts().stream()
                .limit(cutsOf(draw))
                .map(Cut::piece)
                .filter(piece -> !found.isSkipped(piece))
                .toList();
    }
}
