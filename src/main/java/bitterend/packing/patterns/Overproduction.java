package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.List;

/** Takes pieces that are cut once too often out of a plan, each from the reel that becomes cheapest without it. */
final class Overproduction {
    private final Instance instance;

    Overproduction(Instance instance) {
        this.instance = instance;
    }

    /** @param left what is still wanted, negative where too much is cut; brought to zero there */
    List<Pattern> trimmed(List<Pattern> reels, int[] left) {
        List<Pattern> plan = new ArrayList<>(reels);
        for (int i = 0; i < left.length; i++) {
            for (; left[i] < 0; left[i]++) {
                takeOut(plan, i);
            }
        }
        plan.removeIf(Pattern::empty);
        return plan;
    }

    private void takeOut(List<Pattern> plan, int item) {
        int at = -1;
        long best = 0;
        Pattern replacement = Pattern.NOTHING;
        Pattern before = Pattern.NOTHING;
        for (int r = 0; r < plan.size(); r++) {
            Pattern pattern = plan.get(r);
            if (pattern.equals(before) || pattern.countOf(item) == 0) {
                continue;
            }
            before = pattern;
            Pattern less = pattern.without(instance, item);
            long saving = pattern.cost - less.cost;
            if (at < 0 || saving > best) {
                at = r;
                best = saving;
                replacement = less;
            }
        }
        plan.set(at, replacement);
    }
}
