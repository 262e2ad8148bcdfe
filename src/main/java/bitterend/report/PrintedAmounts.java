package bitterend.report;

import bitterend.catalogue.Rope;
import bitterend.demand.Derivation;
import bitterend.measure.FineLength;
import bitterend.measure.Units;
import java.util.ArrayList;
import java.util.List;

/**
 * The amounts of a derivation as text, in the unit of {@link Figures#fineUnit}. In millimetres they are exact. In inches
 * each is the nearest sixteenth, as on every page, and the rounding, which is the last, is what is left to the cut length:
 * so they add up on paper too.
 *
 * @param lines one for each line
 * @param sum the cut length
 */
public record PrintedAmounts(List<String> lines, String sum) {
    public PrintedAmounts {
        lines = List.copyOf(lines);
    }

    /** @param rope the rope it is derived for */
    public static PrintedAmounts of(Derivation derivation, Rope rope, Figures figures) {
        FineLength cut = rope.cutting().exactly(derivation.cut());
        List<FineLength> amounts =
                derivation.lines().stream().map(Derivation.Line::amount).toList();
        if (figures.units() == Units.METRIC) {
            return new PrintedAmounts(
                    amounts.stream().map(figures::fine).toList(),
                    figures.fine(derivation.cut().fine()));
        }
        List<String> lines = new ArrayList<>();
        long left = figures.steps(cut);
        for (FineLength amount : amounts.subList(0, amounts.size() - 1)) {
            long steps = figures.steps(amount);
            lines.add(figures.bareTape(steps));
            left -= steps;
        }
        lines.add(figures.bareTape(left));
        return new PrintedAmounts(lines, figures.bareTape(figures.steps(cut)));
    }
}
