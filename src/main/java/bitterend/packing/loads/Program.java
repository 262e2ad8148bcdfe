package bitterend.packing.loads;

import bitterend.packing.linear.Budget;
import bitterend.packing.linear.Simplex;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The linear program over the draws found so far: pieces cut, sets on holders, orders on lots, work undone. Entering a
 * domain changes prices of columns, and right-hand sides of the few rows that a branch asked for; the program stays alive
 * over all nodes.
 */
final class Program {
    /** On columns that a domain has no use for. */
    private static final double BARRED = 10_000;
    /** Paid back for the draw from a reel that must be used. */
    private static final double FORCED = 1_000;
    /** Price of breaking a row that no plan breaks. */
    private static final double BROKEN = 20_000;

    /** Breaking up a set, measured by breaking its pieces. */
    private static final double MUCH_DEARER = 8;

    private static final int MOST_CHARGE = 100_000_000;
    static final int NO_ROW = -1;

    final LoadModel model;
    /** Class of urgency whose weight is to be least, {@link Item#NONE} when money is. */
    final int stage;
    /** Units of a dual in one unit of the program. */
    final double scale;

    private final Simplex lp;
    private final int[][] pieceRow;
    private final int[] itemRow;
    private final int[] setRow;
    private final int[] reelRow;
    private final int[] classRow = new int[LoadModel.CLASSES];
    private final int[][] holderColumn;
    private final int[][] lotColumn;
    private final int[] undoneColumn;
    /** Columns of pieces on lots: item, lot, column. */
    private final List<int[]> onLot = new ArrayList<>();

    private final int[] leastUndoneRow;
    private final int[] mostUndoneRow;
    private final Map<Long, Integer> mustRow = new HashMap<>();
    private final Map<Touch, Integer> touchRow = new TreeMap<>(Duals.ORDER);
    private final Map<Pattern, Integer> columns = new HashMap<>();
    private final List<Pattern> patterns = new ArrayList<>();
    private final List<Integer> columnOf = new ArrayList<>();
    private Domain domain;
    private boolean[] settled;
    private int forced;

    /**
     * @param stage the class whose weight is to be least, or {@link Item#NONE}
     * @param domain where it looks; it says too what weight of each class may stay undone
     */
    Program(LoadModel model, int stage, Domain domain, long seed) {
        this.model = model;
        this.stage = stage;
        this.domain = domain;
        settled = new boolean[model.reels.length];
        scale = stage == Item.NONE ? scaleOfMoney(model) : Penalty.unit(model);
        Layout layout = new Layout(model, stage == Item.NONE && model.split > 0, domain.allowed);
        pieceRow = layout.pieceRow;
        itemRow = layout.itemRow;
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
            if (itemRow[item.index] != NO_ROW) {
                dear[itemRow[item.index]] = price;
            }
        }
        for (SetOfPieces set : model.sets) {
            dear[setRow[set.index]] = set.items.stream()
                    .mapToDouble(item -> MUCH_DEARER * dear(item) * item.count())
                    .sum();
        }
        lp = new Simplex(rhs, dear, seed);
        holderColumn = new int[model.sets.length][];
        lotColumn = new int[model.orders.length][];
        undoneColumn = new int[model.items.length];
        leastUndoneRow = new int[model.items.length];
        mostUndoneRow = new int[model.items.length];
        Arrays.fill(undoneColumn, NO_ROW);
        Arrays.fill(leastUndoneRow, NO_ROW);
        Arrays.fill(mostUndoneRow, NO_ROW);
        System.arraycopy(layout.classRow, 0, classRow, 0, classRow.length);
        addSets(layout);
        addLots(layout);
        addUndone();
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

    private void addSets(Layout layout) {
        for (SetOfPieces set : model.sets) {
            holderColumn[set.index] = new int[set.holders.size()];
            for (int h = 0; h < set.holders.size(); h++) {
                Entries entries = new Entries();
                entries.add(setRow[set.index], 1);
                for (Item item : set.items) {
                    entries.add(pieceRow[item.index][h], -item.count());
                }
                if (layout.linkRow[set.index].length > 0) {
                    entries.add(layout.linkRow[set.index][h], -1);
                }
                holderColumn[set.index][h] = lp.addColumn(entries.rows(), entries.values(), 0);
            }
        }
    }

