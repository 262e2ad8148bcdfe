package bitterend.day;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.Sentence;
import bitterend.measure.UnitPrice;
import bitterend.measure.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a list says that came in, against what was ordered and what is on the rack.
 *
 * @param lines the reels of the list, in its order
 * @param missing reels of its orders that are not on it, by number
 * @param toKnow what else is to be known of it, in sentences
 */
public record Receipt(List<Line> lines, List<Ordered> missing, List<String> toKnow) {
    /** A reel may be one part in so many longer or shorter than it was ordered before it is looked at again. */
    private static final long OFF_ORDER = 4;

    /** The same of a reel that nobody ordered, against the usual reel of its rope: longer, and shorter. */
    private static final long OVER_USUAL = 5;

    private static final long UNDER_USUAL = 20;

    public Receipt {
        lines = List.copyOf(lines);
        missing = List.copyOf(missing);
        toKnow = List.copyOf(toKnow);
    }

    /**
     * Reels that were ordered.
     *
     * @param number the shop's number for the order of reels; empty where a reel is of none
     * @param length of each as it was ordered
     * @param quantity how many of them
     */
    public record Ordered(String number, String rope, Written length, int quantity) {
        /** Of no order. */
        public static final Ordered NONE = new Ordered("", "", Written.NOTHING, 0);

        /** Whether it was ordered. */
        public boolean isThere() {
            return !number.isEmpty();
        }
    }

    /**
     * Why a reel is looked at again before it is booked.
     *
     * @param takesAWord whether somebody may say that it is so; otherwise it cannot be
     */
    public record Apart(Sentence why, boolean takesAWord) {
        /** It cannot be booked so, whatever is said. */
        public static Apart never(String why) {
            return new Apart(Sentence.of(why), false);
        }

        /** It is booked by a word of who accepts the list. */
        public static Apart unlessSure(Sentence why) {
            return new Apart(why, true);
        }
    }

    /**
     * A reel of the list.
     *
     * @param place where it is in the list
     * @param reel its id
     * @param length as the list says
     * @param ordered what was ordered, where it is of an order
     * @param by how much longer it is than was ordered; negative for shorter; nothing where it was not ordered
     * @param money what so much of the rope costs to replace; negative for less
     * @param paid what was paid for it; null where nobody knows
     * @param apart why it is looked at again; nothing where it is booked
     */
    public record Line(
            String place,
            String reel,
            String rope,
            Written length,
            Ordered ordered,
            Length by,
            Cost money,
            @Nullable Money paid,
            List<Apart> apart) {
        public Line {
            apart = List.copyOf(apart);
        }

        /** A reel whose difference is worked out by the price of its rope, where that is known. */
        public static Line of(
                String place,
                String reel,
                String rope,
                Written length,
                Ordered ordered,
                Optional<UnitPrice> price,
                List<Apart> apart) {
            Length by = ordered.isThere()
                    ? length.roundedDown().minus(ordered.length().roundedDown())
                    : Length.ZERO;
            return new Line(place, reel, rope, length, ordered, by, CountedRack.worth(by, price), null, apart);
        }

        /** The same with what was paid for it. */
        public Line paid(Optional<Money> price) {
            return new Line(place, reel, rope, length, ordered, by, money, price.orElse(null), apart);
        }

        /** Whether it is booked, by a word of who accepts the list where it is set apart. */
        public boolean isBooked(Set<String> sure) {
            return apart.isEmpty() || (takesAWord() && sure.contains(reel));
        }

        /** Whether it can be booked, by a word of who accepts the list. */
        public boolean takesAWord() {
            return apart.stream().allMatch(Apart::takesAWord);
        }
    }

    /**
     * Why a length is hardly what came: more than a quarter longer or shorter than what was ordered; of a reel that was not ordered over five
     * times or under a twentieth of the usual reel. Our own choice, no source.
     *
     * @param usual the reel that is usually bought; nothing where that is not known
     */
    public static List<Apart> farOff(Length is, Ordered ordered, Optional<Length> usual) {
        List<Apart> apart = new ArrayList<>();
        if (ordered.isThere()) {
            Length was = ordered.length().roundedDown();
            if (OFF_ORDER * Math.abs(is.minus(was).mm()) > was.mm()) {
                apart.add(Apart.unlessSure(
                        Sentence.of("far off the ").and(ordered.length()).and(" that were ordered")));
            }
        } else {
            usual.filter(reel -> is.mm() > OVER_USUAL * reel.mm() || UNDER_USUAL * is.mm() < reel.mm())
                    .ifPresent(reel -> apart.add(Apart.unlessSure(
                            Sentence.of("far off the usual reel, ").and(reel))));
        }
        return apart;
    }

    /** Reels that are booked when the list is accepted. */
    public List<Line> sound() {
        return lines.stream().filter(line -> line.apart().isEmpty()).toList();
    }

    /** Reels that are looked at again first. */
    public List<Line> apart() {
        return lines.stream().filter(line -> !line.apart().isEmpty()).toList();
    }

    /** How much rope these reels are, each rounded down to the millimetre. */
    public static Length length(List<Line> lines) {
        return lines.stream().map(line -> line.length().roundedDown()).reduce(Length.ZERO, Length::plus);
    }

    /** How much more rope than was ordered; negative for less. */
    public static Length by(List<Line> lines) {
        return lines.stream().map(Line::by).reduce(Length.ZERO, Length::plus);
    }

    /** What that costs to replace; negative for less. */
    public static Cost money(List<Line> lines) {
        return lines.stream().map(Line::money).reduce(Cost.ZERO, Cost::plus);
    }
}
