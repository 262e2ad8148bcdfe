package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * Closes the last reels of a plan that leaves nearly nothing over, where one kind of reel is cut flat. Reels that waste no
 * more than the fewest reels could are kept, the pieces of the others lie loose; two loose pieces change places with two of a
 * kept reel that are no longer together, until some of the loose ones fill a reel. Where nothing at all may be wasted the last
 * loose pieces then fill theirs by themselves. Exchanges of pairs: A. C. F. Alvim, C. C. Ribeiro, F. Glover, D. J. Aloise, "A
 * hybrid improvement heuristic for the one-dimensional bin packing problem", Journal of Heuristics 10 (2004) 205-229.
 */
final class PieceExchange {
    /** Where more may be wasted in all than this part of a reel, the linear program does better. */
    private static final long LITTLE = 50;

    private static final int MOST_PIECES = 1 << 16;
    private static final int MOST_ON_A_REEL = 10;
    private static final int FILL_NODES = 400;
    private static final int TRIES = 150_000;
    private static final int PATIENCE = 3_000;
    /** Where of so many tries hardly one finds a pair to change with, the lengths are too many for it. */
    private static final int FIRST_TRIES = 500;

    private static final int SELDOM = 50;

    private final Instance instance;
    private final Incumbent best;
    private final Random random;
    private final Budget budget;
    private final GreedyHeuristic filler;
    private final long[] load;
    private final long cap;
    private final long fewest;
    private final List<int[]> kept = new ArrayList<>();
    private int[] loose = new int[0];
    private int looseSize;
    /** What the reels that are still to come may waste. */
    private long waste;

    private final Filling filling = new Filling();

    PieceExchange(Instance instance, Incumbent best, long seed, Budget budget) {
        this.instance = instance;
        this.best = best;
        this.random = new Random(seed);
        this.budget = budget;
        filler = new GreedyHeuristic(instance, random);
        load = instance.types[0].load;
        cap = instance.types[0].runs[0].cap;
        long all = 0;
        for (int item = 0; item < instance.items; item++) {
            all += load[item] * instance.demand[item];
        }
        fewest = -Math.floorDiv(-all, cap);
        waste = fewest * cap - all;
    }

    /** One kind of reel, cut flat, and no more pieces than their lengths can be summed of. */
    static boolean isFor(Instance instance) {
        return instance.classical() && instance.pieces() <= MOST_PIECES;
    }

    /** Better plans are offered on the way. */
    void run() {
        boolean few = instance.pieces() <= MOST_ON_A_REEL * fewest;
        if (!best.complete() || best.plan().size() <= fewest || waste > cap / LITTLE || !few) {
            return;
        }
        keepFullest();
        int sinceClosed = 0;
        int exchanges = 0;
        for (int tries = 1; tries <= TRIES && isOpen(); tries++) {
            sinceClosed++;
            boolean exchanged = exchanged();
            exchanges += exchanged ? 1 : 0;
            if (exchanged && (closed(looseSize - 1) || closed(looseSize - 2))) {
                offer();
                sinceClosed = 0;
            } else if (sinceClosed % PATIENCE == 0) {
                reopen();
            }
            if (tries == FIRST_TRIES && exchanges * SELDOM < tries) {
                return;
            }
        }
    }

    private boolean isOpen() {
        return looseSize > 2 && !budget.spend(1 + kept.size()) && best.plan().size() > fewest;
    }

    /** So few loose pieces may have nobody to change with. */
    private void reopen() {
        if (!kept.isEmpty()) {
            int chosen = random.nextInt(kept.size());
            int[] pieces = kept.get(chosen);
            kept.set(chosen, kept.get(kept.size() - 1));
            kept.remove(kept.size() - 1);
            letLoose(pieces);
            waste += cap - loadOf(pieces);
        }
    }

    private void letLoose(int[] pieces) {
        for (int piece : pieces) {
            loose[looseSize++] = piece;
        }
    }

    private void keepFullest() {
        List<int[]> reels = new ArrayList<>();
        best.plan().forEach(pattern -> reels.add(pieces(pattern)));
        reels.sort(Comparator.comparingLong(this::loadOf).reversed());
        loose = new int[instance.pieces()];
        for (int[] pieces : reels) {
            long wasted = cap - loadOf(pieces);
            if (wasted <= waste && kept.size() < fewest) {
                kept.add(pieces);
                waste -= wasted;
            } else {
                letLoose(pieces);
            }
        }
    }

