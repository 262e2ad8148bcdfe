package bitterend.buying;

import bitterend.catalogue.Rope;
import bitterend.history.Resampling;
import bitterend.market.Offer;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import bitterend.packing.Prices;
import bitterend.stock.StockValue;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The question which reels of one rope suit work like that of the past. Pieces stand alone in it: matched sets,
 * certificates and substitutes are not looked at, and the rack is empty at first.
 *
 * @param rope the rope
 * @param worth what coils of it are worth on a rack
 * @param prices of the bench
 * @param options ways to buy, each holding every piece
 * @param tooShort ways to buy whose reels do not hold every piece
 * @param weeks cut lengths of each week of the past; those that no offer holds are left out
 * @param unheld cut lengths that no offer holds, the longest first
 * @param size how many scenarios of how many weeks, and from which seed
 */
public record Study(
        Rope rope,
        RackWorth worth,
        Prices prices,
        List<Option> options,
        List<Option> tooShort,
        List<List<Length>> weeks,
        List<Length> unheld,
        Size size) {

    public Study {
        options = List.copyOf(options);
        tooShort = List.copyOf(tooShort);
        weeks = List.copyOf(weeks);
        unheld = List.copyOf(unheld);
    }

    /**
     * How large a study is.
     *
     * @param seed of every draw
     * @param scenarios how many scenarios; at least 4, so that one half can choose and the other report
     * @param weeks how many weeks each has; at least 1
     */
    public record Size(long seed, int scenarios, int weeks) {
        public Size {
            if (scenarios < 4 || weeks < 1) {
                throw new IllegalArgumentException("scenarios " + scenarios + ", weeks " + weeks);
            }
        }
    }

    /** A study with one value curve, whatever is on the rack, capped at the cheapest offer by the metre. */
    public static Study ofOneCurve(
            Rope rope, StockValue value, Prices prices, List<Offer> offers, List<List<Length>> weeks, Size size) {
        Optional<UnitPrice> cheapest = Offer.cheapest(rope.id(), offers).map(Offer::byMetre);
        StockValue capped =
                cheapest.<StockValue>map(price -> new CappedValue(value, price)).orElse(value);
        return of(rope, RackWorth.always(capped), prices, offers, weeks, size);
    }

    /** The study of the offers of this rope that can be planned for; there must be at least one. */
    public static Study of(
            Rope rope, RackWorth worth, Prices prices, List<Offer> offers, List<List<Length>> weeks, Size size) {
        List<Offer> ours = offers.stream()
                .filter(offer -> offer.rope().equals(rope.id()) && offer.plannable())
                .toList();
        if (ours.isEmpty() || weeks.isEmpty()) {
            throw new IllegalArgumentException(rope.id() + ": " + ours.size() + " offers, " + weeks.size() + " weeks");
        }
        Length held = new Option(ours).longest();
        List<List<Length>> makeable = weeks.stream()
                .map(week ->
                        week.stream().filter(cut -> !cut.isLongerThan(held)).toList())
                .toList();
        Length longest = makeable.stream().flatMap(List::stream).reduce(Length.ZERO, Length::max);
        return new Study(
                rope,
                worth,
                withoutOrders(prices),
                Option.allOf(ours).stream()
                        .filter(option -> !longest.isLongerThan(option.longest()))
                        .toList(),
                Option.allOf(ours).stream()
                        .filter(option -> longest.isLongerThan(option.longest()))
                        .toList(),
                makeable,
                weeks.stream()
                        .flatMap(List::stream)
                        .filter(cut -> cut.isLongerThan(held))
                        .sorted(Comparator.reverseOrder())
                        .toList(),
                size);
    }

    /** The same with another worth of coils. */
    Study valuedBy(RackWorth other) {
        return new Study(rope, other, prices, options, tooShort, weeks, unheld, size);
    }

    /** The weeks of one scenario, as places in {@link #weeks}. */
    int[] weeksOf(int scenario) {
        return new Resampling(size.seed(), weeks.size(), size.weeks()).weeksOf(scenario);
    }

    private static Prices withoutOrders(Prices prices) {
        return new Prices(
                prices.opening(),
                prices.changing(),
                prices.handling(),
                bitterend.measure.Cost.ZERO,
                bitterend.measure.Cost.ZERO,
                bitterend.measure.Cost.ZERO);
    }
}
