package bitterend.bench.peers;

import java.util.ArrayList;
import java.util.List;

/**
 * A linear program whose variables are all whole numbers, and which is to cost as little as can be: what every model
 * becomes and every solver takes. Prices are in 1/1000 minor unit.
 */
public final class LinearModel {
    /** No limit on this side of a row. */
    public static final long FREE = Long.MAX_VALUE / 4;

    private final List<Variable> variables = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();

    /**
     * A variable.
     *
     * @param most it lies from 0 to this
     * @param price of each unit
     */
    public record Variable(long most, long price) {}

    /** What a linear sum of variables must lie between. */
    public static final class Row {
        private final long least;
        private final long most;
        private final List<Integer> variables = new ArrayList<>();
        private final List<Long> factors = new ArrayList<>();

        Row(long least, long most) {
            this.least = least;
            this.most = most;
        }

        /** Adds a variable to the sum. */
        public Row plus(long factor, int variable) {
            variables.add(variable);
            factors.add(factor);
            return this;
        }

        /** The sum is at least this; {@code -FREE} for no limit. */
        public long least() {
            return least;
        }

        /** The sum is at most this; {@code FREE} for no limit. */
        public long most() {
            return most;
        }

        /** The variables of the sum; none twice. */
        public int[] variables() {
            return variables.stream().mapToInt(Integer::intValue).toArray();
        }

        /** Their factors. */
        public long[] factors() {
            return factors.stream().mapToLong(Long::longValue).toArray();
        }
    }

    /** A new variable from 0 to {@code most}; its number. */
    public int variable(long most, long price) {
        variables.add(new Variable(most, price));
        return variables.size() - 1;
    }

    /** A new row. */
    public Row row(long least, long most) {
        Row row = new Row(least, most);
        rows.add(row);
        return row;
    }

    /** A new row with a sum of exactly this. */
    public Row exactly(long sum) {
        return row(sum, sum);
    }

    /** A new row with a sum of at most this. */
    public Row atMost(long sum) {
        return row(-FREE, sum);
    }

    /** A new row with a sum of at least this. */
    public Row atLeast(long sum) {
        return row(sum, FREE);
    }

    /** All variables, by number. */
    public List<Variable> variables() {
        return variables;
    }

    /** All rows. */
    public List<Row> rows() {
        return rows;
    }

    /** Whether values keep all limits. */
    public boolean holds(long[] values) {
        for (int v = 0; v < values.length; v++) {
            if (values[v] < 0 || values[v] > variables.get(v).most()) {
                return false;
            }
        }
        for (Row row : rows) {
            long sum = 0;
            for (int t = 0; t < row.variables.size(); t++) {
                sum += row.factors.get(t) * values[row.variables.get(t)];
            }
            if (sum < row.least || sum > row.most) {
                return false;
            }
        }
        return true;
    }

    /** What values of all variables cost. */
    public long cost(long[] values) {
        long sum = 0;
        for (int v = 0; v < values.length; v++) {
            sum += values[v] * variables.get(v).price();
        }
        return sum;
    }
}
