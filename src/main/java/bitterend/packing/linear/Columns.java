package bitterend.packing.linear;

import java.util.Arrays;
import java.util.Random;
import java.util.function.IntPredicate;

/** The columns of a linear program, sparse, with their prices and their places in the basis. */
final class Columns {
    /** How many there are. */
    int n;

    int[][] index;
    double[][] value;
    double[] cost;
    /** What a reduced cost is measured by: one over the length of the column. */
    double[] weight;
    /** Place in the basis, -1 for columns that are not basic. */
    int[] place;

    Columns(int room) {
        index = new int[room][];
        value = new double[room][];
        cost = new double[room];
        weight = new double[room];
        place = new int[room];
    }

    Columns(Columns from) {
        n = from.n;
        index = from.index.clone();
        value = from.value.clone();
        cost = from.cost.clone();
        weight = from.weight.clone();
        place = from.place.clone();
    }

    /** Adds a column; the arrays are kept, not copied. */
    int add(int[] rows, double[] values, double price) {
        if (n == cost.length) {
            grow();
        }
        index[n] = rows;
        value[n] = values;
        cost[n] = price;
        place[n] = -1;
        double norm = 1;
        for (double v : values) {
            norm += v * v;
        }
        weight[n] = 1 / Math.sqrt(norm);
        return n++;
    }

    private void grow() {
        int room = n * 2;
        index = Arrays.copyOf(index, room);
        value = Arrays.copyOf(value, room);
        cost = Arrays.copyOf(cost, room);
        weight = Arrays.copyOf(weight, room);
        place = Arrays.copyOf(place, room);
    }

    /** Adds the entries of a new row. */
    void append(int row, int[] columns, double[] coefficients) {
        for (int t = 0; t < columns.length; t++) {
            int j = columns[t];
            int length = index[j].length;
            index[j] = Arrays.copyOf(index[j], length + 1);
            value[j] = Arrays.copyOf(value[j], length + 1);
            index[j][length] = row;
            value[j][length] = coefficients[t];
        }
    }

    /** No column is basic any more. */
    void clearPlaces() {
        Arrays.fill(place, 0, n, -1);
    }

    /**
     * Raises the costs of the columns that are not basic a little, another for each.
     *
     * @param but columns that stay as they are
     * @return the costs before
     */
    double[] raised(boolean[] but) {
        Random random = new Random(n);
        double[] before = Arrays.copyOf(cost, n);
        for (int j = 0; j < n; j++) {
            if (place[j] < 0 && !but[j]) {
                cost[j] += Rows.shift(random);
            }
        }
        return before;
    }

    /** The product of a column and a vector of the rows. */
    double times(int j, double[] vector) {
        int[] rows = index[j];
        double[] values = value[j];
        double sum = 0;
        for (int t = 0; t < rows.length; t++) {
            sum += vector[rows[t]] * values[t];
        }
        return sum;
    }

    /** Whole prices of the rows times the coefficients of a column, which must be whole. */
    long worth(int j, long[] price) {
        long sum = 0;
        int[] rows = index[j];
        double[] values = value[j];
        for (int t = 0; t < rows.length; t++) {
            sum = Math.addExact(sum, Math.multiplyExact(price[rows[t]], Math.round(values[t])));
        }
        return sum;
    }

    /**
     * Keeps the columns asked for, in their order.
     *
     * @return the old place of every column that stays
     */
    int[] keep(IntPredicate stays) {
        int[] old = new int[n];
        int kept = 0;
        for (int j = 0; j < n; j++) {
            if (stays.test(j)) {
                index[kept] = index[j];
                value[kept] = value[j];
                cost[kept] = cost[j];
                weight[kept] = weight[j];
                place[kept] = place[j];
                old[kept++] = j;
            }
        }
        for (int j = kept; j < n; j++) {
            index[j] = null;
            value[j] = null;
        }
        n = kept;
        return Arrays.copyOf(old, kept);
    }

    /**
     * Takes the rows that are gone out of a column.
     *
     * @param fresh the new place of every row, -1 for those that are gone
     */
    void thin(int j, int[] fresh) {
        int[] rows = index[j];
        int size = 0;
        boolean same = true;
        for (int row : rows) {
            size += fresh[row] >= 0 ? 1 : 0;
            same &= fresh[row] == row;
        }
        if (same) {
            return;
        }
        int[] thinRows = new int[size];
        double[] thinValues = new double[size];
        size = 0;
        for (int t = 0; t < rows.length; t++) {
            if (fresh[rows[t]] >= 0) {
                thinRows[size] = fresh[rows[t]];
                thinValues[size++] = value[j][t];
            }
        }
        index[j] = thinRows;
        value[j] = thinValues;
    }
}
