package bitterend.bench.peers;

import bitterend.bench.peers.GeneralSolver.Limits;
import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** CP-SAT of OR-Tools. */
final class CpSat {
    private CpSat() {}

    static Outcome solve(DayModel model, Limits limits) {
        Loader.loadNativeLibraries();
        CpModel cp = new CpModel();
        IntVar[] variables = variables(cp, model);
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(limits.seconds()).setNumWorkers(limits.threads());
        Listener listener = new Listener();
        CpSolverStatus status = solver.solve(cp, listener);
        if (status == CpSolverStatus.INFEASIBLE || status == CpSolverStatus.MODEL_INVALID) {
            throw new IllegalStateException("the model: " + status + " " + cp.validate());
        }
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        long[] values =
                found ? Arrays.stream(variables).mapToLong(solver::value).toArray() : new long[0];
        double bound = Math.ceil(solver.bestObjectiveBound() - 1e-3);
        return new Outcome(values, Math.abs(bound) < 1e18 ? (long) bound : Long.MIN_VALUE, listener.steps);
    }

    private static IntVar[] variables(CpModel cp, DayModel model) {
        LinearModel program = model.program();
        IntVar[] variables = program.variables().stream()
                .map(variable -> cp.newIntVar(0, variable.most(), ""))
                .toArray(IntVar[]::new);
        for (LinearModel.Row row : program.rows()) {
            IntVar[] of =
                    Arrays.stream(row.variables()).mapToObj(v -> variables[v]).toArray(IntVar[]::new);
            cp.addLinearConstraint(LinearExpr.weightedSum(of, row.factors()), row.least(), row.most());
        }
        long[] prices = program.variables().stream()
                .mapToLong(LinearModel.Variable::price)
                .toArray();
        cp.minimize(LinearExpr.weightedSum(variables, prices));
        long[] start = model.start();
        for (int v = 0; v < start.length; v++) {
            cp.addHint(variables[v], start[v]);
        }
        return variables;
    }

    /** Hears of better plans. */
    private static final class Listener extends CpSolverSolutionCallback {
        private final List<Outcome.Step> steps = new ArrayList<>();

        @Override
        public void onSolutionCallback() {
            steps.add(new Outcome.Step(wallTime(), Math.round(objectiveValue())));
        }
    }
}
