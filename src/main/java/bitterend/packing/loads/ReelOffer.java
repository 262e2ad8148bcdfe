package bitterend.packing.loads;

import java.util.ArrayList;
import java.util.List;

/** The best draw from a reel: which runs are touched, and what it earns in all. */
final class ReelOffer {
    /** What no draw earns when none is possible. */
    static final long IMPOSSIBLE = Long.MIN_VALUE / 4;

    private final ReelOfRuns reel;
    private final RunOffer[] offers;
    private final boolean[] used;
    private long worth = IMPOSSIBLE;

    /**
     * @param offers of every run
     * @param domain which runs must be touched
     */
    ReelOffer(ReelOfRuns reel, RunOffer[] offers, Domain domain) {
        this.reel = reel;
        this.offers = offers;
        used = new boolean[offers.length];
        int deepest = deepestNeeded(domain);
        if (deepest < 0) {
            worth = 0;
        }
        int last = -1;
        long before = -reel.opening;
        for (int j = 0; j < offers.length; j++) {
            if (offers[j].possible() && before > IMPOSSIBLE && j >= deepest && before + offers[j].worth() > worth) {
                worth = before + offers[j].worth();
                last = j;
            }
            before = before > IMPOSSIBLE ? plus(before, j, domain) : before;
        }
        choose(last, domain);
    }

    /** What the runs up to the j-th earn when a later one is touched. */
    private long plus(long before, int j, Domain domain) {
        long best = IMPOSSIBLE;
        if (offers[j].possible()) {
            best = before + offers[j].worth();
        }
        if (domain.least[reel.runs[j].index] == 0) {
            best = Math.max(best, before - reel.handling);
        }
        return best;
    }

    private int deepestNeeded(Domain domain) {
        int deepest = -1;
        for (int j = 0; j < offers.length; j++) {
            deepest = domain.least[reel.runs[j].index] > 0 ? j : deepest;
        }
        return deepest;
    }

    private void choose(int last, Domain domain) {
        for (int j = 0; j <= last; j++) {
            boolean must = domain.least[reel.runs[j].index] > 0;
            used[j] = j == last || must || (offers[j].possible() && offers[j].worth() >= -reel.handling);
        }
    }

    /** What the best draw earns, {@link #IMPOSSIBLE} when there is none. */
    long worth() {
        return worth;
    }

    /** The best draw; of an untouched reel without any piece. */
    Pattern pattern() {
        int[] loads = new int[offers.length];
        List<int[]> takes = new ArrayList<>();
        for (int j = 0; j < offers.length; j++) {
            if (used[j]) {
                loads[j] = offers[j].load();
                for (int[] take : offers[j].takes()) {
                    takes.add(new int[] {j, take[0], take[1]});
                }
            }
        }
        return Pattern.of(reel, loads, takes);
    }
}
