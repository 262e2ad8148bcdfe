package bitterend.buying;

import bitterend.measure.Length;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;

/** Pieces of orders in hand, laid on the reels of their rope one after the other: no plan, only which reels they need. */
final class BookedCuts {
    private final List<Length> left;
    private final Length loss;

    /**
     * @param cuts cut lengths
     * @param loss rope lost at each cut
     */
    BookedCuts(List<Length> cuts, Length loss) {
        left = new ArrayList<>(cuts);
        left.sort(Comparator.reverseOrder());
        this.loss = loss;
    }

    /** What of these runs is used by the pieces that are left, the longest that fit first; they are left no more. */
    Length takenFrom(List<Run> runs) {
        return runs.stream().map(run -> takenFrom(run.length())).reduce(Length.ZERO, Length::plus);
    }

    private Length takenFrom(Length run) {
        Length rest = run;
        Iterator<Length> pieces = left.iterator();
        while (pieces.hasNext()) {
            Length cut = pieces.next();
            if (!rest.isShorterThan(cut)) {
                rest = rest.minus(Length.min(rest, cut.plus(loss)));
                pieces.remove();
            }
        }
        return run.minus(rest);
    }
}
