package bitterend.exchange;

import bitterend.catalogue.BenchTools;
import bitterend.measure.Cost;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.MoneyText;
import bitterend.measure.Ratio;
import bitterend.measure.Units;
import bitterend.packing.Prices;
import bitterend.packing.ShopCalendar;
import bitterend.quoting.QuotePolicy;
import java.time.LocalDate;

/**
 * What {@code shop.json} says.
 *
 * @param name name of the shop, as printed
 * @param units system that lengths are printed in
 * @param money the shop's currency
 * @param day the day the rope is cut; {@link LocalDate#MIN} when the file leaves it to today
 * @param calendar days off, and how far ahead work is urgent
 * @param prices what the soft rules cost
 * @param value what the stock value curve needs beyond the rope's own lengths
 * @param cutting allowances of a cut where a rope states none
 * @param bench what the bench measures with
 * @param quote how prices for customers are made
 */
public record Settings(
        String name,
        Units units,
        MoneyText money,
        LocalDate day,
        ShopCalendar calendar,
        Prices prices,
        Value value,
        Cutting cutting,
        Bench bench,
        QuotePolicy quote) {

    /**
     * What the stock value curve needs.
     *
     * @param shareAtKeepFrom share of the price that the shortest remnant worth keeping has, 0 to 1
     * @param coilCharge charge per kept coil
     */
    public record Value(Ratio shareAtKeepFrom, Cost coilCharge) {}

    /**
     * How the bench works.
     *
     * @param tools what its splicers measure with
     * @param code the region's code that holds; empty when none is stated
     */
    public record Bench(BenchTools tools, String code) {}

    /**
     * What a cut costs and how it is rounded.
     *
     * @param fibre for ropes of synthetic fibre, cut hot
     * @param whipped for ropes cut between whippings: natural fibre and aramid, which cannot be cut hot
     * @param wire for wire rope
     * @param fibreToNearest cut lengths of fibre rope are rounded up to a multiple of this
     * @param wireToNearest the same for wire rope
     */
    public record Cutting(
            Length fibre, Length whipped, Length wire, FineLength fibreToNearest, FineLength wireToNearest) {}
}
