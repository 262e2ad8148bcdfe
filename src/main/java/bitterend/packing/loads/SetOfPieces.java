package bitterend.packing.loads;

import java.util.ArrayList;
import java.util.List;

/** A matched set: it takes one holder, a lot of one rope or a single reel, or stays undone as a whole. */
final class SetOfPieces {
    final int index;
    final String name;
    final List<Item> items = new ArrayList<>();
    /** The reels of each holder that has room. */
    final List<int[]> holders = new ArrayList<>();
    /** The name of each holder. */
    final List<String> names = new ArrayList<>();
    /** The lot of its order that each holder lies in, {@link Item#NONE} where lots are not priced. */
    int[] lotOfHolder = {};
    /** The order, where its lots are priced. */
    int order = Item.NONE;

    SetOfPieces(int index, String name) {
        this.index = index;
        this.name = name;
    }

    int urgency() {
        return items.get(0).urgency;
    }

    /** Weight of leaving the whole set undone. */
    long weight() {
        return items.stream().mapToLong(item -> item.weight * item.count()).sum();
    }
}
