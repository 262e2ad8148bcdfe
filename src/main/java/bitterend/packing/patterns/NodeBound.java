package bitterend.packing.patterns;

import bitterend.packing.linear.Simplex;
import java.util.List;
import java.util.OptionalLong;

/** Bounds a node by whole numbers: duals rounded down, reduced costs of all its columns worked out exactly. */
final class NodeBound {
    private final Instance instance;
    private final Simplex lp;
    private final double unit;
    private final long scale;

    NodeBound(Instance instance, Simplex lp, double unit, long scale) {
        this.instance = instance;
        this.lp = lp;
        this.unit = unit;
        this.scale = scale;
    }

    /** No plan of the node costs less; nothing where the numbers would not fit. */
    OptionalLong of(List<Pattern> columns) {
        double[] duals = lp.duals();
        long[] price = new long[duals.length];
        try {
            long sum = 0;
            for (int i = 0; i < price.length; i++) {
                price[i] = (long) Math.floor(Math.max(0, Math.min(duals[i] * unit * scale, 1e17)));
                sum = Math.addExact(sum, Math.multiplyExact(price[i], Math.round(lp.rhs(i))));
            }
            for (int j = 0; j < columns.size(); j++) {
                if (!columns.get(j).empty()) {
                    long reduced =
                            Math.subtractExact(Math.multiplyExact(columns.get(j).cost, scale), lp.worth(j, price));
                    if (reduced < 0) {
                        sum = Math.addExact(sum, Math.multiplyExact(reduced, times(columns.get(j))));
                    }
                }
            }
            return OptionalLong.of(-Math.floorDiv(-sum, scale));
        } catch (ArithmeticException tooLarge) {
            return OptionalLong.empty();
        }
    }

    /** How often a pattern can be used at most without cutting every one of its pieces too often. */
    private long times(Pattern pattern) {
        long most = 0;
        for (int t = 0; t < pattern.item.length; t++) {
            int i = pattern.item[t];
            most = Math.max(most, -Math.floorDiv(-instance.demand[i], pattern.count[t]));
        }
        return Math.min(most, instance.types[pattern.type].supply);
    }
}
