package bitterend.day;

import bitterend.measure.Length;
import bitterend.stock.Ordered;
import java.util.Map;

/**
 * What the files of the shop and the plan say when work is booked.
 *
 * @param ordered what is ordered now, by piece
 * @param keepFrom from which length on a rest is worth keeping, by rope
 * @param heldFor whom the rope is held for that a piece comes off by the plan, see {@link bitterend.stock.Held#whom}, by
 *     piece; none for a piece that no rope is held for
 * @param same what the plan has in common with other plans of the shop
 */
public record ShopFacts(
        Map<String, Ordered> ordered, Map<String, Length> keepFrom, Map<String, String> heldFor, SameSteps same) {
    /** Where the files are not known. */
    public static final ShopFacts NONE = new ShopFacts(Map.of(), Map.of(), Map.of(), SameSteps.NONE);

    public ShopFacts {
        ordered = Map.copyOf(ordered);
        keepFrom = Map.copyOf(keepFrom);
        heldFor = Map.copyOf(heldFor);
    }
}
