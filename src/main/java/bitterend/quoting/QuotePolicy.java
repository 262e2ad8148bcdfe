package bitterend.quoting;

import bitterend.measure.Money;
import bitterend.measure.Ratio;

/**
 * How a shop makes a price. The defaults in {@code shop.json} are common practice without a source.
 *
 * @param waste which view of the waste is charged
 * @param floorAtRope whether no line may pay less than the rope in its pieces; this gives up the promise that no group of
 *     lines pays more than it would alone
 * @param work what time and breakage cost
 * @param surcharges what is put on top
 * @param parts what the parts of the pick list cost, where a request does not state its hardware
 * @param validDays days a price stands
 * @param letter what the shop says on every quote beside its prices
 */
public record QuotePolicy(
        WasteBasis waste,
        boolean floorAtRope,
        Work work,
        Surcharges surcharges,
        PartPrices parts,
        int validDays,
        Letter letter) {

    /** Of a shop that says nothing beside its prices. */
    public QuotePolicy(
            WasteBasis waste, boolean floorAtRope, Work work, Surcharges surcharges, PartPrices parts, int validDays) {
        this(waste, floorAtRope, work, surcharges, parts, validDays, Letter.NONE);
    }

    /**
     * What time and breakage cost.
     *
     * @param labour rate of an hour
     * @param setUpMinutes for each line
     * @param spoilage share of rope, waste, hardware and labour lost to work that goes wrong; not negative
     * @param packing for each assembly
     */
    public record Work(Money labour, int setUpMinutes, Ratio spoilage, Money packing) {}

    /**
     * What is put on top.
     *
     * @param overhead share of everything before it; not negative
     * @param margin share of the price; from 0, below 1
     * @param minimum the least a line is charged
     */
    public record Surcharges(Ratio overhead, Ratio margin, Money minimum) {
        public Surcharges {
            if (margin.isNegative() || margin.compareTo(Ratio.ONE) >= 0 || overhead.isNegative()) {
                throw new IllegalArgumentException("margin " + margin + ", overhead " + overhead);
            }
        }
    }

    /** The same with this beside its prices. */
    public QuotePolicy with(Letter said) {
        return new QuotePolicy(waste, floorAtRope, work, surcharges, parts, validDays, said);
    }

    /** For a shop that states nothing: the rate is known from elsewhere. */
    public static QuotePolicy usual(Money labour) {
        return new QuotePolicy(
                WasteBasis.ALONE,
                true,
                new Work(labour, 10, Ratio.percent(2), Money.ZERO),
                new Surcharges(Ratio.percent(15), Ratio.percent(20), Money.ZERO),
                PartPrices.NONE,
                30);
    }
}
