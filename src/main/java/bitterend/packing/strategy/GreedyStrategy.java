package bitterend.packing.strategy;

import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.greedy.GreedyPacker;
import java.util.List;

/** The quick starts alone: no search, nothing proven. */
public final class GreedyStrategy implements Packer {
    @Override
    public Result pack(PackingProblem problem, Effort effort) {
        Packing packing = new GreedyPacker(problem).best();
        return new Result(packing, new PlanPrice(problem).of(packing), List.of());
    }
}
