package bitterend.stock.worth;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import java.util.SortedMap;

/**
 * The curve of one rope on one morning.
 *
 * <p>A coil of x metres waits for the pieces A of the past that suit it best; all others are cut elsewhere at the price
 * p*. With c the counts of the past, C their sum, D metres a week, w the mean piece, M the metres of coils on the rack, i
 * the interest and s the room of a week, p the price of new rope:
 *
 * <pre>
 * T(x) = (M + x) / D / max(1, x / w)                           weeks from one cut off this coil to the next, were any piece to do
 * V(x) = max(0, V(x - g), max over A of [ sum_A c (p* a + V(x - a)) - T(x) C (s + i p x) ] / sum_A c)
 * </pre>
 *
 * <p>The greatest over A is the reservation value R of a search with a cost by the draw, the root of
 * {@code sum c max(0, p* a + V(x - a) - R) = T C (s + i p x)}: the left side is convex and falls, so Newton's steps from
 * below arrive from one side and end. What no coil of the curve can hold is cut elsewhere. Past lengths are rounded up to the grid, coils down. The form was worked out for
 * this program; that of the search is common in economics (from memory).
 *
 * <p>p* is the price at which an empty rack values the usual reel at what is paid for it: it puts average scrap, interest
 * and room into a metre.
 */
final class CoilFormula {
    private static final double WEEKS_OF_A_YEAR = 52;
    private static final double MM = 1_000;
    /** No reel whose own price would be half as much again pays for itself. */
    static final long MOST_OVER_PRICE = 2;

    private static final int HALVINGS = 12;

    private final CoilTerms terms;
    private final double[] metres;
    private final double[] counts;
    private final int[] cells;
    private final double allCounts;
    private final double weekly;
    private final double mean;
    private final double interest;
    private final double room;

    CoilFormula(PastCuts past, CoilTerms terms) {
        this.terms = terms;
        SortedMap<Length, Long> held =
                past.counts().headMap(new Length(terms.grid().mm() * terms.steps() + 1));
        metres = held.keySet().stream().mapToDouble(length -> length.mm() / MM).toArray();
        counts = held.values().stream().mapToDouble(Long::doubleValue).toArray();
        cells = held.keySet().stream()
                .mapToInt(length ->
                        (int) -Math.floorDiv(-length.mm(), terms.grid().mm()))
                .toArray();
        allCounts = past.pieces();
        double rope = past.rope().mm() / MM;
        weekly = rope / past.weeks();
        mean = rope / allCounts;
        interest = of(terms.interest()) / WEEKS_OF_A_YEAR;
        room = terms.room().millis();
    }

    private static double of(Ratio ratio) {
        return (double) ratio.numerator() / ratio.denominator();
    }

    /** The shop's own price of a metre, p*, rounded down; from the price to half as much again. */
    UnitPrice ownPrice() {
        long low = terms.price().millisPerMetre();
        long high = low + low / MOST_OVER_PRICE;
        double paid = low * (terms.reel().mm() / MM);
        int reel =
                (int) Math.min(terms.steps(), terms.reel().mm() / terms.grid().mm());
        if (values((double) high, 0)[reel] <= paid) {
            return new UnitPrice(high);
        }
        for (int halving = 0; halving < HALVINGS && high - low > 1; halving++) {
            long middle = low + (high - low) / 2;
            if (values((double) middle, 0)[reel] <= paid) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new UnitPrice(low);
    }

    /** The worth at each step of the grid, from nothing; rounded down once, to 1/1000 minor unit. */
    long[] steps(UnitPrice own, Length rack) {
        double[] values = values((double) own.millisPerMetre(), rack.mm() / MM);
        long[] steps = new long[values.length];
        for (int step = 0; step < steps.length; step++) {
            steps[step] = new Cost((long) Math.floor(values[step])).millis();
        }
        return steps;
    }

    private double[] values(double own, double rack) {
        double grid = terms.grid().mm() / MM;
        double[] values = new double[terms.steps() + 1];
        double[] gains = new double[cells.length];
        for (int step = 1; step < values.length; step++) {
            values[step] = values[step - 1];
            if (step * terms.grid().mm() >= terms.floor().mm()) {
                int fitting = 0;
                while (fitting < cells.length && cells[fitting] <= step) {
                    gains[fitting] = own * metres[fitting] + values[step - cells[fitting]];
                    fitting++;
                }
                values[step] = reservation(gains, fitting, waiting(step * grid, rack), values[step - 1]);
            }
        }
        return values;
    }

    /** What it costs to hold a coil of so many metres until its next cut, times all counts. */
    private double waiting(double coil, double rack) {
        double weeks = (rack + coil) / weekly / Math.max(1, coil / mean);
        return weeks * allCounts * (room + interest * terms.price().millisPerMetre() * coil);
    }

    /** The root, where it lies above {@code least}; else that. */
    private double reservation(double[] gains, int fitting, double cost, double least) {
        double value = least;
        while (true) {
            double above = 0;
            double sum = 0;
            for (int i = 0; i < fitting; i++) {
                if (gains[i] > value) {
                    above += counts[i];
                    sum += counts[i] * gains[i];
                }
            }
            double next = above == 0 ? value : (sum - cost) / above;
            if (next <= value) {
                return value;
            }
            value = next;
        }
    }
}
