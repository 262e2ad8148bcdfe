package bitterend.stock.worth;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import bitterend.stock.StockValue;
import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The worth of a coil by what it saves later, less interest and room until then, on a rack that holds so many metres of
 * that rope in the morning. It stays the same all day, whatever is cut. A full reel is worth its price until it is opened.
 */
public final class CoilValue implements StockValue {
    private final PastCuts past;
    private final CoilTerms terms;
    private final Length rack;
    private final int hash;
    /** Worked out when it is asked for: many a question about a shop asks for no worth at all. */
    private volatile @Nullable Worked worked;

    private static final class Worked {
        private final UnitPrice own;
        private final long[] steps;

        Worked(UnitPrice own, long[] steps) {
            this.own = own;
            this.steps = steps;
        }
    }

    /**
     * A curve that was worked out before.
     *
     * @param own the shop's own price of a metre
     * @param rack metres of coils on the rack in the morning
     * @param steps worth at each step of the grid, from nothing, in 1/1000 minor unit; never falling
     */
    public CoilValue(PastCuts past, CoilTerms terms, UnitPrice own, Length rack, long[] steps) {
        this(past, terms, rack);
        worked = new Worked(own, steps.clone());
        boolean rises = steps.length == terms.steps() + 1 && steps[0] == 0;
        for (int i = 1; i < steps.length; i++) {
            rises &= steps[i] >= steps[i - 1];
        }
        if (!rises) {
            throw new IllegalArgumentException("a worth for each step that never falls, and metres on the rack: "
                    + steps.length + " for " + terms.steps() + ", " + rack);
        }
    }

    private CoilValue(PastCuts past, CoilTerms terms, Length rack) {
        if (rack.isNegative()) {
            throw new IllegalArgumentException("metres on the rack: " + rack);
        }
        this.past = past;
        this.terms = terms;
        this.rack = rack;
        hash = Objects.hash(past, terms, rack);
    }

    /** The curve of a morning. */
    public static CoilValue of(PastCuts past, CoilTerms terms, Length rack) {
        return new CoilValue(past, terms, rack);
    }

    /** The curve of the same rope on another rack. */
    public CoilValue on(Length otherRack) {
        UnitPrice own = own();
        return otherRack.equals(rack)
                ? this
                : new CoilValue(past, terms, own, otherRack, new CoilFormula(past, terms).steps(own, otherRack));
    }

    private Worked worked() {
        Worked there = worked;
        return there == null ? workedOut() : there;
    }

    private synchronized Worked workedOut() {
        Worked there = worked;
        if (there == null) {
            CoilFormula formula = new CoilFormula(past, terms);
            UnitPrice own = formula.ownPrice();
            there = new Worked(own, formula.steps(own, rack));
            worked = there;
        }
        return there;
    }

    @Override
    public Cost of(Length length) {
        long[] steps = worked().steps;
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
        return worked().own;
    }

    /** Metres of coils on the rack in the morning. */
    public Length rack() {
        return rack;
    }

    /** Worth at each step of the grid, from nothing. */
    public long[] steps() {
        return worked().steps.clone();
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof CoilValue that
                        && hash == that.hash
                        && past.equals(that.past)
                        && terms.equals(that.terms)
                        && rack.equals(that.rack)
                        && own().equals(that.own())
                        && Arrays.equals(worked().steps, that.worked().steps));
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
