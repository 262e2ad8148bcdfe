package bitterend.bench.peers;

import bitterend.packing.patterns.ReelKind;
import java.util.ArrayList;
import java.util.List;

/**
 * What a reel of several runs costs beside what is drawn from them.
 *
 * @param open the variable that is 1 for a reel that is drawn from; -1 where there is none
 * @param skips the variable of each run that is 1 where it is cut off unused; -1 for none
 */
record Opening(int open, List<Integer> skips) {
    /** Of a reel whose opening is paid otherwise. */
    static final Opening NONE = new Opening(-1, List.of());

    /**
     * Adds the opening of one reel and the handling of what is skipped.
     *
     * @param used for each run what is 1 where it is drawn from, else 0
     */
    static Opening add(LinearModel model, ReelKind kind, List<Used> used) {
        int open = model.variable(1, kind.opening());
        for (Used run : used) {
            run.plus(-1, model.row(run.constant(), LinearModel.FREE).plus(1, open));
        }
        List<Integer> skips = new ArrayList<>();
        for (int skipped = 0; skipped + 1 < used.size(); skipped++) {
            long handling = kind.runs().get(skipped).handling();
            skips.add(handling == 0 ? -1 : skip(model, handling, used, skipped));
        }
        return new Opening(open, skips);
    }

    private static int skip(LinearModel model, long handling, List<Used> used, int skipped) {
        int skip = model.variable(1, handling);
        for (int later = skipped + 1; later < used.size(); later++) {
            long least = used.get(later).constant() - used.get(skipped).constant();
            LinearModel.Row row = model.row(least, LinearModel.FREE).plus(1, skip);
            used.get(later).plus(-1, row);
            used.get(skipped).plus(1, row);
        }
        return skip;
    }

    /** Writes down the values for a reel of which these runs are drawn from. */
    void begin(long[] start, List<Boolean> drawn) {
        int deepest = drawn.lastIndexOf(true);
        if (open < 0 || deepest < 0) {
            return;
        }
        start[open] = 1;
        for (int run = 0; run < deepest; run++) {
            if (!drawn.get(run) && skips.get(run) >= 0) {
                start[skips.get(run)] = 1;
            }
        }
    }

    /**
     * A sum that is 1 where a run is drawn from, else 0.
     *
     * @param constant of the sum
     * @param factor of the variable
     * @param variable the one it hangs on; -1 for a run that is never drawn from
     */
    record Used(long constant, long factor, int variable) {
        void plus(long times, LinearModel.Row row) {
            if (variable >= 0) {
                row.plus(times * factor, variable);
            }
        }
    }
}