    private static int[] pieces(Pattern pattern) {
        List<Integer> pieces = new ArrayList<>();
        for (int t = 0; t < pattern.item.length; t++) {
            for (int n = 0; n < pattern.count[t]; n++) {
                pieces.add(pattern.item[t]);
            }
        }
        return pieces.stream().mapToInt(Integer::intValue).toArray();
    }

    private long loadOf(int[] pieces) {
        long sum = 0;
        for (int piece : pieces) {
            sum += load[piece];
        }
        return sum;
    }

    /** Puts two loose pieces, drawn by lot, at the end of the list and changes them for two that leave no reel emptier. */
    private boolean exchanged() {
        toEnd(random.nextInt(looseSize), looseSize - 1);
        toEnd(random.nextInt(looseSize - 1), looseSize - 2);
        int from = kept.isEmpty() ? 0 : random.nextInt(kept.size());
        for (int n = 0; n < kept.size(); n++) {
            if (isExchangedWith(kept.get((from + n) % kept.size()))) {
                return true;
            }
        }
        return false;
    }

    private void toEnd(int place, int end) {
        int piece = loose[place];
        loose[place] = loose[end];
        loose[end] = piece;
    }

    private boolean isExchangedWith(int[] reel) {
        int one = loose[looseSize - 1];
        int other = loose[looseSize - 2];
        long room = cap - loadOf(reel);
        for (int a = 1; a < reel.length; a++) {
            for (int b = 0; b < a; b++) {
                long more = load[one] + load[other] - load[reel[a]] - load[reel[b]];
                boolean same = reel[a] == one || reel[a] == other;
                if (more >= 0 && more <= room && !same) {
                    loose[looseSize - 1] = reel[a];
                    loose[looseSize - 2] = reel[b];
                    reel[a] = one;
                    reel[b] = other;
                    waste += more;
                    return true;
                }
            }
        }
        return false;
    }

    /** Makes a reel of loose pieces, the one at a place among them, that wastes no more than may be. */
    private boolean closed(int place) {
        if (kept.size() >= fewest || !filling.found(place)) {
            return false;
        }
        int[] reel = filling.pieces();
        kept.add(reel);
        waste -= cap - loadOf(reel);
        return true;
    }

    /** The kept reels, and the loose pieces as well as they go by themselves. */
    private void offer() {
        PartialPlan plan = new PartialPlan(instance);
        for (int[] reel : kept) {
            int[] ones = new int[reel.length];
            Arrays.fill(ones, 1);
            plan.cut(Pattern.of(instance, 0, new int[reel.length], reel, ones, reel.length), 1);
        }
        filler.complete(plan, load, GreedyHeuristic.Manner.LEAST_SLACK, 0, budget);
        best.offer(plan.reels);
    }

    /** The fullest reel that loose pieces make with a given one, found in so many steps. */
    private final class Filling {
        private final List<Integer> chosen = new ArrayList<>();
        private final List<Integer> fullest = new ArrayList<>();
        private long least;
        private int nodes;

        boolean found(int place) {
            toEnd(place, looseSize - 1);
            chosen.clear();
            fullest.clear();
            least = waste + 1;
            nodes = 0;
            chosen.add(looseSize - 1);
            descend(looseSize - 1, cap - load[loose[looseSize - 1]]);
            budget.spend(nodes);
            return !fullest.isEmpty();
        }

        private void descend(int below, long room) {
            if (room < least) {
                least = room;
                fullest.clear();
                fullest.addAll(chosen);
            }
            for (int next = below - 1; next >= 0 && least > 0 && nodes < FILL_NODES; next--) {
                if (load[loose[next]] <= room) {
                    nodes++;
                    chosen.add(next);
                    descend(next, room - load[loose[next]]);
                    chosen.remove(chosen.size() - 1);
                }
            }
        }

        /** Takes them off the list; their places fall, so that those behind them can move up. */
        int[] pieces() {
            int[] pieces = new int[fullest.size()];
            for (int n = 0; n < pieces.length; n++) {
                int place = fullest.get(n);
                pieces[n] = loose[place];
                loose[place] = loose[--looseSize];
            }
            return pieces;
        }
    }
}
