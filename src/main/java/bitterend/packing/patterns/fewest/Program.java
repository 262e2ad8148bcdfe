package bitterend.packing.patterns.fewest;

import bitterend.packing.effort.Budget;
import bitterend.packing.linear.Simplex;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * The linear program of a question: every piece is cut just once, at a price for pieces too few or too many, and as few reels
 * as can be. Columns stay when the search goes on elsewhere; those that may not be used there are shut. {@code double} only to
 * choose the whole prices.
 */
final class Program {
    /** Price of a piece too few or too many: so much, and so much for a reel full of it. */
    private static final double A_PIECE = 0.5;

    private static final double A_REEL = 4;
    /** No column is worth as much. */
    private static final double SHUT = 1000;

    private static final double WHOLE = 1e-6;
    private static final double CLEARLY_BROKEN = 0.05;
    /** More columns than this for each item are thinned, to so many. */
    private static final int MOST_COLUMNS = 6;

    private static final int KEPT_COLUMNS = 3;
    private static final int MOST_BITS = 28;
    /** How often those prices can be doubled. */
    private static final int MOST_DOUBLINGS = 6;

    private final ReelQuestion question;
    private final long seed;
    private Simplex lp;
    private final List<Column> columns = new ArrayList<>();
    private final Set<Column> known = new HashSet<>();
    private final int own;
    private boolean isThinned;
    private int dropped;
    private int doublings;
    /** Units of a whole price in a reel. */
    private int scale;

    Program(ReelQuestion question, long seed) {
        this.question = question;
        this.seed = seed;
        lp = empty();
        own = lp.columns();
        price();
    }

    private Simplex empty() {
        int items = question.items();
        double[] rhs = new double[items];
        for (int i = 0; i < items; i++) {
            rhs[i] = question.count[i];
        }
        return new Simplex(rhs, new double[items], seed);
    }

    /**
     * Drops the columns that are worth least by the prices of now, where there are many: every further node looks at each that
     * is there, and what it wants of them it prices anew. Done once, before any node but a root asks for {@link #basics}: those
     * of an empty program stay as they are.
     */
    void thin() {
        boolean again = isThinned;
        isThinned = true;
        if (again || columns.size() <= MOST_COLUMNS * question.items()) {
            return;
        }
        List<Integer> cheapest = IntStream.range(0, columns.size())
                .boxed()
                .sorted(Comparator.comparingDouble(c -> lp.reduced(own + c)))
                .limit((long) KEPT_COLUMNS * question.items())
                .sorted()
                .toList();
        int[] basics = lp.basics();
        int[] place = new int[own + columns.size()];
        for (int j = 0; j < own; j++) {
            place[j] = j;
        }
        Set<Integer> kept = new TreeSet<>(cheapest);
        Arrays.stream(basics).filter(j -> j >= own).forEach(j -> kept.add(j - own));
        List<Column> before = List.copyOf(columns);
        columns.clear();
        known.clear();
        lp = empty();
        price();
        for (int c : kept) {
            place[own + c] = own + columns.size();
            add(before.get(c));
        }
        dropped = before.size() - columns.size();
        lp.restore(Arrays.stream(basics).map(j -> place[j]).toArray());
    }

    /** How many columns were dropped once. */
    int dropped() {
        return dropped;
    }

    /** Prices the pieces too few or too many. */
    private void price() {
        for (int i = 0; i < question.items(); i++) {
            double price = Math.scalb(A_REEL * question.size[i] / question.room + A_PIECE, doublings);
            lp.cost(lp.artificial(i), price);
            lp.cost(lp.surplus(i), price);
        }
    }

    /** Doubles the prices of pieces too few or too many, where the program would rather pay those; false at the end of that. */
    boolean dearer() {
        if (doublings == MOST_DOUBLINGS) {
            return false;
        }
        doublings++;
        price();
        return true;
    }

    /** Units of a whole price in a reel, for the prices that were asked for last. */
    int scale() {
        return scale;
    }

    /** Adds a pattern; whether it is a new one. */
    boolean add(Column column) {
        if (!known.add(column)) {
            return false;
        }
        double[] values = new double[column.count.length];
        for (int t = 0; t < values.length; t++) {
            values[t] = column.count[t];
        }
        lp.addColumn(column.item, values, 1);
        columns.add(column);
        return true;
    }

    /** Goes on from columns that were basic once, by what is allowed now. */
    void enter(Limits limits, int[] basics, Budget budget) {
        List<Integer> out = new ArrayList<>();
        for (int c = 0; c < columns.size(); c++) {
            if (limits.allows(columns.get(c))) {
                lp.cost(own + c, 1);
            } else {
                out.add(own + c);
            }
        }
        lp.restore(basics);
        lp.shut(out.stream().mapToInt(Integer::intValue).toArray(), SHUT, budget);
    }

    int[] basics() {
        return lp.basics();
    }

    boolean solve(Budget budget) {
        return lp.primalByReference(budget);
    }

    /** Whole prices of the items, rounded down, as fine as tables can hold what a reel full of the dearest is worth. */
    int[] prices() {
        double[] duals = lp.duals();
        double dearest = 1;
        for (int i = 0; i < duals.length; i++) {
            dearest = Math.max(dearest, Math.abs(duals[i]) * question.room / question.size[i]);
        }
        int bits = MOST_BITS;
        while (bits > 0 && Math.scalb(dearest, bits) > PatternTable.LARGEST) {
            bits--;
        }
        scale = 1 << bits;
        int[] prices = new int[duals.length];
        for (int i = 0; i < prices.length; i++) {
            prices[i] = (int) Math.floor(duals[i] * scale);
        }
        return prices;
    }

    /** How often each pattern is cut, by its place; empty where pieces are too few or too many. */
    double[] shares(Budget budget) {
        double[] values = lp.values();
        return isClear(values) ? shares(values) : settled(budget);
    }

    /** The same by the true right-hand side. */
    double[] settled(Budget budget) {
        lp.settle(budget);
        return shares(lp.values());
    }

    private double[] shares(double[] values) {
        for (int i = 0; i < own; i++) {
            if (values[i] > WHOLE) {
                return new double[0];
            }
        }
        double[] shares = new double[columns.size()];
        System.arraycopy(values, own, shares, 0, shares.length);
        return shares;
    }

    /** Whether values tell enough to branch by, though they are not yet those of the true right-hand side. */
    private boolean isClear(double[] values) {
        double most = 0;
        for (int j = 0; j < values.length; j++) {
            if (j < own && values[j] > WHOLE) {
                return false;
            }
            most = Math.max(most, Math.abs(values[j] - Math.rint(values[j])));
        }
        return most > CLEARLY_BROKEN;
    }

    Column column(int place) {
        return columns.get(place);
    }

    int size() {
        return columns.size();
    }
}
