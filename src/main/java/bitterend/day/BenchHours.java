package bitterend.day;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;

/**
 * The hours that the people at the bench work together, and what cutting takes of them.
 *
 * @param hours minutes by weekday, all people together; empty where the shop states none
 * @param cut minutes to measure, cut, seal and tag one piece
 * @param fetch minutes to bring a reel, mount it and put it back
 */
public record BenchHours(Map<DayOfWeek, Integer> hours, int cut, int fetch) {
    /** Common practice, no source. */
    public static final int USUAL_CUT = 3;
    /** Common practice, no source. */
    public static final int USUAL_FETCH = 4;
    /** Of a shop that states no hours. */
    public static final BenchHours NONE = new BenchHours(Map.of(), USUAL_CUT, USUAL_FETCH);

    public BenchHours {
        Map<DayOfWeek, Integer> copy = new EnumMap<>(DayOfWeek.class);
        hours.forEach((day, minutes) -> {
            if (minutes > 0) {
                copy.put(day, minutes);
            }
        });
        hours = Map.copyOf(copy);
    }

    /** Whether the shop states its hours. */
    public boolean areStated() {
        return !hours.isEmpty();
    }

    /** Minutes there are on a day on which the shop works. */
    public int on(LocalDate day) {
        return hours.getOrDefault(day.getDayOfWeek(), 0);
    }

    /**
     * Working days between the cut and the due day that the ends of an order line take: as many days of usual length as its
     * labour fills, the day of the cut being the first. None where no hours are stated.
     *
     * @param labour minutes of the whole line
     */
    public int finishing(long labour) {
        if (hours.isEmpty() || labour == 0) {
            return 0;
        }
        long week = hours.values().stream().mapToLong(Integer::longValue).sum();
        long days = -Math.floorDiv(-labour * hours.size(), week);
        return (int) Math.min(days - 1, Integer.MAX_VALUE);
    }
}
