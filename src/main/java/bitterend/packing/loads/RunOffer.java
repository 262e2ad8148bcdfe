package bitterend.packing.loads;

import java.util.List;

/**
 * The best that one run gives when it is touched.
 *
 * @param worth what it earns less the value that leaves, {@link LoadTable#NEVER} when nothing can be cut
 * @param load in cells
 * @param takes pairs of item and number
 */
record RunOffer(int worth, int load, List<int[]> takes) {
    static final RunOffer NOTHING = new RunOffer(LoadTable.NEVER, 0, List.of());

    boolean possible() {
        return worth > LoadTable.REACHED;
    }
}
