package bitterend.report;

import bitterend.catalogue.Catalogue;
import bitterend.catalogue.Rope;
import bitterend.demand.Assembly;
import bitterend.demand.Measuring;
import bitterend.quoting.QuoteLine;
import java.util.ArrayList;
import java.util.List;

/** The words of a quote that its pages share. */
final class QuoteWords {
    private final Catalogue catalogue;
    private final Figures figures;

    QuoteWords(Catalogue catalogue, Figures figures) {
        this.catalogue = catalogue;
        this.figures = figures;
    }

    /** What a line is, as a customer would say it. */
    String what(QuoteLine line) {
        Assembly.Make make = line.assembly().make();
        List<String> parts = new ArrayList<>();
        if (!line.assembly().ordered().product().isEmpty()) {
            parts.add(line.assembly().ordered().product());
        }
        parts.add(rope(line));
        int legs = line.assembly().ordered().legs();
        parts.add((legs == 1 ? "" : legs + " legs of ") + figures.written(make.finished()) + " finished, "
                + between(make));
        parts.add(figures.written(EndsInWords.of(line.pieces().get(0).ends())));
        if (make.hang().isStated()) {
            parts.add("legs " + make.hang().angle().words()
                    + (make.hang().angle().isWide() ? ", above 60 degrees: ask a qualified rigger" : ""));
        }
        String certificate = line.assembly().terms().certificate();
        if (!certificate.isEmpty()) {
            parts.add("with certificate " + certificate);
        }
        return String.join("; ", parts);
    }

    private String rope(QuoteLine line) {
        String name = catalogue.findRope(line.rope()).map(Rope::name).orElse(line.rope());
        return line.ownRope() ? name + ", your own rope" : name;
    }

    private static String between(Assembly.Make make) {
        if (!make.measuring().points().equals(Measuring.Points.NONE)) {
            return make.measuring().words();
        }
        return switch (make.measuring().between()) {
            case BEARING_POINTS -> "pin to pin";
            case FLAT -> "pin to pin, eyes laid flat";
            case ON_PINS -> "on the pins stated";
            case OUTSIDE -> "over the outside";
            case CIRCUMFERENCE -> "inside circumference of the ring";
        };
    }
}
