package bitterend.buying.reorder;

import bitterend.measure.Length;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/**
 * What there is of a rope against what is booked.
 *
 * @param free certain rope on the rack that any order may have, and what is kept for orders that are booked
 * @param coming reels on order, by the day on which each is counted on
 * @param booked what is ordered and not cut, with the loss of every cut
 * @param longest the longest piece that is booked; nothing where none is
 * @param shortFrom the first day for which more is booked than there is and comes by then; {@link LocalDate#MAX} where there is
 *     none, and where what is booked has no day
 * @param waiting what is booked, piece by piece, and the stretches for it
 */
public record Position(
        Length free, List<Coming> coming, Length booked, Length longest, LocalDate shortFrom, Waiting waiting) {
    /** Of which nothing is there and nothing is booked. */
    static final Position NOTHING =
            new Position(Length.ZERO, List.of(), Length.ZERO, Length.ZERO, LocalDate.MAX, Waiting.NOTHING);

    public Position {
        coming = coming.stream().sorted(Comparator.comparing(Coming::day)).toList();
    }

    /**
     * Reels on order.
     *
     * @param order its number
     * @param day from which they are counted on
     * @param length that can be counted on, of all that are still to come
     */
    public record Coming(String order, LocalDate day, Length length) {}

    /** What comes by a day, that day included. */
    public Length comingBy(LocalDate day) {
        return coming.stream()
                .filter(each -> !each.day().isAfter(day))
                .map(Coming::length)
                .reduce(Length.ZERO, Length::plus);
    }

    /** How much more is booked than there is and ever comes; nothing where that is not so. */
    public Length beyond() {
        return Length.max(Length.ZERO, Length.ZERO.minus(leftBy(LocalDate.MAX)));
    }

    /** What is left by a day for work that nobody has ordered yet; negative where more is booked. */
    public Length leftBy(LocalDate day) {
        return free.plus(comingBy(day)).minus(booked);
    }
}
