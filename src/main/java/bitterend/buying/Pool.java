package bitterend.buying;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The sets of reels that were found for ropes that belong together, each in the best packing of it. */
final class Pool {
    private final Map<ReelSet, Purchase> found = new HashMap<>();

    /** One more, unless the same set was found with a better packing. */
    void add(Purchase purchase) {
        found.merge(purchase.set(), purchase, (one, other) -> other.isBetterThan(one, Aim.LEAST_COST) ? other : one);
    }

    boolean holds(ReelSet set) {
        return found.containsKey(set);
    }

    Purchase of(ReelSet set) {
        return Optional.ofNullable(found.get(set)).orElseThrow();
    }

    /** All, in an order that does not depend on how they were found. */
    List<Purchase> all() {
        List<Purchase> all = new ArrayList<>(found.values());
        all.sort((one, other) -> one.isBetterThan(other, Aim.LEAST_COST) ? -1 : 1);
        return all;
    }

    /** The best of all for an aim; there must be one. */
    Purchase best(Aim aim) {
        return best(found.values(), aim);
    }

    /** The best of some for an aim; there must be one. */
    static Purchase best(Collection<Purchase> some, Aim aim) {
        return some.stream()
                .reduce((one, other) -> other.isBetterThan(one, aim) ? other : one)
                .orElseThrow();
    }
}
