package bitterend.packing.patterns;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.LongBinaryOperator;
import java.util.stream.IntStream;

/**
 * Items in groups of about as many pieces, each group with one length: where a problem has more different lengths than a
 * linear program has rows for. With the longest of each group a plan of the groups is one of the items; with the shortest,
 * prices that bound the groups bound the items, since whatever an item may be cut from holds the shortest of its group too.
 *
 * <p>Source: W. Fernandez de la Vega, G. S. Lueker, "Bin packing can be solved within 1 + epsilon in linear time",
 * Combinatorica 1 (1981) 349-355 (linear grouping).
 */
final class Grouping {
    private final Instance fine;
    private final Instance coarse;
    /** The items of each group, the longest first. */
    private final List<int[]> members;

    private Grouping(Instance fine, int groups, LongBinaryOperator length) {
        this.fine = fine;
        long[][] loads = loadsByRope(fine);
        members = grouped(fine, loads, groups);
        long[][] coarseLoads = new long[fine.ropes][members.size()];
        int[] demand = new int[members.size()];
        long[] weight = new long[members.size()];
        for (int group = 0; group < demand.length; group++) {
            int[] items = members.get(group);
            weight[group] = fine.weight[items[0]];
            demand[group] = Arrays.stream(items).map(item -> fine.demand[item]).sum();
            for (int rope = 0; rope < fine.ropes; rope++) {
                long[] load = loads[rope];
                coarseLoads[rope][group] =
                        Arrays.stream(items).mapToLong(item -> load[item]).reduce(load[items[0]], length);
            }
        }
        coarse = new Instance(
                demand,
                weight,
                Arrays.stream(fine.types)
                        .map(type -> new ReelType(
                                type.index,
                                type.supply,
                                type.limited,
                                type.opening,
                                type.runs,
                                coarseLoads[type.rope],
                                type.rope))
                        .toArray(ReelType[]::new),
                fine.ropes);
    }

    /** Every item as long as the longest of its group: for plans. */
    static Grouping up(Instance fine, int groups) {
        return new Grouping(fine, groups, Math::max);
    }

    /** Every item as long as the shortest of its group: for bounds. */
    static Grouping down(Instance fine, int groups) {
        return new Grouping(fine, groups, Math::min);
    }

    Instance coarse() {
        return coarse;
    }

    private static long[][] loadsByRope(Instance fine) {
        long[][] loads = new long[fine.ropes][];
        for (ReelType type : fine.types) {
            loads[type.rope] = type.load;
        }
        return loads;
    }

    /** Neighbours by length, of those that are allowed on the same ropes and weigh the same. */
    private static List<int[]> grouped(Instance fine, long[][] loads, int groups) {
        List<Integer> order = IntStream.range(0, fine.items)
                .boxed()
                .sorted(Comparator.comparing((Integer item) -> ropes(loads, item))
                        .thenComparing(item -> fine.weight[item])
                        .thenComparing(item -> shortest(loads, item), Comparator.reverseOrder()))
                .toList();
        int quota = Math.max(1, fine.pieces() / groups);
        List<int[]> members = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        int pieces = 0;
        for (int item : order) {
            boolean other = !open.isEmpty()
                    && (!ropes(loads, open.get(0)).equals(ropes(loads, item))
                            || fine.weight[open.get(0)] != fine.weight[item]);
            if (other || pieces >= quota) {
                members.add(open.stream().mapToInt(Integer::intValue).toArray());
                open.clear();
                pieces = 0;
            }
            open.add(item);
            pieces += fine.demand[item];
        }
        members.add(open.stream().mapToInt(Integer::intValue).toArray());
        return members;
    }

    private static String ropes(long[][] loads, int item) {
        StringBuilder allowed = new StringBuilder();
        for (long[] load : loads) {
            allowed.append(load[item] == ReelType.NEVER ? '-' : '+');
        }
        return allowed.toString();
    }

    private static long shortest(long[][] loads, int item) {
        return Arrays.stream(loads).mapToLong(load -> load[item]).min().orElse(0);
    }

    /** A plan of the groups with the items themselves, the longest first. */
    List<Pattern> inItems(List<Pattern> plan) {
        List<ArrayDeque<Integer>> left = new ArrayList<>();
        for (int[] items : members) {
            ArrayDeque<Integer> pieces = new ArrayDeque<>();
            for (int item : items) {
                for (int piece = 0; piece < fine.demand[item]; piece++) {
                    pieces.add(item);
                }
            }
            left.add(pieces);
        }
        return plan.stream().map(pattern -> inItems(pattern, left)).toList();
    }

    private Pattern inItems(Pattern pattern, List<ArrayDeque<Integer>> left) {
        int size = Arrays.stream(pattern.takeCount).sum();
        int[] run = new int[size];
        int[] item = new int[size];
        int[] count = new int[size];
        Arrays.fill(count, 1);
        int at = 0;
        for (int take = 0; take < pattern.takeItem.length; take++) {
            for (int piece = 0; piece < pattern.takeCount[take]; piece++) {
                run[at] = pattern.run[take];
                item[at++] = left.get(pattern.takeItem[take]).remove();
            }
        }
        return Pattern.of(fine, pattern.type, run, item, count, size);
    }

    /** A bound of the groups with the prices of the items. */
    Bound inItems(Bound bound) {
        if (bound.price().length == 0) {
            return Bound.NOTHING;
        }
        long[] price = new long[fine.items];
        for (int group = 0; group < members.size(); group++) {
            for (int item : members.get(group)) {
                price[item] = bound.price()[group];
            }
        }
        return new Bound(bound.scale(), price, bound.unplannedPrice(), bound.numerator());
    }
}
