package bitterend.buying.steady;

import bitterend.measure.Length;
import java.util.List;

/**
 * The rack that futures start from, of one rope.
 *
 * @param today whether it is the rack there is; else none of it is known, and a rack warms up before anything counts
 * @param coils what may be cut of each reel that is there
 * @param coming reels on order
 * @param waiting cut lengths that are ordered and not cut
 */
public record StartingRack(boolean today, List<Length> coils, List<Coming> coming, List<Length> waiting) {
    /** A rack that warms up. */
    public static final StartingRack WARMS_UP = new StartingRack(false, List.of(), List.of(), List.of());

    public StartingRack {
        coils = List.copyOf(coils);
        coming = List.copyOf(coming);
        waiting = List.copyOf(waiting);
    }

    /**
     * A reel on order.
     *
     * @param week before which it is put up; 0 is the first
     * @param length that can be counted on
     */
    public record Coming(int week, Length length) {}

    /** The same without what waits and fits on nothing that is there, comes, or can be bought up to a length. */
    StartingRack makeable(Length longestBought) {
        Length longest = Length.max(
                longestBought,
                Length.max(
                        coils.stream().reduce(Length.ZERO, Length::max),
                        coming.stream().map(Coming::length).reduce(Length.ZERO, Length::max)));
        return new StartingRack(
                today,
                coils,
                coming,
                waiting.stream().filter(cut -> !cut.isLongerThan(longest)).toList());
    }

    /** Reels that are put up before a week, in millimetres. */
    int[] arriving(int week) {
        return coming.stream()
                .filter(each -> each.week() == week)
                .mapToInt(each -> millimetres(each.length()))
                .toArray();
    }

    /** Millimetres that come later than before a week, and no more than so many weeks later. */
    long later(int week, int weeks) {
        return coming.stream()
                .filter(each -> each.week() > week && each.week() - week <= weeks)
                .mapToLong(each -> each.length().mm())
                .sum();
    }

    /** Whether a reel that comes later than before a week holds a piece. */
    boolean holdsLater(int week, int piece) {
        return coming.stream()
                .anyMatch(each -> each.week() > week && each.length().mm() >= piece);
    }

    static int millimetres(Length length) {
        return (int) Math.min(SizeOnOffer.LONGEST, length.mm());
    }
}
