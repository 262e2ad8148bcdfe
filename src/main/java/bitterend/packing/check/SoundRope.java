package bitterend.packing.check;

import bitterend.measure.Length;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Where a piece may lie on a reel, worked out point by point: the reel is divided at every end of the lead trim, of a
 * widened flaw, of the certain length and of what is held for others, and neighbouring sound stretches are joined again where no flaw lies between.
 */
final class SoundRope {
    private final Reel reel;
    private final Length begin;
    private final Length end;
    private final NavigableMap<Length, Length> flaws;
    private final List<Stretch> runs;

    /** @param held how much at the inner end is held for others */
    SoundRope(Reel reel, Length held) {
        this.reel = reel;
        begin = reel.contents().leadTrim();
        end = reel.length()
                .minus(reel.contents().uncertainty())
                .minus(reel.contents().innerWraps())
                .minus(held);
        flaws = reaches();
        runs = divided();
    }

    /** A stretch of rope, from the working end of the reel, lead trim included. */
    record Stretch(Length from, Length to) {
        Length length() {
            return to.minus(from);
        }
    }

    /** The runs in the order in which they come off. */
    List<Stretch> runs() {
        return runs;
    }

    private List<Stretch> divided() {
        List<Stretch> stretches = new ArrayList<>();
        Length from = null;
        for (Length point : new TreeSet<>(points())) {
            if (from != null && isClear(from, point)) {
                joinOrAdd(stretches, new Stretch(from, point));
            }
            from = point;
        }
        return List.copyOf(stretches);
    }

    /** How far the widened flaws reach that begin before each place where one begins, that one included. */
    private NavigableMap<Length, Length> reaches() {
        NavigableMap<Length, Length> ends = new TreeMap<>();
        for (Flaw flaw : reel.flaws()) {
            ends.merge(flaw.from().minus(flaw.uncertainty()), flaw.to().plus(flaw.uncertainty()), Length::max);
        }
        Length far = Length.ZERO;
        for (Map.Entry<Length, Length> end : ends.entrySet()) {
            far = Length.max(far, end.getValue());
            end.setValue(far);
        }
        return ends;
    }

    private List<Length> points() {
        List<Length> points = new ArrayList<>(List.of(begin, end));
        for (Flaw flaw : reel.flaws()) {
            points.add(flaw.from().minus(flaw.uncertainty()));
            points.add(flaw.to().plus(flaw.uncertainty()));
        }
        return points;
    }

    private void joinOrAdd(List<Stretch> stretches, Stretch next) {
        int last = stretches.size() - 1;
        if (last >= 0
                && stretches.get(last).to().equals(next.from())
                && isClear(stretches.get(last).from(), next.to())) {
            stretches.set(last, new Stretch(stretches.get(last).from(), next.to()));
        } else {
            stretches.add(next);
        }
    }

    /** Whether a stretch keeps clear of the lead trim, every widened flaw, the uncertain end, the inner wraps and what is held. */
    boolean isClear(Length from, Length to) {
        return !from.isShorterThan(begin) && !to.isLongerThan(end) && !crossesFlaw(from, to);
    }

    /** Whether any flaw that begins before the stretch ends reaches beyond where it begins. */
    private boolean crossesFlaw(Length from, Length to) {
        Map.Entry<Length, Length> last = flaws.lowerEntry(to);
        return last != null && from.isShorterThan(last.getValue());
    }
}
