package bitterend.packing.loads;

import bitterend.packing.effort.Budget;
import bitterend.packing.linear.Simplex;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The linear program over the draws found so far: pieces cut, sets on holders, orders on lots, work undone. Entering a
 * domain changes prices of columns, and right-hand sides of the few rows that a branch asked for; the program stays alive
 * over all nodes.
 */
final class Program {
    /** Price of leaving a reel that must be used. */
    private static final double FORCED = 1_000;
    /** Price of breaking a row that no plan breaks. */
    static final double BROKEN = 20_000;

    /** Breaking up a set, measured by breaking its pieces. */
    private static final double MUCH_DEARER = 8;

    static final int NO_ROW = -1;

    final LoadModel model;
    /** Class of urgency whose weight is to be least, {@link Item#NONE} when money is. */
    final int stage;
    /** Units of a dual in one unit of the program. */
    final double scale;

    private final Simplex lp;
    private final int[][] pieceRow;
    private final int[] setRow;
    private final int[] reelRow;
    private final int[] classRow = new int[LoadModel.CLASSES];
    private final Choices choices;
    private final Charges charges;
    private final OnLots onLots;
    private final Map<Pattern, Integer> columns = new HashMap<>();
    private final List<Pattern> patterns = new ArrayList<>();
    private final List<Integer> columnOf = new ArrayList<>();
    private Domain domain;
    /** By reel: it must be used. */
    private final int[] mustRow;

    /**
     * @param stage the class whose weight is to be least, or {@link Item#NONE}
     * @param domain where it looks; it says too what weight of each class may stay undone
     */
    Program(LoadModel model, int stage, Domain domain, long seed) {
        this.model = model;
        this.stage = stage;
        this.domain = domain;
        mustRow = new int[model.reels.length];
        Arrays.fill(mustRow, NO_ROW);
        scale = stage == Item.NONE ? scaleOfMoney(model) : Penalty.unit(model);
        Layout layout = new Layout(model, stage == Item.NONE && model.split > 0, domain.allowed);
        pieceRow = layout.pieceRow;
        setRow = layout.setRow;
        reelRow = layout.reelRow;
        double[] rhs = layout.rhs();
        double[] dear = new double[rhs.length];
        Arrays.fill(dear, BROKEN);
        for (Item item : model.items) {
            double price = dear(item);
            for (int row : pieceRow[item.index]) {
                dear[row] = price;
            }
        }
        for (SetOfPieces set : model.sets) {
            dear[setRow[set.index]] = set.items.stream()
                    .mapToDouble(item -> MUCH_DEARER * dear(item) * item.count())
                    .sum();
        }
        lp = new Simplex(rhs, dear, seed);
        System.arraycopy(layout.classRow, 0, classRow, 0, classRow.length);
        choices = new Choices(model, stage, scale, lp, layout);
        charges = new Charges(model, stage, lp, choices);
        onLots = new OnLots(model, lp, choices);
    }

    private static double scaleOfMoney(LoadModel model) {
        int dearest = 1;
        for (RunOfCells run : model.runs) {
            dearest = Math.max(dearest, run.drop[run.room]);
        }
        return Math.max(1, dearest / 50.0);
    }

    /** Above what any plan pays for a piece. */
    private double dear(Item item) {
        return stage == Item.NONE ? model.dear[item.index] / scale : Penalty.dear(model) / scale;
    }

    /**
     * From now on only plans of this domain count.
     *
     * @param settled reels that are cut as the draws say, whatever else there is
     * @param draws of these reels
     * @param barred further draws that may not be used
     */
    void enter(Domain next, boolean[] settled, List<Pattern> draws, Predicate<Pattern> barred, Budget budget) {
        domain = next;
        draws.forEach(this::add);
        for (ReelOfRuns reel : model.reels) {
            must(reel.index, settled[reel.index] || mustUse(reel.index));
        }
        Gate gate = new Gate(lp);
        for (int p = 0; p < patterns.size(); p++) {
            Pattern pattern = patterns.get(p);
            boolean open = settled[pattern.reel]
                    ? draws.contains(pattern)
                    : pattern.isIn(domain, model) && !barred.test(pattern);
            gate.pass(columnOf.get(p), open, price(pattern));
        }
        choices.enter(next, gate);
        gate.close(budget);
    }

    /** The columns that are basic. */
    int[] basics() {
        return lp.basics();
    }

    /** Goes back to columns that were basic once, if any. */
    void goBack(int[] basics) {
        if (basics.length > 0) {
            lp.restore(basics);
        }
    }

    private double price(Pattern pattern) {
        return stage == Item.NONE ? pattern.cost / scale : 0;
    }

    private boolean mustUse(int reel) {
        for (RunOfCells run : model.reels[reel].runs) {
            if (domain.least[run.index] > 0) {
                return true;
            }
        }
        return false;
    }

