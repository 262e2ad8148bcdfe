package bitterend.stock;

import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A stretch that may not end up inside a piece: a maker's join, damage.
 *
 * @param from its beginning, from the working end
 * @param to its end, not before {@code from}
 * @param uncertainty how far either mark may be off
 * @param what what is wrong there
 */
public record Flaw(Length from, Length to, Length uncertainty, String what) {
    public Flaw {
        if (from.isNegative() || to.isShorterThan(from) || uncertainty.isNegative()) {
            throw new IllegalArgumentException("flaw from " + from + " to " + to + " +/- " + uncertainty);
        }
    }

    /** The beginning of the stretch to avoid; never negative. */
    public Length avoidFrom() {
        return Length.max(Length.ZERO, from.minus(uncertainty));
    }

    /** The end of the stretch to avoid. */
    public Length avoidTo() {
        return to.plus(uncertainty);
    }

    /** Flaws in their order, those that overlap made one; flaws that only touch stay apart. */
    public static List<Flaw> merged(List<Flaw> flaws) {
        List<Flaw> merged = new ArrayList<>();
        flaws.stream()
                .sorted(Comparator.comparing(Flaw::from).thenComparing(Flaw::to))
                .forEach(flaw -> {
                    int last = merged.size() - 1;
                    if (last >= 0 && merged.get(last).overlaps(flaw)) {
                        merged.set(last, merged.get(last).with(flaw));
                    } else {
                        merged.add(flaw);
                    }
                });
        return List.copyOf(merged);
    }

    /** Whether one that begins no earlier lies over a part of this one. */
    private boolean overlaps(Flaw later) {
        return later.from().isShorterThan(to)
                || (later.from().equals(from) && later.to().equals(to));
    }

    private Flaw with(Flaw other) {
        boolean same = other.what().isEmpty() || List.of(what.split(" / ")).contains(other.what());
        String words = same ? what : what.isEmpty() ? other.what() : what + " / " + other.what();
        return new Flaw(
                Length.min(from, other.from()),
                Length.max(to, other.to()),
                Length.max(uncertainty, other.uncertainty()),
                words);
    }
}
