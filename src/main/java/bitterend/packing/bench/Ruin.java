package bitterend.packing.bench;

import java.util.List;
import java.util.random.RandomGenerator;

/** Takes rope away from some jobs: to make room for one that has none, by runs, or by chance. Pinned pieces keep theirs. */
final class Ruin {
    private final Workbench bench;
    private final RackState rack;
    private final Insertion insertion;
    private final RandomGenerator random;

    Ruin(RackState rack, Insertion insertion, RandomGenerator random) {
        bench = rack.bench;
        this.rack = rack;
        this.insertion = insertion;
        this.random = random;
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
        if (rack.isJobPlanned(job) && !bench.isPinned(job)) {
            rack.removeJob(job);
        }
    }

    /** Other jobs give way until this one finds room on one of its runs, or on one lot (or reel) for a set. */
    private void makeRoom(int job) {
        List<int[]> choice = bench.asListed().holders(job);
        if (choice.isEmpty() || choice.get(0).length == 0) {
            return;
        }
        int[] holder = choice.get(random.nextInt(choice.size()));
        if (!bench.isSet(job)) {
            holder = new int[] {holder[random.nextInt(holder.length)]};
        }
        boolean placed = insertion.insertOn(job, holder, Insertion.Choice.TIGHTEST);
        for (int tries = 0; !placed && tries < bench.pieces; tries++) {
            if (!dropOneOf(holder)) {
                return;
            }
            placed = insertion.insertOn(job, holder, Insertion.Choice.TIGHTEST);
        }
    }

    private boolean dropOneOf(int[] holder) {
        int offset = random.nextInt(holder.length);
        for (int k = 0; k < holder.length; k++) {
            List<Integer> there = rack.onRun(holder[(k + offset) % holder.length]);
            int first = there.isEmpty() ? 0 : random.nextInt(there.size());
            for (int i = 0; i < there.size(); i++) {
                int job = bench.jobOf[there.get((i + first) % there.size())];
                if (!bench.isPinned(job)) {
                    rack.removeJob(job);
                    return true;
                }
            }
        }
        return false;
    }

    private void emptyRuns(int count) {
        for (int i = 0; i < count; i++) {
            List<Integer> there = List.copyOf(rack.onRun(random.nextInt(bench.runs)));
            for (int piece : there) {
                drop(bench.jobOf[piece]);
            }
        }
    }
}
