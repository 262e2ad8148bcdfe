package bitterend.report;

import bitterend.catalogue.Rope;
import bitterend.demand.Derivation;
import bitterend.measure.FineLength;
import java.util.ArrayList;
import java.util.List;

/**
 * The amounts of a derivation as text, in the unit of {@link Figures#fineUnit}. Each is the nearest tenth of a millimetre or
 * sixteenth of an inch, and the rounding, which is the last, is what is left to the cut length: so they add up on paper,
 * too. The exact amounts are in the answer for other programs.
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
        List<String> lines = new ArrayList<>();
        long left = figures.fineSteps(cut);
        for (FineLength amount : amounts.subList(0, amounts.size() - 1)) {
            long steps = figures.fineSteps(amount);
            lines.add(figures.bareFine(steps));
            left -= steps;
        }
        lines.add(figures.bareFine(left));
        return new PrintedAmounts(lines, figures.bareFine(figures.fineSteps(cut)));
    }
}
