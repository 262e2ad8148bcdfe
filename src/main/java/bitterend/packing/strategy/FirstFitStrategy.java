package bitterend.packing.strategy;

import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.greedy.GreedyPacker;
import java.util.List;

/** The rule of thumb alone, to compare with: pins and sets, then the longest piece first on the first reel with room. */
public final class FirstFitStrategy implements Packer {
    @Override
    public Result pack(PackingProblem problem, Effort effort) {
        Packing packing = new GreedyPacker(problem).firstFit();
        return new Result(packing, new PlanPrice(problem).of(packing), List.of());
    }
}
