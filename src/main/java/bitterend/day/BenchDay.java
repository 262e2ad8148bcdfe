package bitterend.day;

import java.time.LocalDate;
import java.util.List;

/**
 * What one day asks of the bench, in minutes.
 *
 * @param day a working day
 * @param there what the people at the bench work together
 * @param fetching fetching its reels
 * @param cutting cutting its pieces
 * @param splicing splicing, as far as the day has room for it: what is due first comes first
 * @param over by how much it is too full: cutting that it has no room for, and splicing that is due and not done
 * @param leave pieces that are cut ahead on the day and may wait, what is needed last in front, as many as make room
 * @param late order lines that are due on the day and not done
 * @param earlier what would help those: an earlier day with room, and reels that may be cut then; {@link Earlier#NONE} for
 *     none
 */
public record BenchDay(
        LocalDate day,
        int there,
        int fetching,
        int cutting,
        int splicing,
        int over,
        List<String> leave,
        List<String> late,
        Earlier earlier) {
    public BenchDay {
        leave = List.copyOf(leave);
        late = List.copyOf(late);
    }

    /**
     * Reels that could be cut on an earlier day.
     *
     * @param day the first day with room
     * @param reels reels of later days with rope for what is late, as many as there is room for, at least one
     */
    public record Earlier(LocalDate day, List<String> reels) {
        public static final Earlier NONE = new Earlier(LocalDate.MAX, List.of());

        public Earlier {
            reels = List.copyOf(reels);
        }
    }

    /** The same with what would help. */
    BenchDay helpedBy(Earlier reels) {
        return new BenchDay(day, there, fetching, cutting, splicing, over, leave, late, reels);
    }

    /** Minutes that nothing asks for. */
    public int room() {
        return Math.max(0, there - fetching - cutting - splicing);
    }

    /** Whether it cannot be done in the hours there are. */
    public boolean isTooFull() {
        return over > 0;
    }

    /** All it asks for that it has room for. */
    public int used() {
        return fetching + cutting + splicing;
    }
}
