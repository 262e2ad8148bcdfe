package bitterend.packing.loads;

import bitterend.measure.Length;
import bitterend.packing.DrawPrice;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import bitterend.stock.StockValue;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The reels with what each load costs on them, in a unit of money in which tables of {@code int} hold all sums. */
final class PricedReels {
    /** Worth of all pieces of a run, and value that leaves with them, stay below these. */
    static final long MOST_GAIN = 500_000_000;

    private static final long MOST_DROP = 300_000_000;

    final List<ReelOfRuns> reels = new ArrayList<>();
    long unit = 1;
    int[] dear = {};
    long mostPieces = 1;

    private final PackingProblem problem;
    private final RackOfCells rack;
    private final List<Item> items;
    private final boolean isShort;

    /** @param isShort whether rope is short: one more piece may then cost as much as any other that gives way to it */
    PricedReels(PackingProblem problem, RackOfCells rack, List<Item> items, boolean isShort) {
        this.problem = problem;
        this.rack = rack;
        this.items = items;
        this.isShort = isShort;
        chooseUnit();
        buildReels();
    }

    /** Prices of leaving pieces out that no plan pays, and a unit of money in which tables of int hold all sums. */
    private void chooseUnit() {
        long mostOpening = 0;
        double dearest = 0;
        long mostDrop = 1;
        double longest = 0;
        int shortest = items.stream()
                .flatMapToInt(item -> Arrays.stream(item.cells))
                .filter(size -> size > 0)
                .min()
                .orElse(1);
        for (Reel reel : rack.racked) {
            mostOpening =
                    Math.max(mostOpening, DrawPrice.fixedCost(problem, reel).millis());
            StockValue value = problem.valueOn(reel);
            for (Run run : reel.runs()) {
                long room = Math.max(1, rack.room(reel, run));
                long whole = value.of(run.length()).millis();
                dearest = Math.max(dearest, (double) whole / room);
                mostDrop = Math.max(mostDrop, whole);
                longest = Math.max(longest, (double) room);
                mostPieces = Math.max(mostPieces, room / shortest);
            }
        }
        double fixed = 2.0 * mostOpening + 2.0 * problem.prices().splitOrder().millis() + 1000;
        int largest = items.stream()
                .flatMapToInt(item -> Arrays.stream(item.cells))
                .max()
                .orElse(1);
        double gain =
                isShort ? (3 * dearest * largest + fixed) * mostPieces : 3 * dearest * longest + fixed * mostPieces;
        unit = (long) Math.ceil(Math.max(1, Math.max(gain / MOST_GAIN, (double) mostDrop / MOST_DROP)));
        dear = new int[items.size()];
        for (Item item : items) {
            int size = isShort ? largest : Arrays.stream(item.cells).max().orElse(0);
            dear[item.index] = (int) ((3 * dearest * size + fixed) / unit);
        }
    }

    private void buildReels() {
        long handling = problem.prices().handling().millis() / unit;
        Map<List<Object>, int[]> known = new HashMap<>();
        int index = 0;
        for (Reel reel : rack.racked) {
            List<Run> sound = reel.runs();
            RunOfCells[] own = new RunOfCells[sound.size()];
            for (int j = 0; j < own.length; j++) {
                Run run = sound.get(j);
                List<Object> key =
                        List.of(run.length(), reel.rope(), reel.custody().isCustomersOwn());
                int[] drop = known.computeIfAbsent(key, any -> drops(reel, run));
                own[j] = new RunOfCells(index++, reels.size(), j, drop.length - 1, drop);
            }
            int opening = (int) (DrawPrice.fixedCost(problem, reel).millis() / unit);
            reels.add(new ReelOfRuns(reels.size(), reel.id(), opening, (int) handling, own));
        }
    }

    /** Value that leaves the rack under each load, rounded down. */
    private int[] drops(Reel reel, Run run) {
        StockValue value = problem.valueOn(reel);
        int[] drop = new int[(int) rack.room(reel, run) + 1];
        long whole = value.of(run.length()).millis();
        for (int c = 1; c < drop.length; c++) {
            Length left = Length.max(Length.ZERO, run.length().minus(new Length(c * rack.cell)));
            drop[c] = (int) ((whole - value.of(left).millis()) / unit);
        }
        return drop;
    }

    /** Reels of one run that are alike for every piece: there is always a best plan that loads them in falling order. */
    void linkAlike(boolean lotsMatter) {
        Map<List<Object>, Integer> last = new HashMap<>();
        List<ReelOfRuns> byId = new ArrayList<>(reels);
        byId.sort(java.util.Comparator.comparing((ReelOfRuns reel) -> reel.id));
        for (ReelOfRuns reel : byId) {
            Reel there = rack.racked.get(reel.index);
            if (reel.runs.length != 1) {
                continue;
            }
            List<Object> key = List.of(
                    there.rope(),
                    lotsMatter ? PlanPrice.lotOf(there) : "",
                    there.runs().get(0).length(),
                    there.custody().isCustomersOwn(),
                    DrawPrice.fixedCost(problem, there),
                    items.stream().map(item -> item.cells[reel.index]).toList());
            Integer before = last.put(key, reel.index);
            if (before != null) {
                reels.get(before).next = reel.index;
            }
        }
    }
}
