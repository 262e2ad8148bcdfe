package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import bitterend.packing.linear.Simplex;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Cuts read off the basis: the row of a variable that is not whole says in which parts the rows of the program are to
 * be added up; rounding up that sum cuts the basis off. The parts are made whole fractions of one small denominator, so
 * every coefficient is worked out in whole numbers.
 *
 * <p>Sources: R. E. Gomory, "Outline of an algorithm for integer solutions to linear programs", Bulletin of the
 * American Mathematical Society 64 (1958) 275-278; V. Chvatal, "Edmonds polytopes and a hierarchy of combinatorial
 * problems", Discrete Mathematics 4 (1973) 305-337.
 */
final class ChvatalGomoryCuts {
    private static final int MOST = 20;
    private static final int TRIED = 60;
    private static final int DENOMINATORS = 120;
    private static final double VIOLATION = 0.05;
    private static final double NEAR = 1e-6;

    private final Simplex lp;
    private final List<Pattern> columns;
    private final double[] x;

    private record Candidate(ValidInequality cut, double violation) {}

    ChvatalGomoryCuts(Simplex lp, List<Pattern> columns, double[] x) {
        this.lp = lp;
        this.columns = columns;
        this.x = x;
    }

    /** The cuts that lie farthest from where the program stands. */
    List<ValidInequality> violated(Budget budget) {
        List<Candidate> candidates = new ArrayList<>();
        int tried = 0;
        for (int r = 0; r < lp.rows() && tried < TRIED && !budget.over(); r++) {
            double value = x[lp.basic(r)];
            if (Math.abs(value - Math.rint(value)) < 0.01) {
                continue;
            }
            tried++;
            double[] row = lp.rowOfInverse(r);
            consider(row, candidates);
            for (int i = 0; i < row.length; i++) {
                row[i] = -row[i];
            }
            consider(row, candidates);
            budget.spend(2L * columns.size() * 4);
        }
        candidates.sort(Comparator.comparingDouble((Candidate candidate) -> -candidate.violation()));
        return candidates.stream().limit(MOST).map(Candidate::cut).toList();
    }

    private void consider(double[] row, List<Candidate> candidates) {
        int denominator = denominator(row);
        if (denominator < 2) {
            return;
        }
        long[] part = new long[row.length];
        long sum = 0;
        for (int i = 0; i < part.length; i++) {
            part[i] = Math.floorMod(Math.round(row[i] * denominator), (long) denominator);
            sum += part[i] * Math.round(lp.rhs(i));
        }
        long needed = -Math.floorDiv(-sum, (long) denominator);
        int[] at = new int[columns.size()];
        double[] coefficients = new double[at.length];
        int size = 0;
        double reached = 0;
        double norm = 0;
        for (int j = 0; j < at.length; j++) {
            long up = columns.get(j).empty() ? 0 : -Math.floorDiv(-lp.worth(j, part), (long) denominator);
            if (up != 0) {
                at[size] = j;
                coefficients[size++] = up;
                reached += up * x[j];
                norm += x[j] > 0 ? (double) up * up : 0;
            }
        }
        double violation = (needed - reached) / Math.sqrt(1 + norm);
        if (violation > VIOLATION / 4 && needed - reached > VIOLATION) {
            candidates.add(new Candidate(
                    new ValidInequality(needed, Arrays.copyOf(at, size), Arrays.copyOf(coefficients, size)),
                    violation));
        }
    }

    /** The smallest number by which the row becomes whole; 0 when there is no small one. */
    private static int denominator(double[] row) {
        for (int d = 2; d <= DENOMINATORS; d++) {
            boolean whole = true;
            for (int i = 0; i < row.length && whole; i++) {
                double v = row[i] * d;
                whole = Math.abs(v - Math.rint(v)) < NEAR * d;
            }
            if (whole) {
                return d;
            }
        }
        return 0;
    }
}
