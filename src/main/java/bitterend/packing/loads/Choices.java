package bitterend.packing.loads;

import bitterend.packing.linear.Simplex;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** Columns of the program beside its draws: which holder a set takes, which lots an order takes, what stays undone. */
final class Choices {
    private final LoadModel model;
    private final int stage;
    private final double scale;
    private final Simplex lp;
    private final Layout layout;
    private final int[][] holderColumn;
    private final int[][] lotColumn;
    private final int[] undoneColumn;
    private final int[] leastUndoneRow;
    private final int[] mostUndoneRow;
    private final Map<Long, Integer> mustRow = new HashMap<>();

    /** Adds the columns to a program that has none yet. */
    Choices(LoadModel model, int stage, double scale, Simplex lp, Layout layout) {
        this.model = model;
        this.stage = stage;
        this.scale = scale;
        this.lp = lp;
        this.layout = layout;
        holderColumn = new int[model.sets.length][];
        lotColumn = new int[model.orders.length][];
        undoneColumn = none(model.items.length);
        leastUndoneRow = none(model.items.length);
        mostUndoneRow = none(model.items.length);
        addSets();
        addLots();
        addUndone();
    }

    private static int[] none(int length) {
        int[] none = new int[length];
        Arrays.fill(none, Program.NO_ROW);
        return none;
    }

    private void addSets() {
        for (SetOfPieces set : model.sets) {
            holderColumn[set.index] = new int[set.holders.size()];
            for (int h = 0; h < set.holders.size(); h++) {
                Entries entries = new Entries();
                entries.add(layout.setRow[set.index], 1);
                for (Item item : set.items) {
                    entries.add(layout.pieceRow[item.index][h], -item.count());
                }
                if (layout.linkRow[set.index].length > 0) {
                    entries.add(layout.linkRow[set.index][h], -1);
                }
                holderColumn[set.index][h] = lp.addColumn(entries.rows(), entries.values(), 0);
            }
        }
    }

    private void addLots() {
        for (OrderOnLots order : model.orders) {
            lotColumn[order.index] = new int[order.lots.size()];
            Arrays.fill(lotColumn[order.index], Program.NO_ROW);
            for (int l = 0; layout.lots && l < order.lots.size(); l++) {
                addLot(order, l);
            }
            for (int row : layout.lots ? layout.firstLotRow[order.index] : new int[0]) {
                Entries entries = new Entries();
                entries.add(row, -1);
                entries.add(row + 1, -1);
                lp.addColumn(entries.rows(), entries.values(), -model.split / scale);
            }
        }
    }

    private void addLot(OrderOnLots order, int lot) {
        Entries entries = new Entries();
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
            if (!first || (stage == Item.NONE && layout.allowed[item.urgency] < item.weight)) {
                continue;
            }
            double weight = item.set == Item.NONE ? item.weight : model.sets[item.set].weight();
            Entries entries = new Entries();
            int row = item.set != Item.NONE ? layout.setRow[item.set] : layout.pieceRow[item.index][0];
            entries.add(row, 1);
            if (layout.classRow[item.urgency] != Program.NO_ROW) {
                entries.add(layout.classRow[item.urgency], -weight);
            }
            double price = item.urgency == stage ? weight : 0;
            undoneColumn[item.index] = lp.addColumn(entries.rows(), entries.values(), price);
        }
    }

    /** From now on only what a domain leaves open may be chosen. */
    void enter(Domain domain, Gate gate) {
        for (SetOfPieces set : model.sets) {
            for (int h = 0; h < holderColumn[set.index].length; h++) {
                boolean open = (domain.holders[set.index] >> h & 1) != 0;
                gate.pass(holderColumn[set.index][h], open, 0);
            }
        }
        enterLots(domain, gate);
        enterUndone(domain, gate);
    }

    private void enterLots(Domain domain, Gate gate) {
        for (OrderOnLots order : model.orders) {
            for (int l = 0; l < lotColumn[order.index].length; l++) {
                int column = lotColumn[order.index][l];
                if (column == Program.NO_ROW) {
                    continue;
                }
                boolean may = (domain.mayLots[order.index] >> l & 1) != 0;
                boolean must = (domain.mustLots[order.index] >> l & 1) != 0;
                gate.pass(column, may, model.split / scale);
                long key = ((long) order.index << 32) | l;
                Integer row = mustRow.get(key);
                if (row == null && must) {
                    row = lp.addRow(0, new int[] {column}, new double[] {1}, Program.BROKEN);
                    mustRow.put(key, row);
                }
                if (row != null) {
                    lp.rhs(row, must ? 1 : 0);
                }
            }
        }
    }

    private void enterUndone(Domain domain, Gate gate) {
        for (Item item : model.items) {
            int column = undoneColumn[item.index];
            if (column == Program.NO_ROW) {
                continue;
            }
            double price =
                    item.urgency != stage ? 0 : item.set == Item.NONE ? item.weight : model.sets[item.set].weight();
            int most = domain.mostUndone[item.index];
            int least = domain.leastUndone[item.index];
            boolean open = item.set == Item.NONE ? most > 0 : domain.mayStayUndone(model.sets[item.set]);
            gate.pass(column, open, price);
            if (item.set != Item.NONE) {
                continue;
            }
            if (mostUndoneRow[item.index] == Program.NO_ROW && most > 0 && most < item.count()) {
                mostUndoneRow[item.index] = lp.addRow(-most, new int[] {column}, new double[] {-1}, Program.BROKEN);
            }
            if (leastUndoneRow[item.index] == Program.NO_ROW && least > 0) {
                leastUndoneRow[item.index] = lp.addRow(least, new int[] {column}, new double[] {1}, Program.BROKEN);
            }
            if (mostUndoneRow[item.index] != Program.NO_ROW) {
                lp.rhs(mostUndoneRow[item.index], -most);
            }
            if (leastUndoneRow[item.index] != Program.NO_ROW) {
                lp.rhs(leastUndoneRow[item.index], least);
            }
        }
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
}
