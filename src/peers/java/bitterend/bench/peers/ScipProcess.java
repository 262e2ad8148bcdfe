package bitterend.bench.peers;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.stream.Collectors;

/** The process in which {@link Scip} works: a program comes in, the solver's own lines and the values go out. */
final class ScipProcess {
    /** In front of the values of all variables. */
    static final String VALUES = "values ";

    /** In front of the proven bound. */
    static final String BOUND = "bound ";

    private ScipProcess() {}

    /** Reads a program, solves it and prints the answer. */
    public static void main(String[] args) throws IOException {
        Loader.loadNativeLibraries();
        MPSolver solver = MPSolver.createSolver("SCIP");
        MPVariable[] variables = read(solver, new DataInputStream(new BufferedInputStream(System.in)));
        solver.enableOutput();
        MPSolver.ResultStatus status = solver.solve();
        System.out.println();
        System.out.println(BOUND + solver.objective().bestBound());
        if (status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE) {
            System.out.println(VALUES
                    + Arrays.stream(variables)
                            .map(variable -> "" + Math.round(variable.solutionValue()))
                            .collect(Collectors.joining(" ")));
        }
        System.out.flush();
    }

    private static MPVariable[] read(MPSolver solver, DataInputStream from) throws IOException {
        solver.setTimeLimit(Math.round(1_000 * from.readDouble()));
        int threads = from.readInt();
        if (threads > 1) {
            solver.setNumThreads(threads);
        }
        MPVariable[] variables = new MPVariable[from.readInt()];
        for (int v = 0; v < variables.length; v++) {
            variables[v] = solver.makeIntVar(0, (double) from.readLong(), "");
            solver.objective().setCoefficient(variables[v], from.readLong() / Scip.UNIT);
        }
        solver.objective().setMinimization();
        int rows = from.readInt();
        for (int row = 0; row < rows; row++) {
            MPConstraint constraint = solver.makeConstraint(limit(from.readLong()), limit(from.readLong()));
            int terms = from.readInt();
            for (int t = 0; t < terms; t++) {
                int variable = from.readInt();
                constraint.setCoefficient(variables[variable], (double) from.readLong());
            }
        }
        double[] start = new double[from.readInt()];
        for (int v = 0; v < start.length; v++) {
            start[v] = from.readLong();
        }
        if (start.length > 0) {
            solver.setHint(variables, start);
        }
        return variables;
    }

    private static double limit(long limit) {
        return Math.abs(limit) >= LinearModel.FREE ? Math.signum((double) limit) * MPSolver.infinity() : limit;
    }
}
