package bitterend.bench;

import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.search.Profile;
import bitterend.packing.search.Search;
import bitterend.packing.strategy.EffortLevel;
import bitterend.packing.strategy.FullStrategy;
import java.util.List;

/** A way of packing a day. */
enum Way implements Packer {
    /** Longest piece first, on the first run with room. */
    FIRST_FIT("first fit") {
        @Override
        public Result pack(PackingProblem problem, Effort effort) {
            return unproven(problem, new GreedyPacker(problem).firstFit());
        }
    },
    /** Longest piece first, where it costs least. */
    BEST_FIT("best fit") {
        @Override
        public Result pack(PackingProblem problem, Effort effort) {
            return unproven(problem, new GreedyPacker(problem).bestFit());
        }
    },
    /** The best greedy start, improved under all rules until the time is over. */
    SEARCH("search alone") {
        @Override
        public Result pack(PackingProblem problem, Effort effort) {
            Packing start = new GreedyPacker(problem).best();
            return unproven(problem, Search.improve(problem, start, effort, Profile.thorough(), Cost.ZERO));
        }
    },
    /** Greedy starts and patterns, with their bound. */
    PATTERNS("patterns alone") {
        @Override
        public Result pack(PackingProblem problem, Effort effort) {
            return FullStrategy.patternsAlone().pack(problem, effort);
        }
    },
    /** The whole chain, as the command {@code plan} runs it. */
    BOTH("both") {
        @Override
        public Result pack(PackingProblem problem, Effort effort) {
            return FullStrategy.at(EffortLevel.QUICK).pack(problem, effort);
        }
    };

    private final String title;

    Way(String title) {
        this.title = title;
    }

    /** As printed. */
    String title() {
        return title;
    }

    private static Packer.Result unproven(PackingProblem problem, Packing packing) {
        return new Packer.Result(packing, new PlanPrice(problem).of(packing), List.of());
    }
}
