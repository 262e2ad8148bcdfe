package bitterend.packing.patterns;

import bitterend.packing.proof.FewestProof;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** The best plan so far. Takes plans from several threads; what it takes is trimmed, priced and checked here. */
final class Incumbent {
    private final Instance instance;
    private final Consumer<Progress> listener;
    private List<Pattern> plan = List.of();
    private long weight;
    private long cost;
    private long bound;
    private long weightBound;
    private Optional<FewestProof> denial = Optional.empty();

    Incumbent(Instance instance, Consumer<Progress> listener) {
        this.instance = instance;
        this.listener = listener;
        weight = instance.weightOf(instance.demand);
    }

    /** One entry for each reel; what is cut too often is trimmed. True if it is the best now. */
    synchronized boolean offer(List<Pattern> reels) {
        int[] left = instance.demand.clone();
        int[] supply = new int[instance.types.length];
        for (ReelType type : instance.types) {
            supply[type.index] = type.supply;
        }
        long sum = 0;
        for (Pattern pattern : reels) {
            pattern.takeFrom(left, 1);
            sum += pattern.cost;
            if (--supply[pattern.type] < 0) {
                return false;
            }
        }
        List<Pattern> sound = reels;
        for (int i = 0; i < left.length; i++) {
            if (left[i] < 0) {
                sound = new Overproduction(instance).trimmed(reels, left);
                sum = sound.stream().mapToLong(pattern -> pattern.cost).sum();
                break;
            }
        }
        return keep(sound, left, sum);
    }

    private boolean keep(List<Pattern> sound, int[] left, long sum) {
        long out = instance.weightOf(left);
        if (out > weight || (out == weight && sum >= cost && !plan.isEmpty())) {
            return false;
        }
        plan = new ArrayList<>(sound);
        weight = out;
        cost = sum;
        listener.accept(new Progress(weight, cost, Math.min(bound, cost)));
        return true;
    }

    /** Records a proven bound on what this way of leaving out makes of the cost. */
    synchronized void raise(long proven, Rejection rejection) {
        if (rejection.mode() == Rejection.Mode.PRICED) {
            weightBound = Math.max(weightBound, proven);
        } else if (rejection.weight() >= weight && proven > bound) {
            bound = proven;
            listener.accept(new Progress(weight, cost, Math.min(bound, cost)));
        }
    }

    /** Keeps why a plan of one reel less than the best one cannot be. */
    synchronized void deny(FewestProof proof) {
        denial = Optional.of(proof);
    }

    /** Why a reel less is too few, where that was shown by cases. */
    synchronized Optional<FewestProof> denial() {
        return denial;
    }

    synchronized boolean complete() {
        return weight == 0;
    }

    /** Nothing better exists, as far as this way of leaving out goes. */
    synchronized boolean closed(Rejection rejection) {
        return rejection.mode() == Rejection.Mode.PRICED
                ? weightBound >= weight
                : rejection.weight() >= weight && bound >= cost;
    }

    /** What a plan must stay below to be of interest. */
    synchronized long cutoff(Rejection rejection) {
        if (rejection.mode() == Rejection.Mode.PRICED) {
            return weight;
        }
        return weight > rejection.weight() ? Long.MAX_VALUE / 4 : cost;
    }

    synchronized long weight() {
        return weight;
    }

    synchronized long cost() {
        return cost;
    }

    synchronized long bound() {
        return Math.min(bound, cost);
    }

    synchronized long weightBound() {
        return Math.min(weightBound, weight);
    }

    synchronized List<Pattern> plan() {
        return plan;
    }
}
