package bitterend.stock.worth;

import bitterend.measure.Length;
import java.util.Optional;

/** What it is that bounds the coils to keep: why a shorter one is scrap, or why any is. */
public enum KeepLimit {
    /** The shop keeps none below its floor. */
    FLOOR,
    /** No piece that is counted on is shorter. */
    SHORTEST_PIECE,
    /** Shorter ones would cost more interest and room than they save. */
    COST,
    /** No coil is as long as the shop's floor. */
    FLOOR_ABOVE_ALL,
    /** Not even on an empty rack does any coil save its interest and room. */
    HOLDING,
    /** On an empty rack some would; on this one they would wait too long. */
    RACK;

    /** The limit of a curve. */
    public static KeepLimit of(CoilValue value) {
        return value.keepFrom().map(from -> kept(value, from)).orElseGet(() -> none(value));
    }

    private static KeepLimit kept(CoilValue value, Length from) {
        CoilTerms terms = value.terms();
        if (terms.floor().isPositive() && !from.isLongerThan(onGrid(terms.floor(), terms))) {
            return FLOOR;
        }
        return from.isLongerThan(onGrid(value.past().counts().firstKey(), terms)) ? COST : SHORTEST_PIECE;
    }

    private static KeepLimit none(CoilValue value) {
        CoilTerms terms = value.terms();
        if (terms.floor().isLongerThan(terms.grid().times(terms.steps()))) {
            return FLOOR_ABOVE_ALL;
        }
        Optional<Length> alone = value.on(Length.ZERO).keepFrom();
        return alone.isPresent() ? RACK : HOLDING;
    }

    private static Length onGrid(Length length, CoilTerms terms) {
        return new Length(
                -Math.floorDiv(-length.mm(), terms.grid().mm()) * terms.grid().mm());
    }
}
