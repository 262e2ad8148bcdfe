package bitterend.report;

import bitterend.quoting.Neighbour;
import bitterend.quoting.Neighbour.Variant;

/** A cheaper change in one sentence: {@code Line 2: 4.620 m costs 31 % more waste than 4.550 m (18.20 EUR, 13.90 EUR).} */
final class QuoteNeighbourWords {
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
        String more = better.waste().millis() > 0
                ? figures.percent(
                                asked.waste().minus(better.waste()).millis(),
                                better.waste().millis(),
                                0) + " % more waste than "
                : "more waste than ";
        return figures.briefly(asked.finished()) + " costs " + more + figures.briefly(better.finished()) + " ("
                + figures.money(asked.waste()) + " against " + figures.money(better.waste())
                + " for all pieces of this rope).";
    }

    private String quantity(Variant asked, Variant better) {
        return better.quantity() + " instead of " + asked.quantity() + " wastes " + percent(better)
                + " % of the rope in the pieces instead of " + percent(asked) + " %.";
    }

    private String percent(Variant variant) {
        return figures.percent(variant.waste().millis(), variant.worth().millis(), 1);
    }
}
