package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import bitterend.packing.linear.Simplex;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Variable;

/** Our simplex against a linear programming library that shares nothing with it. */
final class LinearProgramTest {
    private static final double DEAR = 1000;

    @Test
    void randomCoverings_haveTheValueOfTheReferee() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            int rows = 2 + random.nextInt(25);
            int columns = rows + random.nextInt(80);
            assertSame(random, rows, columns, seed);
        }
    }

    private static void assertSame(Random random, int rows, int columns, int seed) {
        double[] rhs = new double[rows];
        double[] dear = new double[rows];
        for (int i = 0; i < rows; i++) {
            rhs[i] = random.nextInt(9);
            dear[i] = DEAR;
        }
        Simplex simplex = new Simplex(rhs, dear, seed);
        double[][] matrix = new double[columns][rows];
        double[] cost = new double[columns];
        for (int j = 0; j < columns; j++) {
            int most = 1 + random.nextInt(Math.min(rows, 4));
            int[] at = random.ints(0, rows).limit(most).distinct().toArray();
            double[] values = new double[at.length];
            cost[j] = 1 + random.nextInt(20);
            for (int t = 0; t < at.length; t++) {
                values[t] = 1 + random.nextInt(3);
                matrix[j][at[t]] = values[t];
            }
            simplex.addColumn(at, values, cost[j]);
        }
        assertTrue(simplex.primal(Budget.endless()));
        assertSame(referee(matrix, cost, rhs), simplex.objective(), seed);
        for (int i = 0; i < rows; i++) {
            rhs[i] = random.nextBoolean() ? random.nextInt(9) : rhs[i];
            simplex.rhs(i, rhs[i]);
        }
        simplex.dual(Double.MAX_VALUE, Budget.endless());
        assertTrue(simplex.primal(Budget.endless()));
        assertSame(referee(matrix, cost, rhs), simplex.objective(), seed);
    }

    @Test
    void columnsShutAndOpenedAgain_haveTheValueOfTheReferee() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            int rows = 2 + random.nextInt(25);
            int columns = rows + random.nextInt(80);
            assertShut(random, rows, columns, seed);
        }
    }

    private static void assertShut(Random random, int rows, int columns, int seed) {
        double[] rhs = random.ints(rows, 0, 9).asDoubleStream().toArray();
        double[] dear = new double[rows];
        Arrays.fill(dear, DEAR);
        Simplex simplex = new Simplex(rhs, dear, seed);
        double[][] matrix = new double[columns][rows];
        double[] cost = new double[columns];
        int[] own = new int[columns];
        for (int j = 0; j < columns; j++) {
            int row = random.nextInt(rows);
            cost[j] = 1 + random.nextInt(20);
            matrix[j][row] = 1 + random.nextInt(3);
            matrix[j][(row + 1) % rows] = 1;
            own[j] = simplex.addColumn(new int[] {row, (row + 1) % rows}, new double[] {matrix[j][row], 1}, cost[j]);
        }
        assertTrue(simplex.primalByReference(Budget.endless()));
        double all = referee(matrix, cost, rhs);
        assertSame(all, simplex.objective(), seed);
        int[] basics = simplex.basics();
        int first = random.nextInt(columns);
        simplex.shut(Arrays.copyOfRange(own, first, columns), 1e5, Budget.endless());
        assertTrue(simplex.primalByReference(Budget.endless()));
        double[][] rest = Arrays.copyOf(matrix, first);
        assertSame(referee(rest, Arrays.copyOf(cost, first), rhs), simplex.objective(), seed);
        simplex.restore(basics);
        for (int j = first; j < columns; j++) {
            simplex.cost(own[j], cost[j]);
        }
        assertTrue(simplex.primalByReference(Budget.endless()));
        assertSame(all, simplex.objective(), seed);
    }

    private static void assertSame(double expected, double found, int seed) {
        assertEquals(expected, found, 1e-6 * (1 + expected), "seed " + seed);
    }

    private static double referee(double[][] matrix, double[] cost, double[] rhs) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        List<Variable> variables = new ArrayList<>();
        for (int j = 0; j < cost.length; j++) {
            variables.add(model.newVariable("x" + j).lower(0).weight(cost[j]));
        }
        for (int i = 0; i < rhs.length; i++) {
            Expression row = model.newExpression("row" + i).lower(rhs[i]);
            row.set(model.newVariable("out" + i).lower(0).weight(DEAR), 1);
            for (int j = 0; j < cost.length; j++) {
                if (matrix[j][i] != 0) {
                    row.set(variables.get(j), matrix[j][i]);
                }
            }
        }
        return model.minimise().getValue();
    }

    @Test
    void chvatal_hasTheValue452AndAQuarter() {
        // V. Chvatal, Linear Programming, Freeman 1983, chapter 13.
        assertRoot(452.25, 100, "45x97 36x610 31x395 14x211");
    }

    @Test
    void ampl_hasTheValue46AndAQuarter() {
        // R. Fourer, D. Gay, B. Kernighan, AMPL, 2nd edition 2003, chapter 15.
        assertRoot(46.25, 110, "20x48 45x35 50x24 55x10 75x8");
    }

    @Test
    void fieldhouse_hasTheValue149Over30() {
        // M. Fieldhouse, "The duality gap in trim problems", SICUP Bulletin 5(4) 1990.
        assertRoot(149 / 30.0, 30, "15x3 10x5 6x9");
    }

    @Test
    void rietzDempe_hasTheValue119Over5() {
        // J. Rietz, S. Dempe, "Large gaps in one-dimensional cutting stock problems", Discrete Applied Mathematics 156
        // (2008) 1929-1935.
        assertRoot(
                119 / 5.0,
                1500,
                "1214x2 1210x2 1208x2 910x2 906x2 904x2 774x2 770x2 768x2 504x2 503x3 500x5 498x3 494x2 368x1 366x3"
                        + " 365x3 364x1 363x3 362x1 300x5 298x3 297x3 296x1 295x3 294x1 148x1 146x3 145x3 144x1 143x3"
                        + " 142x1");
    }

    private static void assertRoot(double expected, long capacity, String pieces) {
        List<Long> lengths = new ArrayList<>();
        List<Integer> demands = new ArrayList<>();
        for (String piece : pieces.split(" ")) {
            lengths.add(Long.parseLong(piece.split("x")[0]));
            demands.add(Integer.parseInt(piece.split("x")[1]));
        }
        Instance instance = new Normaliser(PatternProblem.oneLength(capacity, lengths, demands)).instance();
        Master master = new Master(instance, new Pricer(instance), Rejection.NEVER, List.of(), 1);
        master.solve(Long.MAX_VALUE / 4, Integer.MAX_VALUE, false, Budget.endless());
        assertTrue(master.converged());
        assertEquals(expected, master.value(), 1e-6);
        double proven = master.bound().numerator() / (double) master.bound().scale();
        assertEquals(expected, proven, 1e-6);
    }
}
