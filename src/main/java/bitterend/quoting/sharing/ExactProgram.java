package bitterend.quoting.sharing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.math3.fraction.BigFraction;

/**
 * A small linear program in exact fractions: the least {@code sum of c * x}, no c negative, where all variables are at
 * least 0 and every row {@code sum of a * x >= b} holds. Dual simplex method with Bland's rule, so that it always ends (Lemke,
 * Naval Research Logistics Quarterly 1, 1954; Bland, Mathematics of Operations Research 2, 1977).
 */
final class ExactProgram {
    private final int variables;
    private final BigFraction[] costs;
    private final List<BigFraction[]> rows = new ArrayList<>();

    /**
     * What came out.
     *
     * @param values of the variables; empty when no values satisfy all rows
     * @param refusal when there are none: what to multiply rows by, so that their sum cannot hold, by row
     */
    record Outcome(Optional<List<BigFraction>> values, Map<Integer, BigFraction> refusal) {}

    /** A program with these costs of its variables and no rows yet. */
    ExactProgram(BigFraction... costs) {
        this.variables = costs.length;
        this.costs = costs.clone();
        for (BigFraction cost : costs) {
            if (cost.compareTo(BigFraction.ZERO) < 0) {
                throw new IllegalArgumentException("a cost cannot be negative: " + cost);
            }
        }
    }

    /** Adds a row and tells its number, from 0. */
    int atLeast(BigFraction bound, BigFraction... factors) {
        if (factors.length != variables) {
            throw new IllegalArgumentException(factors.length + " factors for " + variables + " variables");
        }
        BigFraction[] row = Arrays.copyOf(factors, variables + 1);
        row[variables] = bound.negate();
        rows.add(row);
        return rows.size() - 1;
    }

    Outcome solve() {
        return new Dictionary().solve();
    }

    /** Basic variables written in terms of the others; variables come before the slacks of the rows. */
    private final class Dictionary {
        private final int[] basic = new int[rows.size()];
        private final int[] other = new int[variables];
        private final BigFraction[][] cells = new BigFraction[rows.size()][];
        private final BigFraction[] goal = Arrays.copyOf(costs, variables + 1);

        Dictionary() {
            for (int i = 0; i < basic.length; i++) {
                basic[i] = variables + i;
                cells[i] = rows.get(i).clone();
            }
            for (int j = 0; j < variables; j++) {
                other[j] = j;
            }
            goal[variables] = BigFraction.ZERO;
        }

        Outcome solve() {
            while (true) {
                int row = leaving();
                if (row < 0) {
                    return new Outcome(Optional.of(values()), Map.of());
                }
                int column = entering(cells[row]);
                if (column < 0) {
                    return new Outcome(Optional.empty(), refusal(row));
                }
                pivot(row, column);
            }
        }

        /** The negative basic variable of lowest number; -1 when none is. */
        private int leaving() {
            int best = -1;
            for (int i = 0; i < basic.length; i++) {
                if (sign(cells[i][variables]) < 0 && (best < 0 || basic[i] < basic[best])) {
                    best = i;
                }
            }
            return best;
        }

        private int entering(BigFraction[] row) {
            int best = -1;
            for (int j = 0; j < variables; j++) {
                if (sign(row[j]) > 0 && (best < 0 || isBefore(row, j, best))) {
                    best = j;
                }
            }
            return best;
        }

        private boolean isBefore(BigFraction[] row, int a, int b) {
            int order = goal[a].multiply(row[b]).compareTo(goal[b].multiply(row[a]));
            return order < 0 || (order == 0 && other[a] < other[b]);
        }

        private void pivot(int row, int column) {
            BigFraction[] solved = cells[row];
            BigFraction by = solved[column].reciprocal();
            for (int j = 0; j <= variables; j++) {
                solved[j] = j == column ? by : solved[j].multiply(by).negate();
            }
            for (int i = 0; i < basic.length; i++) {
                if (i != row) {
                    substitute(cells[i], solved, column);
                }
            }
            substitute(goal, solved, column);
            int swapped = basic[row];
            basic[row] = other[column];
            other[column] = swapped;
        }

        private void substitute(BigFraction[] target, BigFraction[] solved, int column) {
            BigFraction factor = target[column];
            if (sign(factor) == 0) {
                return;
            }
            target[column] = BigFraction.ZERO;
            for (int j = 0; j <= variables; j++) {
                target[j] = target[j].add(factor.multiply(solved[j]));
            }
        }

        private List<BigFraction> values() {
            BigFraction[] values = new BigFraction[variables];
            Arrays.fill(values, BigFraction.ZERO);
            for (int i = 0; i < basic.length; i++) {
                if (basic[i] < variables) {
                    values[basic[i]] = cells[i][variables];
                }
            }
            return List.of(values);
        }

        /** The row says that a sum of things not negative is negative: the slacks in it are the rows that clash. */
        private Map<Integer, BigFraction> refusal(int row) {
            Map<Integer, BigFraction> factors = new TreeMap<>();
            if (basic[row] >= variables) {
                factors.put(basic[row] - variables, BigFraction.ONE);
            }
            for (int j = 0; j < variables; j++) {
                if (other[j] >= variables && sign(cells[row][j]) != 0) {
                    factors.put(other[j] - variables, cells[row][j].negate());
                }
            }
            return factors;
        }

        private static int sign(BigFraction number) {
            return number.getNumerator().signum();
        }
    }
}
