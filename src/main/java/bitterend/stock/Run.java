package bitterend.stock;

import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Sound rope between two flaws or ends, in the order in which it comes off the reel.
 *
 * @param index 1 for the first run from the working end
 * @param from where it begins, from the working end of the reel as it stands, lead trim included
 * @param to where it ends
 */
public record Run(int index, Length from, Length to) {
    public Run {
        if (index < 1 || from.isNegative() || !to.isLongerThan(from)) {
            throw new IllegalArgumentException("run " + index + " from " + from + " to " + to);
        }
    }

    public Length length() {
        return to.minus(from);
    }

    /**
     * The runs of a reel. What lies in the lead trim, in a flaw widened by its uncertainty, in the uncertain end, in the
     * inner wraps or in what is held for others belongs to no run. A reel may have none.
     */
    static List<Run> runsOf(Reel reel) {
        List<Run> runs = new ArrayList<>();
        Length from = reel.contents().leadTrim();
        Length end = reel.contents().usableEnd();
        for (Flaw flaw : reel.flaws()) {
            add(runs, from, Length.min(flaw.avoidFrom(), end));
            from = Length.max(from, flaw.avoidTo());
        }
        add(runs, from, end);
        return List.copyOf(runs);
    }

    private static void add(List<Run> runs, Length from, Length to) {
        if (to.isLongerThan(from)) {
            runs.add(new Run(runs.size() + 1, from, to));
        }
    }
}