    private void addLots(Layout layout) {
        for (OrderOnLots order : model.orders) {
            lotColumn[order.index] = new int[order.lots.size()];
            if (!layout.lots) {
                Arrays.fill(lotColumn[order.index], NO_ROW);
            }
            for (int l = 0; l < order.lots.size(); l++) {
                if (layout.lots) {
                    addLot(layout, order, l);
                }
                for (Item item : order.items) {
                    Entries entries = new Entries();
                    entries.add(itemRow[item.index], 1);
                    entries.add(pieceRow[item.index][l], -1);
                    if (layout.lots) {
                        entries.add(layout.onLotRow[item.index][l], -1);
                    }
                    onLot.add(new int[] {item.index, l, lp.addColumn(entries.rows(), entries.values(), 0)});
                }
            }
            for (int row : layout.lots ? layout.firstLotRow[order.index] : new int[0]) {
                Entries entries = new Entries();
                entries.add(row, -1);
                entries.add(row + 1, -1);
                lp.addColumn(entries.rows(), entries.values(), -model.split / scale);
            }
        }
    }

    private void addLot(Layout layout, OrderOnLots order, int lot) {
        Entries entries = new Entries();
        for (Item item : order.items) {
            entries.add(layout.onLotRow[item.index][lot], item.count());
        }
        for (SetOfPieces set : order.sets) {
            for (int h = 0; h < set.holders.size(); h++) {
                if (set.lotOfHolder[h] == lot) {
                    entries.add(layout.linkRow[set.index][h], 1);
                }
            }
        }
        entries.add(layout.firstLotRow[order.index][order.rope[lot]], 1);
        lotColumn[order.index][lot] = lp.addColumn(entries.rows(), entries.values(), model.split / scale);
    }

    /** One column for every item, and one for every set as a whole, at its first item. */
    private void addUndone() {
        for (Item item : model.items) {
            boolean first = item.set == Item.NONE || model.sets[item.set].items.get(0) == item;
            if (!first || (stage == Item.NONE && domain.allowed[item.urgency] < item.weight)) {
                continue;
            }
            double weight = item.set == Item.NONE ? item.weight : model.sets[item.set].weight();
            Entries entries = new Entries();
            int row = item.set != Item.NONE
                    ? setRow[item.set]
                    : itemRow[item.index] != NO_ROW ? itemRow[item.index] : pieceRow[item.index][0];
            entries.add(row, 1);
            if (classRow[item.urgency] != NO_ROW) {
                entries.add(classRow[item.urgency], -weight);
            }
            double price = item.urgency == stage ? weight : 0;
            undoneColumn[item.index] = lp.addColumn(entries.rows(), entries.values(), price);
        }
    }

    /** From now on only plans of this domain count. */
    void enter(Domain next, boolean[] settledReels) {
        domain = next;
        settled = settledReels;
        forced = 0;
        for (ReelOfRuns reel : model.reels) {
            forced += settled[reel.index] || mustUse(reel.index) ? 1 : 0;
        }
        for (int p = 0; p < patterns.size(); p++) {
            lp.cost(columnOf.get(p), price(patterns.get(p)));
        }
        for (SetOfPieces set : model.sets) {
            for (int h = 0; h < holderColumn[set.index].length; h++) {
                boolean open = (next.holders[set.index] >> h & 1) != 0;
                lp.cost(holderColumn[set.index][h], open ? 0 : BARRED);
            }
        }
        for (int[] on : onLot) {
            boolean open = (next.mayLots[model.items[on[0]].order] >> on[1] & 1) != 0;
            lp.cost(on[2], open ? 0 : BARRED);
        }
        enterLots();
        enterUndone();
    }

    private void enterLots() {
        for (OrderOnLots order : model.orders) {
            for (int l = 0; l < lotColumn[order.index].length; l++) {
                int column = lotColumn[order.index][l];
                if (column == NO_ROW) {
                    continue;
                }
                boolean may = (domain.mayLots[order.index] >> l & 1) != 0;
                boolean must = (domain.mustLots[order.index] >> l & 1) != 0;
                lp.cost(column, may ? model.split / scale : BARRED);
                long key = ((long) order.index << 32) | l;
                Integer row = mustRow.get(key);
                if (row == null && must) {
                    row = lp.addRow(0, new int[] {column}, new double[] {1}, BROKEN);
                    mustRow.put(key, row);
                }
                if (row != null) {
                    lp.rhs(row, must ? 1 : 0);
                }
            }
        }
    }

