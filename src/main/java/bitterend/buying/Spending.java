package bitterend.buying;

import bitterend.measure.Money;

/**
 * How far a shop may go when it buys.
 *
 * @param budget the most that is paid to suppliers; {@link #ANY} for no limit
 * @param mostWeeks the most weeks of work that the rope of one kind may last; {@link #FOREVER} for no limit
 */
public record Spending(Money budget, int mostWeeks) {
    public static final Money ANY = new Money(Long.MAX_VALUE);
    public static final int FOREVER = Integer.MAX_VALUE;

    /** No limit. */
    public static final Spending UNLIMITED = new Spending(ANY, FOREVER);

    public Spending {
        if (budget.minor() < 0 || mostWeeks < 1) {
            throw new IllegalArgumentException("budget " + budget + ", weeks " + mostWeeks);
        }
    }

    /** Whether there is a most to be paid. */
    public boolean hasBudget() {
        return !budget.equals(ANY);
    }

    /** Whether there is a most of weeks. */
    public boolean hasMostWeeks() {
        return mostWeeks != FOREVER;
    }
}