    /** Whether a reel must be used; its row is made when first it must. */
    private void must(int reel, boolean used) {
        if (mustRow[reel] == NO_ROW && used) {
            Entries entries = new Entries();
            for (int p = 0; p < patterns.size(); p++) {
                if (patterns.get(p).reel == reel) {
                    entries.add(columnOf.get(p), 1);
                }
            }
            mustRow[reel] = lp.addRow(1, entries.rows(), entries.values(), FORCED);
        }
        if (mustRow[reel] != NO_ROW) {
            lp.rhs(mustRow[reel], used ? 1 : 0);
        }
    }

    /** Adds a draw; false when it is there or gives nothing. */
    boolean add(Pattern pattern) {
        if (pattern.item.length == 0 || columns.containsKey(pattern)) {
            return false;
        }
        Entries entries = new Entries();
        entries.add(reelRow[pattern.reel], -1);
        if (mustRow[pattern.reel] != NO_ROW) {
            entries.add(mustRow[pattern.reel], 1);
        }
        for (int t = 0; t < pattern.item.length; t++) {
            Item item = model.items[pattern.item[t]];
            int slot = item.slot[pattern.reel];
            if (slot == Item.NONE) {
                throw new IllegalArgumentException("item " + item.index + " may not lie on reel " + pattern.reel);
            }
            entries.add(pieceRow[item.index][slot], pattern.count[t]);
            if (onLots.row(item.index, slot) != NO_ROW) {
                entries.add(onLots.row(item.index, slot), -pattern.count[t]);
            }
        }
        for (Touch touch : charges.touches(pattern)) {
            Integer row = charges.row(touch);
            if (row != null) {
                entries.add(row, -1);
            }
        }
        int column = lp.addColumn(entries.rows(), entries.values(), price(pattern));
        columns.put(pattern, column);
        patterns.add(pattern);
        columnOf.add(column);
        return true;
    }

    /** Solves the program; false when the budget ended first. */
    boolean solve(Budget budget) {
        return lp.primalByReference(budget);
    }

    /** What the program comes to, in units of a dual. */
    double value() {
        return lp.objective() * scale;
    }

    double reduced(Pattern pattern, double[] y) {
        double d = price(pattern) + y[reelRow[pattern.reel]];
        d -= mustRow[pattern.reel] == NO_ROW ? 0 : y[mustRow[pattern.reel]];
        for (int t = 0; t < pattern.item.length; t++) {
            Item item = model.items[pattern.item[t]];
            d -= price(item, item.slot[pattern.reel], y) * pattern.count[t];
        }
        for (Touch touch : charges.touches(pattern)) {
            Integer row = charges.row(touch);
            d += row == null ? 0 : y[row];
        }
        return d;
    }

    /** The row of an item's pieces in a slot. */
    int row(Item item, int slot) {
        return pieceRow[item.index][slot];
    }

    /** What a piece of an item is worth in a slot. */
    private double price(Item item, int slot, double[] y) {
        int row = onLots.row(item.index, slot);
        return y[pieceRow[item.index][slot]] - (row == NO_ROW ? 0 : y[row]);
    }

    double[] y() {
        return lp.duals();
    }

    /** The duals as whole prices, within what tables hold. */
    Duals duals(double[] y) {
        int[][] piece = new int[model.items.length][];
        for (Item item : model.items) {
            int limit = stage == Item.NONE ? model.dear[item.index] : Penalty.dear(model);
            piece[item.index] = new int[item.slots];
            for (int k = 0; k < pieceRow[item.index].length; k++) {
                piece[item.index][k] = (int) whole(price(item, k, y) * scale, limit);
            }
        }
        long[] undone = new long[LoadModel.CLASSES];
        for (int k = 0; k < undone.length; k++) {
            undone[k] = classRow[k] == NO_ROW ? 0 : whole(y[classRow[k]] * scale, Long.MAX_VALUE >> 24);
        }
        if (stage != Item.NONE) {
            undone[stage] = (long) scale;
        }
        return new Duals(piece, undone, charges.whole(y, scale));
    }

    /** A dual as a whole number from zero to a limit. */
    static long whole(double dual, long limit) {
        return (long) Math.max(0, Math.min((double) limit, Math.floor(dual + 1e-6)));
    }

    /** The values of the draws, by {@link #patterns}; those of no account are zero. */
    Solution solution() {
        double[] values = lp.values();
        return new Solution(this, values);
    }

    List<Pattern> patterns() {
        return patterns;
    }

    int column(int pattern) {
        return columnOf.get(pattern);
    }

    Choices choices() {
        return choices;
    }

    /** Adds rows that the values break; how many. */
    int separate(Solution solution, int most) {
        Separation broken = new Separation();
        charges.separate(solution, broken, this);
        onLots.separate(solution, broken, this);
        return broken.add(most);
    }
}
