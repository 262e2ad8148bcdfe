package bitterend.stock.worth;

import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The definition of the curve taken at its word: every set of past lengths that fit is tried. Only for few lengths. */
final class EverySet {
    private EverySet() {}

    static double[] values(PastCuts past, CoilTerms terms, UnitPrice own, Length rack) {
        double grid = terms.grid().mm() / 1000.0;
        double week = past.rope().mm() / 1000.0 / past.weeks();
        double mean = past.rope().mm() / 1000.0 / past.pieces();
        double interest =
                (double) terms.interest().numerator() / terms.interest().denominator() / 52;
        double[] values = new double[terms.steps() + 1];
        for (int step = 1; step < values.length; step++) {
            double x = step * grid;
            double weeks = (rack.mm() / 1000.0 + x) / week / Math.max(1, x / mean);
            double cost = weeks
                    * past.pieces()
                    * (terms.room().millis() + interest * terms.price().millisPerMetre() * x);
            List<double[]> fitting = new ArrayList<>();
            for (Map.Entry<Length, Long> cut : past.counts().entrySet()) {
                int cells = (int)
                        Math.ceil(cut.getKey().mm() / (double) terms.grid().mm());
                if (cells <= step) {
                    double gain = own.millisPerMetre() * (cut.getKey().mm() / 1000.0) + values[step - cells];
                    fitting.add(new double[] {cut.getValue(), gain});
                }
            }
            double best = Math.max(0, values[step - 1]);
            for (int set = 1; set < 1 << fitting.size(); set++) {
                double counts = 0;
                double sum = -cost;
                for (int i = 0; i < fitting.size(); i++) {
                    if ((set >> i & 1) == 1) {
                        counts += fitting.get(i)[0];
                        sum += fitting.get(i)[0] * fitting.get(i)[1];
                    }
                }
                best = Math.max(best, sum / counts);
            }
            values[step] = best;
        }
        return values;
    }
}
