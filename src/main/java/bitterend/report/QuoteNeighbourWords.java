package bitterend.report;

import bitterend.quoting.Neighbour;
import bitterend.quoting.Neighbour.Variant;

/** A cheaper change in one sentence: {@code Line 2: 4.620 m costs 31 % more waste than 4.550 m (18.20 EUR, 13.90 EUR).} */
final class QuoteNeighbourWords {
    /** From so many times as much on it is said in times. */
    private static final int TIMES = 3;

    private final Figures figures;

    QuoteNeighbourWords(Figures figures) {
        this.figures = figures;
    }

    String of(Neighbour neighbour) {
        Variant asked = neighbour.asked();
        Variant better = neighbour.better();
        return "Line " + neighbour.line() + ": "
                + (neighbour.changesLength() ? length(asked, better) : quantity(asked, better));
    }

    private String length(Variant asked, Variant better) {
        return figures.briefly(asked.finished()) + " costs "
                + more(asked.waste().millis(), better.waste().millis()) + figures.briefly(better.finished()) + " ("
                + figures.money(asked.waste()) + " against " + figures.money(better.waste())
                + " for all pieces of this rope).";
    }

    private String more(long asked, long better) {
        if (better <= 0) {
            return "more waste than ";
        }
        return asked > TIMES * better
                ? "about " + (asked + better / 2) / better + " times the waste of "
                : figures.percent(asked - better, better, 0) + " % more waste than ";
    }

    private String quantity(Variant asked, Variant better) {
        return better.quantity() + " instead of " + asked.quantity() + " wastes " + percent(better)
                + " % of the rope in the pieces instead of " + percent(asked) + " %.";
    }

    private String percent(Variant variant) {
        return figures.percent(variant.waste().millis(), variant.worth().millis(), 1);
    }
}
