package bitterend.packing.bench;

import bitterend.packing.Effort;
import bitterend.packing.Packing;
import bitterend.packing.Undone;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Where rope is short: which work is left undone, class by class, and then what that costs. First with the jobs of the
 * first class alone on the rack, then with those of the second as well, and so on; sets and single pieces are jobs alike.
 * Ruin and recreate (Schrimpf and others, "Record breaking optimization results using the ruin and recreate principle",
 * Journal of Computational Physics 159, 2000): some jobs give up their rope, and all jobs without rope look for it again in
 * another order. A step is taken when it is no worse than where the search stood a while ago (late acceptance: Burke and
 * Bykov, European Journal of Operational Research 258, 2017).
 */
public final class LeastUndone {
    private static final int LATE = 60;
    private static final int CLOCK_EVERY = 64;

    private final Workbench bench;
    private final Effort effort;
    private final long patience;
    private final long deadline;
    private final SplittableRandom random;
    private final RackState rack;
    private final Insertion insertion;
    private final Ruin ruin;
    private final int[] start;
    private int[] best;
    private Standing bestStanding;
    private long steps;
    /** Jobs of later classes are not on the rack. */
    private int limit = Undone.CLASSES;

    private boolean forMoney;

    private LeastUndone(Workbench bench, Packing from, Effort effort, long patience) {
        this.bench = bench;
        this.effort = effort;
        this.patience = patience;
        deadline = System.nanoTime() + effort.time().toNanos();
        random = new SplittableRandom(effort.seed());
        rack = RackState.of(bench, from);
        insertion = new Insertion(rack, bench.asListed(), random);
        ruin = new Ruin(rack, insertion, random);
        start = rack.places();
        best = start;
        bestStanding = Standing.of(rack, limit, true);
    }

    /**
     * A packing that leaves no more undone than the start, and costs no more where it leaves the same.
     *
     * @param patience tries for each class without anything better after which that class ends
     */
    public static Packing improve(Workbench bench, Packing start, Effort effort, long patience) {
        LeastUndone search = new LeastUndone(bench, start, effort, patience);
        search.run();
        return RackState.packing(bench, search.best);
    }

    /** The packing with every job placed that still finds room, the urgent first, each where it costs least. */
    public static Packing filled(Workbench bench, Packing packing) {
        RackState rack = RackState.of(bench, packing);
        List<Integer> open = undone(rack, Undone.CLASSES);
        if (open.isEmpty()) {
            return packing;
        }
        open.sort(longestFirst(bench));
        List<Integer> left = new Insertion(rack, bench.asListed()).insertAll(open, Insertion.Choice.CHEAPEST);
        return left.size() == open.size() ? packing : rack.packing();
    }

    private static List<Integer> undone(RackState rack, int limit) {
        List<Integer> open = new ArrayList<>();
        for (int job = 0; job < rack.bench.jobs.length; job++) {
            if (!rack.isJobPlanned(job) && rack.bench.urgencyOf(job) <= limit) {
                open.add(job);
            }
        }
        return open;
    }

    private static Comparator<Integer> byClass(Workbench bench) {
        return Comparator.comparingInt(bench::urgencyOf);
    }

    private static Comparator<Integer> longestFirst(Workbench bench) {
        return byClass(bench).thenComparing(job -> -bench.sizeOfJob(job));
    }

    private void run() {
        int[] soFar = start;
        for (limit = 1; limit <= Undone.CLASSES && !isOver(); limit++) {
            begin(soFar);
            if (rack.undoneIn(limit) > 0) {
                search();
            }
            soFar = best;
        }
        limit = Undone.CLASSES;
        forMoney = true;
        rack.restore(start);
        keep();
        rack.restore(soFar);
        insertion.insertAll(recreateOrder(0), Insertion.Choice.CHEAPEST);
        if (standing().compareTo(bestStanding) < 0) {
            keep();
        }
        rack.restore(best);
        search();
    }

    /** Sets out for a class from what was found for the one before it, or from the start if that leaves less undone. */
    private void begin(int[] soFar) {
        rack.restore(start);
        takeOffLater();
        insertion.insertAll(recreateOrder(0), Insertion.Choice.TIGHTEST);
        keep();
        rack.restore(soFar);
        takeOffLater();
        insertion.insertAll(recreateOrder(0), Insertion.Choice.TIGHTEST);
        if (standing().compareTo(bestStanding) < 0) {
            keep();
        }
        rack.restore(best);
    }

    private void takeOffLater() {
        for (int job = 0; job < bench.jobs.length; job++) {
            if (bench.urgencyOf(job) > limit) {
                ruin.drop(job);
            }
        }
    }

    private Standing standing() {
        return Standing.of(rack, limit, forMoney);
    }

    private void keep() {
        best = rack.places();
        bestStanding = standing();
    }

    private void search() {
        Standing[] late = new Standing[LATE];
        Standing now = standing();
        Arrays.fill(late, now);
        long last = steps + patience;
        while (steps < last && steps < effort.work() && !(steps % CLOCK_EVERY == 0 && isOver()) && !isDone()) {
            int[] before = rack.places();
            List<Integer> open = undone(rack, limit);
            ruin.some(open);
            insertion.insertAll(recreateOrder(random.nextInt(8)), choice());
            Standing then = standing();
            int slot = (int) (steps % LATE);
            if (then.compareTo(now) <= 0 || then.compareTo(late[slot]) <= 0) {
                now = then;
            } else {
                rack.restore(before);
            }
            late[slot] = now;
            if (now.compareTo(bestStanding) < 0) {
                boolean work = now.isLessWork(bestStanding);
                keep();
                last = work || forMoney ? steps + patience : last;
            }
            steps++;
        }
    }

    private boolean isDone() {
        return !forMoney && bestStanding.isNothingIn(limit);
    }

    private boolean isOver() {
        return System.nanoTime() > deadline || effort.cancelled().getAsBoolean();
    }

    private List<Integer> recreateOrder(int way) {
        List<Integer> open = undone(rack, limit);
        if (way > 0) {
            Insertion.shuffle(open, random);
        }
        switch (way) {
            case 0, 1, 2 -> open.sort(longestFirst(bench));
            case 3 -> open.sort(byClass(bench).thenComparing(job -> bench.sizeOfJob(job)));
            case 4 -> open.sort(byClass(bench).thenComparing(job -> -bench.weightOfJob(job)));
            case 5 -> open.sort(byClass(bench).thenComparing(job -> !bench.isSet(job)));
            default -> open.sort(byClass(bench));
        }
        return open;
    }

    private Insertion.Choice choice() {
        if (forMoney && random.nextInt(3) == 0) {
            return Insertion.Choice.CHEAPEST;
        }
        return random.nextInt(2) == 0 ? Insertion.Choice.TIGHTEST : Insertion.Choice.TIGHTEST_BY_CHANCE;
    }
}
