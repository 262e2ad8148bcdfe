package bitterend.buying.reorder;

import bitterend.measure.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/**
 * Pieces of a rope that are booked, laid one by one on the stretches there are and that come: by the day they are wanted, of one
 * day the longest first, each on the shortest stretch that is there by then and holds it. What no stretch holds in time waits
 * for any. A division that is found is one that can be cut; where none is found there might be one.
 *
 * @param there stretches on the rack and on order
 * @param wanted pieces; what must come off one reel is one of them
 * @param loss of every cut
 */
public record Waiting(List<Stretch> there, List<Wanted> wanted, Length loss) {
    private static final Comparator<Wanted> LONGEST_FIRST =
            Comparator.comparing(Wanted::cut).reversed();

    static final Waiting NOTHING = new Waiting(List.of(), List.of(), Length.ZERO);

    public Waiting {
        there = List.copyOf(there);
        wanted = wanted.stream()
                .sorted(Comparator.comparing(Wanted::due).thenComparing(LONGEST_FIRST))
                .toList();
    }

    /** Rope without a flaw that may be cut from a day on. */
    public record Stretch(LocalDate from, Length length) {}

    /** A piece and the day it is wanted, or several with the losses between them. */
    public record Wanted(LocalDate due, Length cut) {}

    /** Whether all of them can be cut from what there is. */
    public boolean isHeld() {
        return isHeldWith(0, Length.ZERO, LocalDate.MAX);
    }

    /** Whether all of them can be cut when so many reels of a usable length come on a day. */
    boolean isHeldWith(int reels, Length usable, LocalDate from) {
        List<Stretch> left = new ArrayList<>(there);
        for (int reel = 0; reel < Math.min(reels, wanted.size()); reel++) {
            left.add(new Stretch(from, usable));
        }
        List<Wanted> late = new ArrayList<>();
        for (Wanted piece : wanted) {
            if (!isTaken(piece, piece.due(), left)) {
                late.add(piece);
            }
        }
        late.sort(LONGEST_FIRST);
        return late.stream().allMatch(piece -> isTaken(piece, LocalDate.MAX, left));
    }

    /** Takes a piece off the shortest stretch that is there by a day and holds it. */
    private boolean isTaken(Wanted piece, LocalDate by, List<Stretch> left) {
        int best = -1;
        for (int i = 0; i < left.size(); i++) {
            Stretch each = left.get(i);
            boolean holds = !each.from().isAfter(by) && !each.length().isShorterThan(piece.cut());
            if (holds && (best < 0 || each.length().isShorterThan(left.get(best).length()))) {
                best = i;
            }
        }
        if (best < 0) {
            return false;
        }
        Stretch taken = left.get(best);
        Length rest = taken.length().minus(piece.cut()).minus(loss);
        left.set(best, new Stretch(taken.from(), Length.max(Length.ZERO, rest)));
        return true;
    }

    /** The fewest reels with which all of them can be cut, of no fewer than one number and no more than another; nothing where none do. */
    OptionalInt fewest(int least, int most, Length usable, LocalDate from) {
        int low = least;
        int high = (int) Math.min(most, (long) least + wanted.size());
        if (high < low || !isHeldWith(high, usable, from)) {
            return OptionalInt.empty();
        }
        while (low < high) {
            int middle = low + (high - low) / 2;
            if (isHeldWith(middle, usable, from)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return OptionalInt.of(high);
    }
}
