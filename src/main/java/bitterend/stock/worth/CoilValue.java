package bitterend.stock.worth;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import bitterend.stock.StockValue;
import java.util.Arrays;

/**
 * The worth of a coil by what it saves later, less interest and room until then, on a rack that holds so many metres of
 * that rope in the morning. It stays the same all day, whatever is cut. A full reel is worth its price until it is opened.
 */
public final class CoilValue implements StockValue {
    private final PastCuts past;
    private final CoilTerms terms;
    private final UnitPrice own;
    private final Length rack;
    private final long[] steps;
    private final int hash;

    /**
     * A curve that was worked out before.
     *
     * @param own the shop's own price of a metre
     * @param rack metres of coils on the rack in the morning
     * @param steps worth at each step of the grid, from nothing, in 1/1000 minor unit; never falling
     */
    public CoilValue(PastCuts past, CoilTerms terms, UnitPrice own, Length rack, long[] steps) {
        this.past = past;
        this.terms = terms;
        this.own = own;
        this.rack = rack;
        this.steps = steps.clone();
        hash = 31 * Arrays.hashCode(steps) + terms.hashCode();
        boolean rises = steps.length == terms.steps() + 1 && steps[0] == 0 && !rack.isNegative();
        for (int i = 1; i < steps.length; i++) {
            rises &= steps[i] >= steps[i - 1];
        }
        if (!rises) {
            throw new IllegalArgumentException("a worth for each step that never falls, and metres on the rack: "
                    + steps.length + " for " + terms.steps() + ", " + rack);
        }
    }

    /** The curve of a morning. */
    public static CoilValue of(PastCuts past, CoilTerms terms, Length rack) {
        CoilFormula formula = new CoilFormula(past, terms);
        UnitPrice own = formula.ownPrice();
        return new CoilValue(past, terms, own, rack, formula.steps(own, rack));
    }

    /** The curve of the same rope on another rack. */
    public CoilValue on(Length otherRack) {
        return otherRack.equals(rack)
                ? this
                : new CoilValue(past, terms, own, otherRack, new CoilFormula(past, terms).steps(own, otherRack));
    }

    @Override
    public Cost of(Length length) {
        long step = Math.floorDiv(length.mm(), terms.grid().mm());
        return new Cost(steps[(int) Math.min(steps.length - 1, Math.max(0, step))]);
    }

    @Override
    public Cost unopened(Length length) {
        Cost worth = of(length);
        Cost price = terms.price().of(length);
        return price.compareTo(worth) > 0 ? price : worth;
    }

    /** The work of the past that it rests on. */
    public PastCuts past() {
        return past;
    }

    /** What money and place cost. */
    public CoilTerms terms() {
        return terms;
    }

    /** The shop's own price of a metre: scrap, interest and room of its usual reel are in it. */
    public UnitPrice own() {
        return own;
    }

    /** Metres of coils on the rack in the morning. */
    public Length rack() {
        return rack;
    }

    /** Worth at each step of the grid, from nothing. */
    public long[] steps() {
        return steps.clone();
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof CoilValue that
                        && hash == that.hash
                        && past.equals(that.past)
                        && terms.equals(that.terms)
                        && own.equals(that.own)
                        && rack.equals(that.rack)
                        && Arrays.equals(steps, that.steps));
    }

    @Override
    public int hashCode() {
        return hash;
    }

    @Override
    public String toString() {
        return "coil value of " + terms + ", " + rack + " on the rack";
    }
}