    private void enterUndone() {
        for (Item item : model.items) {
            int column = undoneColumn[item.index];
            if (column == NO_ROW) {
                continue;
            }
            double price =
                    item.urgency != stage ? 0 : item.set == Item.NONE ? item.weight : model.sets[item.set].weight();
            int most = domain.mostUndone[item.index];
            int least = domain.leastUndone[item.index];
            boolean open = item.set == Item.NONE ? most > 0 : domain.mayStayUndone(model.sets[item.set]);
            lp.cost(column, open ? price : BARRED);
            if (item.set != Item.NONE) {
                continue;
            }
            if (mostUndoneRow[item.index] == NO_ROW && most > 0 && most < item.count()) {
                mostUndoneRow[item.index] = lp.addRow(-most, new int[] {column}, new double[] {-1}, BROKEN);
            }
            if (leastUndoneRow[item.index] == NO_ROW && least > 0) {
                leastUndoneRow[item.index] = lp.addRow(least, new int[] {column}, new double[] {1}, BROKEN);
            }
            if (mostUndoneRow[item.index] != NO_ROW) {
                lp.rhs(mostUndoneRow[item.index], -most);
            }
            if (leastUndoneRow[item.index] != NO_ROW) {
                lp.rhs(leastUndoneRow[item.index], least);
            }
        }
    }

    private double price(Pattern pattern) {
        double cost = stage == Item.NONE ? pattern.cost / scale : 0;
        if (settled[pattern.reel]) {
            return cost + BARRED;
        }
        if (!pattern.isIn(domain, model)) {
            return cost + BARRED;
        }
        return mustUse(pattern.reel) ? cost - FORCED : cost;
    }

    private boolean mustUse(int reel) {
        for (RunOfCells run : model.reels[reel].runs) {
            if (domain.least[run.index] > 0) {
                return true;
            }
        }
        return false;
    }

    /** A reel is cut this way, whatever else there is. */
    void settle(Pattern pattern) {
        add(pattern);
        Integer column = columns.get(pattern);
        if (column != null) {
            double cost = stage == Item.NONE ? pattern.cost / scale : 0;
            lp.cost(column, cost - FORCED);
        }
    }

    /** Bars a column until the next domain is entered. */
    void bar(Pattern pattern) {
        Integer column = columns.get(pattern);
        if (column != null) {
            lp.cost(column, pattern.cost / scale + BARRED);
        }
    }

    /** Adds a draw; false when it is there or gives nothing. */
    boolean add(Pattern pattern) {
        if (pattern.item.length == 0 || columns.containsKey(pattern)) {
            return false;
        }
        Entries entries = new Entries();
        entries.add(reelRow[pattern.reel], -1);
        for (int t = 0; t < pattern.item.length; t++) {
            Item item = model.items[pattern.item[t]];
            int slot = item.slot[pattern.reel];
            if (slot == Item.NONE) {
                throw new IllegalArgumentException("item " + item.index + " may not lie on reel " + pattern.reel);
            }
            entries.add(pieceRow[item.index][slot], pattern.count[t]);
        }
        for (Touch touch : touches(pattern)) {
            Integer row = touchRow.get(touch);
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

    /** The charges that a draw would pay. */
    private List<Touch> touches(Pattern pattern) {
        List<Touch> touches = new ArrayList<>();
        for (int t = 0; t < pattern.item.length; t++) {
            Item item = model.items[pattern.item[t]];
            int run = model.reels[pattern.reel].runs[pattern.run[t]].index;
            int order = item.set == Item.NONE ? item.order : model.sets[item.set].order;
            if (stage == Item.NONE && order != Item.NONE) {
                addOnce(touches, new Touch(false, order, run));
            }
            if (stage == Item.NONE && item.set != Item.NONE) {
                addOnce(touches, new Touch(true, item.set, run));
            }
        }
        return touches;
    }

    private static void addOnce(List<Touch> touches, Touch touch) {
        if (!touches.contains(touch)) {
            touches.add(touch);
        }
    }

    /** Solves the program; false when the budget ended first. */
    boolean solve(Budget budget) {
        return lp.primal(budget);
    }

    /** What the program comes to, in units of a dual. */
    double value() {
        return (lp.objective() + FORCED * forced) * scale;
    }

    double reduced(Pattern pattern, double[] y) {
        double d = price(pattern) + y[reelRow[pattern.reel]];
        for (int t = 0; t < pattern.item.length; t++) {
            Item item = model.items[pattern.item[t]];
            d -= y[pieceRow[item.index][item.slot[pattern.reel]]] * pattern.count[t];
        }
        for (Touch touch : touches(pattern)) {
            Integer row = touchRow.get(touch);
            d += row == null ? 0 : y[row];
        }
        return d;
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
                piece[item.index][k] = (int) whole(y[pieceRow[item.index][k]], limit);
            }
        }
        long[] undone = new long[LoadModel.CLASSES];
        for (int k = 0; k < undone.length; k++) {
            undone[k] = classRow[k] == NO_ROW ? 0 : whole(y[classRow[k]], Long.MAX_VALUE >> 24);
        }
        if (stage != Item.NONE) {
            undone[stage] = (long) scale;
        }
        return new Duals(piece, undone, charges(y));
    }

