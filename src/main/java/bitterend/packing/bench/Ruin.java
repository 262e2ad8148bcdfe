package bitterend.packing.bench;

import java.util.List;
import java.util.random.RandomGenerator;

/** Takes rope away from some jobs: to make room for one that has none, by runs, or by chance. Pinned pieces keep theirs. */
final class Ruin {
    private final Workbench bench;
    private final Placing placing;
    private final RandomGenerator random;
    private final List<List<int[]>> holders;

    Ruin(Placing placing, Insertion insertion, RandomGenerator random) {
        bench = placing.bench;
        this.placing = placing;
        this.random = random;
        holders = java.util.stream.IntStream.range(0, bench.jobs.length)
                .mapToObj(job -> bench.isSet(job) ? insertion.holders(job) : List.of(bench.homesOf(bench.jobs[job][0])))
                .toList();
    }

    /** @param open jobs without rope */
    void some(List<Integer> open) {
        int way = random.nextInt(10);
        if (way < 6 && !open.isEmpty()) {
            makeRoom(open.get(random.nextInt(open.size())));
        } else if (way < 8) {
            emptyRuns(1 + random.nextInt(3));
        } else {
            int jobs = 1 + random.nextInt(6);
            for (int i = 0; i < jobs; i++) {
                drop(random.nextInt(bench.jobs.length));
            }
        }
    }

    void drop(int job) {
        if (placing.isJobPlanned(job) && !bench.isPinned(job)) {
            placing.removeJob(job);
        }
    }

    /** Other jobs give way until this one finds room on one of its runs, or on one lot (or reel) for a set. */
    private void makeRoom(int job) {
        List<int[]> choice = holders.get(job);
        if (choice.isEmpty() || choice.get(0).length == 0) {
            return;
        }
        int[] holder = choice.get(random.nextInt(choice.size()));
        if (!bench.isSet(job)) {
            holder = new int[] {holder[random.nextInt(holder.length)]};
        }
        boolean placed = placeOn(job, holder);
        for (int tries = 0; !placed && tries < bench.pieces; tries++) {
            if (!dropOneOf(holder)) {
                return;
            }
            placed = placeOn(job, holder);
        }
    }

    private boolean placeOn(int job, int[] holder) {
        int[] set = bench.jobs[job];
        for (int i = 0; i < set.length; i++) {
            int home = Workbench.NONE;
            for (int run : holder) {
                boolean better = home == Workbench.NONE || placing.free(run) < placing.free(home);
                home = better && placing.fits(set[i], run) ? run : home;
            }
            if (home == Workbench.NONE) {
                for (int done = 0; done < i; done++) {
                    placing.remove(set[done]);
                }
                return false;
            }
            placing.place(set[i], home);
        }
        return true;
    }

    private boolean dropOneOf(int[] holder) {
        int offset = random.nextInt(holder.length);
        for (int k = 0; k < holder.length; k++) {
            List<Integer> there = placing.onRun(holder[(k + offset) % holder.length]);
            int first = there.isEmpty() ? 0 : random.nextInt(there.size());
            for (int i = 0; i < there.size(); i++) {
                int job = bench.jobOf[there.get((i + first) % there.size())];
                if (!bench.isPinned(job)) {
                    placing.removeJob(job);
                    return true;
                }
            }
        }
        return false;
    }

    private void emptyRuns(int count) {
        for (int i = 0; i < count; i++) {
            List<Integer> there = List.copyOf(placing.onRun(random.nextInt(bench.runs)));
            for (int piece : there) {
                drop(bench.jobOf[piece]);
            }
        }
    }
}
