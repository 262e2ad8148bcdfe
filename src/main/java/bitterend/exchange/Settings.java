package bitterend.exchange;

import bitterend.buying.Spending;
import bitterend.catalogue.BenchTools;
import bitterend.day.BenchHours;
import bitterend.exchange.form.LocalForm;
import bitterend.measure.Cost;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.Units;
import bitterend.packing.Prices;
import bitterend.packing.ShopCalendar;
import bitterend.quoting.QuotePolicy;
import bitterend.stock.LoftAddress;
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
 * @param holding what it costs to hold a coil
 * @param cutting allowances of a cut where a rope states none
 * @param bench what the bench measures with
 * @param quote how prices for customers are made
 * @param lateness how much later than expected reels on order usually come
 * @param brake how many times the usual urgent work is kept while rope is short; 0 for no brake on cutting ahead
 * @param service share of the pieces for which rope is to be there in the week of their order, from 0, below 1
 * @param spending how far the shop goes when it buys for orders in hand
 * @param locale how days and figures are typed on the page
 * @param ledger the loft on a server that the ledger is; none where it is a file of the shop folder
 */
public record Settings(
        String name,
        Units units,
        MoneyText money,
        LocalDate day,
        ShopCalendar calendar,
        Prices prices,
        Holding holding,
        Cutting cutting,
        Bench bench,
        QuotePolicy quote,
        ShopCalendar.Ahead lateness,
        int brake,
        Ratio service,
        Spending spending,
        LocalForm locale,
        LoftAddress ledger) {
    /** Of 0, 4 and 8 the one that protects most at little cost where rope is ample, by trial on invented ropes. */
    public static final int USUAL_BRAKE = 8;

    /** Our own choice, no source: 97 pieces of 100 in time. */
    public static final Ratio USUAL_SERVICE = Ratio.percent(97);

    /** The most that may be kept. */
    public static final int MOST_BRAKE = 99;

    /** The most that is paid to suppliers at once, as somebody types it. */
    public Parsed<Money> budget(String text) {
        return ShopJson.budget(text, money);
    }

    /**
     * What it costs to hold a coil; not both nothing, or nothing would speak against filling the rack.
     *
     * @param interest of a year on what lies there
     * @param room what the place of one coil costs a week, with the care for it
     */
    public record Holding(Ratio interest, Cost room) {
        /** Common practice, no source: 12 % a year. */
        static final Ratio USUAL_INTEREST = Ratio.percent(12);
    }

    /**
     * How the bench works.
     *
     * @param tools what its splicers measure with
     * @param code the region's code that holds; empty when none is stated
     * @param hours the hours its people work, and what cutting takes of them
     */
    public record Bench(BenchTools tools, String code, BenchHours hours) {}

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
