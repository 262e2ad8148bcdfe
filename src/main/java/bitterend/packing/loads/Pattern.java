package bitterend.packing.loads;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** What one reel gives: how many of which item off which run. */
final class Pattern {
    final int reel;
    /** Load of each run in cells. */
    final int[] loads;
    /** Run on the reel, item and number, side by side. */
    final int[] run;

    final int[] item;
    final int[] count;
    final int cost;

    /** From triples of run, item and number. */
    static Pattern of(ReelOfRuns reel, int[] loads, List<int[]> takes) {
        List<int[]> sorted = new ArrayList<>(takes);
        sorted.sort(Comparator.<int[]>comparingInt(take -> take[0]).thenComparingInt(take -> take[1]));
        return new Pattern(reel, loads, column(sorted, 0), column(sorted, 1), column(sorted, 2));
    }

    private static int[] column(List<int[]> takes, int field) {
        return takes.stream().mapToInt(take -> take[field]).toArray();
    }

    private Pattern(ReelOfRuns reel, int[] loads, int[] run, int[] item, int[] count) {
        this.reel = reel.index;
        this.loads = loads;
        this.run = run;
        this.item = item;
        this.count = count;
        cost = reel.cost(loads);
    }

    /** Whether plans of a domain may use it. */
    boolean isIn(Domain domain, LoadModel model) {
        RunOfCells[] runs = model.reels[reel].runs;
        for (int j = 0; j < runs.length; j++) {
            int at = runs[j].index;
            if (loads[j] < domain.least[at] || loads[j] > domain.most[at]) {
                return false;
            }
        }
        for (int t = 0; t < item.length; t++) {
            Item cut = model.items[item[t]];
            if (!domain.isOpen(cut, reel) || count[t] > domain.mostCopies(runs[run[t]].index, cut)) {
                return false;
            }
        }
        return !domain.hasLimits() || hasLeast(domain, model);
    }

    private boolean hasLeast(Domain domain, LoadModel model) {
        for (RunOfCells there : model.reels[reel].runs) {
            for (Item any : model.items) {
                if (domain.leastCopies(there.index, any) > copies(there.place, any.index)) {
                    return false;
                }
            }
        }
        return true;
    }

    int copies(int place, int of) {
        for (int t = 0; t < item.length; t++) {
            if (run[t] == place && item[t] == of) {
                return count[t];
            }
        }
        return 0;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Pattern that
                && reel == that.reel
                && Arrays.equals(run, that.run)
                && Arrays.equals(item, that.item)
                && Arrays.equals(count, that.count);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * (31 * reel + Arrays.hashCode(run)) + Arrays.hashCode(item)) + Arrays.hashCode(count);
    }
}
