package bitterend.bench.peers;

import bitterend.packing.patterns.ReelKind;
import java.util.List;

/** What a reel of several runs costs beside what is drawn from them. */
final class Opening {
    private Opening() {}

    /**
     * Adds the opening of one reel and the handling of what is skipped.
     *
     * @param used for each run what is 1 where it is drawn from, else 0: a factor and a variable, and a constant
     */
    static void add(LinearModel model, ReelKind kind, List<Used> used) {
        int open = model.variable(1, kind.opening());
        for (Used run : used) {
            run.plus(-1, model.row(run.constant(), LinearModel.FREE).plus(1, open));
        }
        for (int skipped = 0; skipped + 1 < used.size(); skipped++) {
            long handling = kind.runs().get(skipped).handling();
            int skip = handling == 0 ? -1 : model.variable(1, handling);
            for (int later = skipped + 1; later < used.size() && skip >= 0; later++) {
                long least = used.get(later).constant() - used.get(skipped).constant();
                LinearModel.Row row = model.row(least, LinearModel.FREE).plus(1, skip);
                used.get(later).plus(-1, row);
                used.get(skipped).plus(1, row);
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
