package bitterend.packing.loads;

import java.util.ArrayList;
import java.util.List;

/** An order that pays for every lot of a rope beyond the first. */
final class OrderOnLots {
    final int index;
    final String number;
    /** Single pieces. */
    final List<Item> items = new ArrayList<>();

    final List<SetOfPieces> sets = new ArrayList<>();
    /** The reels of each lot that may serve it. */
    final List<int[]> lots = new ArrayList<>();

    final List<String> names = new ArrayList<>();
    /** The rope of each lot, numbered. */
    int[] rope = {};

    OrderOnLots(int index, String number) {
        this.index = index;
        this.number = number;
    }
}
