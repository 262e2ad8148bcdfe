package bitterend.packing.loads;

import bitterend.packing.linear.Simplex;
import java.util.Arrays;

/**
 * Rows for pieces that lie only on lots that their order takes: of an item, by lot, no more than all of it times the share
 * that is taken. There may be hundreds; only those that the values of the program break are in it.
 */
final class OnLots {
    private final LoadModel model;
    private final Simplex lp;
    private final Choices choices;
    private final int[][] row;

    OnLots(LoadModel model, Simplex lp, Choices choices) {
        this.model = model;
        this.lp = lp;
        this.choices = choices;
        row = new int[model.items.length][];
        for (Item item : model.items) {
            row[item.index] = new int[item.slots];
            Arrays.fill(row[item.index], Program.NO_ROW);
        }
    }

    /** The row of an item's pieces on a lot; {@link Program#NO_ROW} while no values broke it. */
    int row(int item, int slot) {
        return row[item][slot];
    }

    /** Lists the rows that the values break. */
    void separate(Solution solution, Separation into, Program program) {
        double[][] cut = new double[model.items.length][];
        for (OrderOnLots order : model.orders) {
            order.items.forEach(item -> cut[item.index] = new double[item.slots]);
        }
        for (Solution.Share share : solution.shares()) {
            Pattern pattern = share.pattern();
            for (int t = 0; t < pattern.item.length; t++) {
                Item item = model.items[pattern.item[t]];
                if (cut[item.index] != null) {
                    cut[item.index][item.slot[pattern.reel]] += share.value() * pattern.count[t];
                }
            }
        }
        for (OrderOnLots order : model.orders) {
            int[] columns = choices.lotColumns(order);
            for (Item item : order.items) {
                for (int l = 0; l < item.slots; l++) {
                    if (row[item.index][l] == Program.NO_ROW && columns[l] != Program.NO_ROW) {
                        int lot = l;
                        double over = cut[item.index][l] / item.count() - solution.value(columns[l]);
                        into.offer(over, () -> add(item, lot, columns[lot], program));
                    }
                }
            }
        }
    }

    private void add(Item item, int lot, int column, Program program) {
        Entries entries = new Entries();
        entries.add(column, item.count());
        for (int p = 0; p < program.patterns().size(); p++) {
            Pattern pattern = program.patterns().get(p);
            if (item.slot[pattern.reel] == lot) {
                int copies = 0;
                for (int t = 0; t < pattern.item.length; t++) {
                    copies += pattern.item[t] == item.index ? pattern.count[t] : 0;
                }
                if (copies > 0) {
                    entries.add(program.column(p), -copies);
                }
            }
        }
        row[item.index][lot] = lp.addRow(0, entries.rows(), entries.values(), Program.BROKEN);
        addUseless(row[item.index][lot], program.row(item, lot));
    }

    /** What is cut there and counts for nothing, as it fills a load, needs no lot: so no piece has a price below zero. */
    private void addUseless(int lotRow, int itemRow) {
        Entries useless = new Entries();
        useless.add(lotRow, 1);
        useless.add(itemRow, -1);
        lp.addColumn(useless.rows(), useless.values(), 0);
    }
}
