package bitterend.packing.patterns.fewest;

import bitterend.packing.cells.Passes;
import bitterend.packing.patterns.fewest.Limits.Group;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The patterns of a group of reels at whole prices, exactly, from both ends: what the items before one bring under each load,
 * and what the items behind it bring in each room, so that the best pattern through every item is read off.
 */
final class PatternTable {
    /** Loads that can be cut are worth more. */
    static final int REACHED = -800_000_000;
    /** No pattern is worth more, or less than the same below nothing. */
    static final int LARGEST = 500_000_000;

    private final ReelQuestion question;
    private final Passes passes = new Passes();
    private final int cells;
    /** By item, under each load with a longest piece that may lead. */
    private final List<int[]> before = new ArrayList<>();
    /** By item from the last one on, in each room. */
    private final List<int[]> behind = new ArrayList<>();

    private int[] price = {};
    private Group group;

    PatternTable(ReelQuestion question) {
        this.question = question;
        cells = question.room + 1;
        passes.cells(cells);
        group = new Group(Group.ANY, question.items());
    }

    /** Cells that are worked out for a group. */
    long cells(Group of) {
        return 2L * cells * (question.items() - of.first());
    }

    /** Works it out; what was there before is gone. */
    void fill(int[] prices, Group of) {
        price = prices;
        group = of;
        passes.giveBack(before);
        passes.giveBack(behind);
        before.clear();
        behind.clear();
        int[] end = passes.emptyRow();
        for (int room = 0; room <= question.room - question.leastLoad(); room++) {
            end[room] = 0;
        }
        behind.add(end);
        for (int item = question.items() - 1; item > group.first(); item--) {
            behind.add(
                    passes.copies(last(behind), question.size[item], price[item], group.least[item], group.most[item]));
        }
        before.add(passes.emptyRow());
        for (int item = group.first(); item < question.items(); item++) {
            before.add(led(item));
        }
    }

    private static int[] last(List<int[]> rows) {
        return rows.get(rows.size() - 1);
    }

    /** The row behind an item, patterns that it leads among them. */
    private int[] led(int item) {
        int size = question.size[item];
        boolean isLeader = item == group.leader;
        int[] from = last(before);
        int[] row = isLeader ? from : passes.copies(from, size, price[item], group.least[item], group.most[item]);
        if (!group.leads.get(item)) {
            return row;
        }
        int[] next = row;
        if (row == from) {
            next = passes.row();
            System.arraycopy(row, 0, next, 0, cells);
        }
        for (int copies = 1; copies <= group.most[item] && copies * size < cells; copies++) {
            next[copies * size] = Math.max(next[copies * size], copies * price[item]);
        }
        return next;
    }

    private int[] before(int item) {
        return before.get(item - group.first());
    }

    /** What items behind this one bring in each room. */
    private int[] behind(int item) {
        return behind.get(question.items() - 1 - item);
    }

    /** What the best pattern is worth; below {@link #REACHED} where there is none. */
    int best() {
        int best = Passes.NEVER;
        int[] all = last(before);
        for (int load = question.leastLoad(); load < cells; load++) {
            best = Math.max(best, all[load]);
        }
        return best;
    }

    /** The best pattern through an item, if it is worth more than so much. */
    Optional<Column> through(int item, int floor) {
        int size = question.size[item];
        int most = Math.min(group.most[item], question.room / size);
        int best = floor;
        int bestLoad = -1;
        int bestCopies = 0;
        int[] to = behind(item);
        int[] from = before(item);
        for (int copies = Math.max(1, group.least[item]); copies <= most; copies++) {
            int worth = copies * price[item];
            int taken = copies * size;
            if (group.leads.get(item) && to[question.room - taken] + worth > best) {
                best = to[question.room - taken] + worth;
                bestLoad = 0;
                bestCopies = copies;
            }
            for (int load = 1; load + taken < cells; load++) {
                int rest = to[question.room - taken - load];
                if (from[load] > REACHED && rest > REACHED && from[load] + rest + worth > best) {
                    best = from[load] + rest + worth;
                    bestLoad = load;
                    bestCopies = copies;
                }
            }
        }
        return bestLoad < 0 ? Optional.empty() : Optional.of(traced(item, bestCopies, bestLoad));
    }

    private Column traced(int item, int copies, int load) {
        int[] all = new int[question.items()];
        all[item] = copies;
        int at = load;
        for (int i = item - 1; at > 0; i--) {
            all[i] = takenBefore(i, at);
            at -= all[i] * question.size[i];
        }
        int room = question.room - load - copies * question.size[item];
        for (int i = item + 1; i < all.length; i++) {
            all[i] = takenBehind(i, room);
            room -= all[i] * question.size[i];
        }
        return Column.of(all);
    }

    private int takenBefore(int item, int at) {
        int worth = before(item + 1)[at];
        int size = question.size[item];
        int least = item == group.leader ? 1 : group.least[item];
        for (int copies = least; copies <= group.most[item] && copies * size <= at; copies++) {
            int rest = at - copies * size;
            boolean begins = rest == 0 && copies > 0 && group.leads.get(item);
            if ((begins && worth == copies * price[item])
                    || (item != group.leader
                            && before(item)[rest] > REACHED
                            && before(item)[rest] + copies * price[item] == worth)) {
                return copies;
            }
        }
        throw new IllegalStateException("no way to a load of " + at + " cells");
    }

    private int takenBehind(int item, int room) {
        int worth = behind(item - 1)[room];
        for (int copies = group.least[item];
                copies <= group.most[item] && copies * question.size[item] <= room;
                copies++) {
            int rest = behind(item)[room - copies * question.size[item]];
            if (rest > REACHED && rest + copies * price[item] == worth) {
                return copies;
            }
        }
        throw new IllegalStateException("no way to fill a room of " + room + " cells");
    }
}
