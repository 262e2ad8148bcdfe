package bitterend.report;

import bitterend.measure.Length;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilValue;
import bitterend.stock.worth.KeepLimit;

/** Which coils of a rope are kept and why, in words. */
final class CoilWords {
    private final Figures figures;

    CoilWords(Figures figures) {
        this.figures = figures;
    }

    /** {@code Coils of 7.020 m and more are kept; shorter ones are scrap, since ...}. */
    String kept(CoilValue value) {
        return value.keepFrom()
                .map(from -> "Coils of " + figures.length(from) + " and more are kept; shorter ones are scrap, "
                        + why(value))
                .orElseGet(() -> "No coil is kept: " + why(value));
    }

    /** The same in a few words beside a reel, by whichever curve is used. */
    String beside(StockValue value) {
        if (!(value instanceof CoilValue coils)) {
            return value.keepFrom().map(this::byOwnCurve).orElse("By the shop's own curve no coil is kept.");
        }
        return coils.keepFrom()
                .map(from -> KeepLimit.of(coils) == KeepLimit.COST
                        ? "A coil of this rope saves more today than its room and interest cost from "
                                + figures.length(from) + " on."
                        : "Coils of this rope are kept from " + figures.length(from) + " on, " + why(coils))
                .orElseGet(() -> "No coil of this rope is kept: " + why(coils));
    }

    private String byOwnCurve(Length from) {
        return "By the shop's own curve coils are kept from " + figures.length(from) + " on.";
    }

    private String why(CoilValue value) {
        return switch (KeepLimit.of(value)) {
            case FLOOR -> "since the shop keeps none below.";
            case SHORTEST_PIECE -> "since no piece that is counted on is so short.";
            case COST -> "since they save less than they cost until they are used.";
            case FLOOR_ABOVE_ALL -> "the shop keeps none below "
                    + figures.length(value.terms().floor()) + ", and none is so long.";
            case HOLDING -> "not even alone on the rack would one save the interest and room that it costs.";
            case RACK -> "so much of this rope is on the rack that another coil would wait too long.";
        };
    }
}
