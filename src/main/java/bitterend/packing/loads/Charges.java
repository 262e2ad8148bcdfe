package bitterend.packing.loads;

import bitterend.packing.linear.Simplex;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Rows for what the first piece of an order or set on a run pays back. There may be hundreds; only those that the values of
 * the program break are in it.
 */
final class Charges {
    private static final int MOST_CHARGE = 100_000_000;

    private final LoadModel model;
    private final int stage;
    private final Simplex lp;
    private final Choices choices;
    private final Map<Touch, Integer> touchRow = new TreeMap<>(Duals.ORDER);

    Charges(LoadModel model, int stage, Simplex lp, Choices choices) {
        this.model = model;
        this.stage = stage;
        this.lp = lp;
        this.choices = choices;
    }

    /** The row of a charge; null while no values broke it. */
    @Nullable
    Integer row(Touch touch) {
        return touchRow.get(touch);
    }

    /** The charges that a draw would pay. */
    List<Touch> touches(Pattern pattern) {
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

    /** The duals of these rows as whole charges, within what tables hold. */
    Map<Touch, Integer> whole(double[] y, double scale) {
        Map<Touch, Integer> charges = new TreeMap<>(Duals.ORDER);
        long[] sum = new long[model.runs.length];
        touchRow.forEach((touch, row) -> {
            int charge = (int) Program.whole(y[row] * scale, MOST_CHARGE);
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

    /** Lists the rows that the values break. */
    void separate(Solution solution, Separation into, Program program) {
        Map<Touch, Double> used = new TreeMap<>(Duals.ORDER);
        for (Solution.Share share : solution.shares()) {
            for (Touch touch : touches(share.pattern())) {
                used.merge(touch, share.value(), Double::sum);
            }
        }
        used.forEach((touch, sum) -> {
            if (!touchRow.containsKey(touch)) {
                into.offer(sum - holding(touch, solution), () -> addTouch(touch, program));
            }
        });
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
            return choices.holderColumns(set)[holder];
        }
        OrderOnLots order = model.orders[touch.index()];
        for (int l = 0; l < order.lots.size(); l++) {
            for (int r : order.lots.get(l)) {
                if (r == reel) {
                    return choices.lotColumns(order)[l];
                }
            }
        }
        throw new IllegalArgumentException("no lot of the order has reel " + reel);
    }

    private void addTouch(Touch touch, Program program) {
        Entries entries = new Entries();
        entries.add(holdingColumn(touch), 1);
        for (int p = 0; p < program.patterns().size(); p++) {
            if (touches(program.patterns().get(p)).contains(touch)) {
                entries.add(program.column(p), -1);
            }
        }
        touchRow.put(touch, lp.addRow(0, entries.rows(), entries.values(), Program.BROKEN));
    }
}