    private Map<Touch, Integer> charges(double[] y) {
        Map<Touch, Integer> charges = new TreeMap<>(Duals.ORDER);
        long[] sum = new long[model.runs.length];
        touchRow.forEach((touch, row) -> {
            int charge = (int) whole(y[row], MOST_CHARGE);
            if (charge > 0) {
                charges.put(touch, charge);
                sum[touch.run()] += charge;
            }
        });
        charges.replaceAll((touch, charge) -> {
            long all = sum[touch.run()];
            return all <= LoadTable.MOST_CHARGES ? charge : (int) (charge * (double) LoadTable.MOST_CHARGES / all);
        });
        return charges;
    }

    private long whole(double dual, long limit) {
        return (long) Math.max(0, Math.min((double) limit, Math.floor(dual * scale + 1e-6)));
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

    int[] holderColumns(SetOfPieces set) {
        return holderColumn[set.index];
    }

    int[] lotColumns(OrderOnLots order) {
        return lotColumn[order.index];
    }

    int undoneColumn(Item item) {
        return undoneColumn[item.index];
    }

    /** Adds rows for charges that the values break; how many. */
    int separate(Solution solution, int most) {
        Map<Touch, Double> used = new TreeMap<>(Duals.ORDER);
        for (Solution.Share share : solution.shares()) {
            for (Touch touch : touches(share.pattern())) {
                used.merge(touch, share.value(), Double::sum);
            }
        }
        List<Map.Entry<Touch, Double>> broken = new ArrayList<>();
        used.forEach((touch, sum) -> {
            double over = sum - holding(touch, solution);
            if (over > 0.01 && !touchRow.containsKey(touch)) {
                broken.add(Map.entry(touch, over));
            }
        });
        broken.sort(Map.Entry.<Touch, Double>comparingByValue().reversed());
        broken.stream().limit(most).forEach(entry -> addTouch(entry.getKey()));
        return Math.min(most, broken.size());
    }

    /** How much of the order takes the lot, or of the set the holder, that a run lies in. */
    private double holding(Touch touch, Solution solution) {
        return solution.value(holdingColumn(touch));
    }

    private int holdingColumn(Touch touch) {
        int reel = model.runs[touch.run()].reel;
        if (touch.ofSet()) {
            SetOfPieces set = model.sets[touch.index()];
            int holder =
                    set.items.stream().mapToInt(item -> item.slot[reel]).max().orElseThrow();
            return holderColumn[touch.index()][holder];
        }
        OrderOnLots order = model.orders[touch.index()];
        for (int l = 0; l < order.lots.size(); l++) {
            for (int r : order.lots.get(l)) {
                if (r == reel) {
                    return lotColumn[touch.index()][l];
                }
            }
        }
        throw new IllegalArgumentException("no lot of the order has reel " + reel);
    }

    private void addTouch(Touch touch) {
        Entries entries = new Entries();
        entries.add(holdingColumn(touch), 1);
        for (int p = 0; p < patterns.size(); p++) {
            if (touches(patterns.get(p)).contains(touch)) {
                entries.add(columnOf.get(p), -1);
            }
        }
        touchRow.put(touch, lp.addRow(0, entries.rows(), entries.values(), BROKEN));
    }
}
