package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.List;

/**
 * A reel or coil that nobody is likely to want.
 *
 * @param reel as it stands
 * @param why one reason at least
 * @param weeks how many weeks of the rope's past use go by until it is used up, what comes before it used first and what
 *     booked work uses not counted; rounded up, {@link #NEVER} where none of the rope was used
 * @param booked whether orders in hand want its rope, though not this reel
 * @param worth by the curve that plans go by
 * @param holding what it costs to keep it another year
 * @param since the day on which something was last cut off it, else it came; {@link LocalDate#MIN} when not known
 */
public record IdleReel(
        Reel reel, List<Why> why, long weeks, boolean booked, Cost worth, Cost holding, LocalDate since) {
    /** Of a rope that nothing was cut of in the past. */
    public static final long NEVER = Long.MAX_VALUE;

    private static final int WEEKS_OF_A_YEAR = 52;

    public IdleReel {
        why = List.copyOf(why);
    }

    /** Why nobody is likely to want it. */
    public enum Why {
        /** Its last day is over. */
        PAST("its last day is over"),
        /** Its last day is near. */
        NEAR("its last day is near"),
        /** No piece of the past and none that is ordered fits on it. */
        NOTHING_FITS("no past or ordered piece fits"),
        /** It takes too long until it is used up. */
        LASTS("it lasts too long");

        private final String words;

        Why(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * What it costs to keep so much of a rope for a year: the interest on its price, rounded up to 1/1000 of the smallest coin,
     * and the room of 52 weeks.
     *
     * @param interest of a year
     * @param room what the place of one coil costs a week
     */
    public static Cost ofAYear(Length length, UnitPrice price, Ratio interest, Cost room) {
        return new Cost(interest.timesRoundedUp(price.of(length).millis())).plus(room.times(WEEKS_OF_A_YEAR));
    }
}
