package bitterend.packing.strategy;

import bitterend.packing.Bound;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.patterns.PatternPacker;
import bitterend.packing.patterns.PatternPlan;
import java.util.ArrayList;
import java.util.List;

/**
 * One packing among the thousands of a study: greedy starts, and one quick look by patterns, with its bound. Limited by
 * work alone, in steps of the pattern engine, so that the same problem gives the same packing everywhere; the effort's
 * clock is not looked at.
 */
public final class StudyStrategy implements Packer {
    @Override
    public Result pack(PackingProblem problem, Effort effort) {
        List<Packing> packings = new ArrayList<>();
        List<Bound> bounds = new ArrayList<>();
        for (PackingProblem part : RopeGroups.of(problem)) {
            Packing packing = new GreedyPacker(part).best();
            PlanPrice prices = new PlanPrice(part);
            PatternBridge bridge = new PatternBridge(part);
            PatternPlan patterns = PatternPacker.pack(bridge.patterns(), steps(effort));
            Packing quick = new Handout(bridge, patterns).packing();
            Packing best = prices.isBetter(quick, packing) ? quick : packing;
            packings.add(best);
            bounds.add(new BoundOfPart(part, bridge, patterns).forUndone(prices.undone(best)));
        }
        Packing together = RopeGroups.together(packings);
        return new Result(together, new PlanPrice(problem).of(together), bounds);
    }

    /** As many steps as the effort's work says, and never more than a quick look takes. */
    private static bitterend.packing.patterns.Effort steps(Effort effort) {
        bitterend.packing.patterns.Effort quick = bitterend.packing.patterns.Effort.quick();
        return new bitterend.packing.patterns.Effort(
                Math.min(quick.work(), effort.work()),
                quick.time(),
                effort.cancelled(),
                progress -> {},
                effort.seed(),
                quick.depth());
    }
}
