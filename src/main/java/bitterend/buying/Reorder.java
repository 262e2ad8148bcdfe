package bitterend.buying;

import bitterend.history.Resampling;
import bitterend.market.OnOrder;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.stock.Held;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.List;

/**
 * Whether the rope that is there covers the weeks to come, nine times in ten. It compares sums of lengths, so it hints
 * too late rather than too early when remnants are short.
 *
 * @param rope id of the rope
 * @param weeks how many weeks are to be covered
 * @param wanted cut lengths of so many weeks, not exceeded in nine scenarios of ten
 * @param there sound rope on the rack that is ours and free, runs shorter than the shortest kept remnant left out
 * @param onOrder rope that arrives, as long as it was typed
 */
public record Reorder(String rope, int weeks, Length wanted, Length there, FineLength onOrder) {
    private static final int SCENARIOS = 2_000;
    private static final int PERCENT = 90;

    /** Whether rope should be ordered now. */
    public boolean isDue() {
        return wanted.fine().compareTo(there.fine().plus(onOrder)) > 0;
    }

    /**
     * The hint for one rope.
     *
     * @param past cut lengths of each week of the past; at least one week
     */
    public static Reorder of(
            bitterend.catalogue.Rope rope,
            List<List<Length>> past,
            List<Reel> reels,
            List<OnOrder> coming,
            int weeks,
            long seed) {
        long[] byWeek = past.stream()
                .mapToLong(
                        week -> week.stream().reduce(Length.ZERO, Length::plus).mm()
                                + rope.cutting().loss().times(week.size()).mm())
                .toArray();
        Resampling resampling = new Resampling(seed, byWeek.length, weeks);
        long[] sums = new long[SCENARIOS];
        for (int i = 0; i < SCENARIOS; i++) {
            for (int week : resampling.weeksOf(i)) {
                sums[i] = Math.addExact(sums[i], byWeek[week]);
            }
        }
        FineLength onOrder = coming.stream()
                .filter(each -> each.rope().equals(rope.id()))
                .map(each -> each.written().exact().times(each.quantity()))
                .reduce(FineLength.ZERO, FineLength::plus);
        return new Reorder(
                rope.id(), weeks, new Length(StandardErrors.percentile(sums, PERCENT)), there(rope, reels), onOrder);
    }

    private static Length there(bitterend.catalogue.Rope rope, List<Reel> reels) {
        return reels.stream()
                .filter(reel -> reel.rope().equals(rope.id()))
                .filter(reel -> reel.custody().holding(List.of()).equals(Reel.Custody.FREE))
                .flatMap(reel -> reel.holding(held(reel)).runs().stream())
                .map(Run::length)
                .filter(length -> !length.isShorterThan(rope.worth().keepFrom()))
                .reduce(Length.ZERO, Length::plus);
    }

    private static Length held(Reel reel) {
        return reel.custody().held().stream().map(Held::length).reduce(Length.ZERO, Length::plus);
    }
}
