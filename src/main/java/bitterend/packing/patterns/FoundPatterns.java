package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import java.util.ArrayList;
import java.util.List;

/** The patterns found so far, and whether looking for all of them still makes sense. */
final class FoundPatterns {
    private final int most;
    private final Budget budget;
    private final List<Pattern> patterns = new ArrayList<>();
    private boolean all = true;

    /** @param most patterns before giving up */
    FoundPatterns(int most, Budget budget) {
        this.most = most;
        this.budget = budget;
    }

    List<Pattern> patterns() {
        return patterns;
    }

    /** False once there are too many, or the budget ended. */
    boolean all() {
        return all;
    }

    void giveUp() {
        all = false;
    }

    /** Spends a step; false once it is given up. */
    boolean step() {
        if (all && budget.spend(1)) {
            all = false;
        }
        return all;
    }

    /** Whether another one has room beside so many that are to come; if not, it is given up. */
    boolean room(int others) {
        if (patterns.size() + others >= most) {
            all = false;
            return false;
        }
        return true;
    }

    void add(Pattern pattern) {
        patterns.add(pattern);
    }
}
