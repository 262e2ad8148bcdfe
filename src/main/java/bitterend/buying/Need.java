package bitterend.buying;

import java.util.List;

/**
 * What reels are bought for.
 *
 * @param cut ids of the pieces that are cut from them
 * @param without ids of the pieces that would have no rope if these reels alone were not bought; they need not be cut from
 *     them, since others may then take their place
 * @param known whether there was time to look for those
 */
public record Need(List<String> cut, List<String> without, boolean known) {
    public Need {
        cut = List.copyOf(cut);
        without = List.copyOf(without);
    }

    /** Before anybody looked what would have no rope. */
    static Need of(List<String> cut) {
        return new Need(cut, List.of(), false);
    }

    /** Pieces that are cut from them because they are cheaper so: there would be rope for them without. */
    public List<String> cheaper() {
        return cut.stream().filter(piece -> !without.contains(piece)).toList();
    }
}
