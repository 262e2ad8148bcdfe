package bitterend.day;

import bitterend.finding.NaturalOrder;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import bitterend.stock.Counted;
import bitterend.stock.Holding;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What a count of the rack found against what the ledger has.
 *
 * @param lines what was counted of reels that are in the ledger, by place
 * @param uncounted reels that nobody counted, by place
 * @param strangers what was found and is in no book
 */
public record CountedRack(List<Line> lines, List<Reel> uncounted, List<Counted> strangers) {
    /** Reels in the order in which one walks past them. */
    public static final Comparator<Reel> WALK = Comparator.comparing(
                    (Reel reel) -> reel.where().place(), NaturalOrder.IDS)
            .thenComparing(Reel::id, NaturalOrder.IDS);

    public CountedRack {
        lines = List.copyOf(lines);
        uncounted = List.copyOf(uncounted);
        strangers = List.copyOf(strangers);
    }

    /** Why a line is looked at again before it is booked. */
    public enum Apart {
        NO("", false),
        /** Further off the books than a person's word is taken for at the bench. */
        FAR("far off", true),
        MISSING("not found", true),
        /** Something was booked of it since it was counted. */
        SINCE("booked since", false);

        private final String words;
        private final boolean takesAWord;

        Apart(String words, boolean takesAWord) {
            this.words = words;
            this.takesAWord = takesAWord;
        }

        /** Why, in words. */
        public String words() {
            return words;
        }
    }

    /**
     * A reel that was counted.
     *
     * @param counted what was found of it
     * @param book what the ledger has
     * @param by how much more was found than the ledger has; negative for less
     * @param money what so much of the rope costs to replace; negative for less
     * @param apart why it is looked at again
     */
    public record Line(Counted counted, Reel book, Length by, Cost money, Apart apart) {
        /** Whether the ledger stays as it is: the rope is as long as it says, or as much shorter as it said that it may be. */
        public boolean agrees() {
            Length least = Length.ZERO.minus(book.contents().uncertainty());
            return counted.found() == Counted.Found.THERE && !by.isPositive() && !by.isShorterThan(least);
        }

        /** Whether it is booked, by a word of who accepts the count where it is set apart. */
        public boolean isBooked(Set<String> sure) {
            return !agrees() && (apart == Apart.NO || (apart.takesAWord && sure.contains(counted.reel())));
        }
    }

    /**
     * Holds a count against the ledger.
     *
     * @param counted what was found; of a reel that was counted twice the last counts
     * @param there the reels on the rack
     * @param price what a rope costs to replace, where that is known
     */
    public static CountedRack of(
            List<Counted> counted, List<Holding> there, Function<String, Optional<UnitPrice>> price) {
        Map<String, Counted> found = new TreeMap<>(NaturalOrder.IDS);
        counted.forEach(each -> found.put(each.reel(), each));
        List<Line> lines = new ArrayList<>();
        List<Reel> uncounted = new ArrayList<>();
        there.stream().sorted(Comparator.comparing(Holding::reel, WALK)).forEach(holding -> {
            Counted count = found.remove(holding.id());
            if (count == null) {
                uncounted.add(holding.reel());
            } else {
                lines.add(line(count, holding, price.apply(holding.reel().rope())));
            }
        });
        return new CountedRack(lines, uncounted, List.copyOf(found.values()));
    }

    private static Line line(Counted count, Holding holding, Optional<UnitPrice> price) {
        Reel book = holding.reel();
        Length is = count.length().roundedDown();
        Length by = is.minus(book.length());
        return new Line(count, book, by, worth(by, price), apart(count, holding, is));
    }

    /** What so much of a rope costs to replace; negative for less; nothing where its price is not known. */
    static Cost worth(Length by, Optional<UnitPrice> price) {
        Cost worth = price.map(each -> each.of(new Length(Math.abs(by.mm())))).orElse(Cost.ZERO);
        return by.isNegative() ? Cost.ZERO.minus(worth) : worth;
    }

    private static Apart apart(Counted count, Holding holding, Length is) {
        if (count.isBefore(holding)) {
            return Apart.SINCE;
        }
        if (count.found() == Counted.Found.MISSING) {
            return Apart.MISSING;
        }
        return MeasuredPiece.isFarOff(is, holding.reel().length()) ? Apart.FAR : Apart.NO;
    }

    /** Lines that agree with the ledger. */
    public List<Line> agreeing() {
        return lines.stream().filter(Line::agrees).toList();
    }

    /** Lines that are booked when the count is accepted. */
    public List<Line> differing() {
        return lines.stream()
                .filter(line -> !line.agrees() && line.apart() == Apart.NO)
                .toList();
    }

    /** Lines that are looked at again first. */
    public List<Line> apart() {
        return lines.stream()
                .filter(line -> !line.agrees() && line.apart() != Apart.NO)
                .toList();
    }

    /** How much more rope than the ledger has these lines found; negative for less. */
    public static Length by(List<Line> lines) {
        return lines.stream().map(Line::by).reduce(Length.ZERO, Length::plus);
    }

    /** What that costs to replace; negative for less. */
    public static Cost money(List<Line> lines) {
        return lines.stream().map(Line::money).reduce(Cost.ZERO, Cost::plus);
    }
}
