package bitterend.packing.patterns;

import bitterend.packing.linear.Simplex;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;

/** A node of the search among patterns: its program, and the pattern of each column, nothing for the rows' own. */
final class PatternNode {
    private final PatternProgram program;
    final Simplex lp;
    final int depth;
    private List<Pattern> columns;
    /** No plan of this node costs less. */
    private long bound;

    PatternNode(PatternProgram program, Simplex lp, List<Pattern> columns, int depth) {
        this.program = program;
        this.lp = lp;
        this.columns = columns;
        this.depth = depth;
    }

    private PatternNode copy(int newDepth) {
        PatternNode copy = new PatternNode(program, lp.copy(), columns, newDepth);
        copy.bound = bound;
        return copy;
    }

    /** The part of this node in which more than {@code floor}, or at most so many, of the branch's columns are used. */
    PatternNode side(Branch branch, boolean more) {
        PatternNode side = copy(depth + 1);
        double[] coefficients = new double[branch.columns().length];
        Arrays.fill(coefficients, more ? 1 : -1);
        double rhs = more ? branch.floor() + 1 : -branch.floor();
        side.lp.addRow(rhs, branch.columns(), coefficients, PatternProgram.DEAR);
        side.rowAdded();
        return side;
    }

    void add(ValidInequality cut) {
        lp.addCut(cut.rhs(), cut.columns(), cut.coefficients(), PatternProgram.DEAR);
        rowAdded();
    }

    private void rowAdded() {
        columns = new ArrayList<>(columns);
        columns.add(Pattern.NOTHING);
        columns.add(Pattern.NOTHING);
    }

    List<Pattern> columns() {
        return columns;
    }

    long bound() {
        return bound;
    }

    /** What the linear program comes to, in units of cost. */
    double value() {
        return lp.objective() * program.unit;
    }

    /** Whether whole numbers near the duals prove that every plan of this node costs more than {@code target}. */
    boolean proves(long target) {
        if (bound <= target && value() > target - 0.5 * program.instance.step) {
            raise();
        }
        return bound > target;
    }

    /** Raises the bound to what whole numbers near the duals prove. */
    void raise() {
        OptionalLong found = new NodeBound(program.instance, lp, program.unit, program.scale).of(columns);
        if (found.isPresent()) {
            bound = Math.max(bound, program.instance.roundUp(found.getAsLong()));
        }
    }

    /** Drops the columns that cannot be in a plan of this node that costs at most {@code target}. */
    void drop(long target) {
        double distance = (target - value()) / program.unit + 1e-6;
        List<Pattern> before = columns;
        keep(lp.dropColumns(j -> !before.get(j).empty() && lp.reduced(j) > distance));
    }

    private void keep(int[] old) {
        List<Pattern> kept = new ArrayList<>(old.length);
        for (int j : old) {
            kept.add(columns.get(j));
        }
        columns = kept;
    }

    /** Drops the cuts that do not bind. */
    void dropCuts() {
        int[] old = lp.dropCuts();
        if (old.length > 0) {
            keep(old);
        }
    }

    /** Whether the program needs none of its artificial columns. */
    boolean feasible(double[] x, double tolerance) {
        for (int i = 0; i < lp.rows(); i++) {
            if (x[lp.artificial(i)] > tolerance) {
                return false;
            }
        }
        return true;
    }
}
