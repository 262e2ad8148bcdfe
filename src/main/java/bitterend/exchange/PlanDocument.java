package bitterend.exchange;

import bitterend.finding.Finding;
import bitterend.measure.MoneyText;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A cutting plan with what is needed to tell where it came from, to check it and to print it.
 *
 * @param number its number in the shop, from 1 on; 0 for one that has none
 * @param plan the plan
 * @param money the currency its costs are in
 * @param made how it was made
 * @param facts what it was made from
 */
public record PlanDocument(int number, CutPlan plan, MoneyText money, Made made, PlanFacts facts) {
    public PlanDocument {
        if (number < 0) {
            throw new IllegalArgumentException("number of a plan: " + number);
        }
    }

    /**
     * How a plan was made.
     *
     * @param engine version of the program
     * @param seed seed of every random choice
     * @param effort how hard it was looked for, in a word; empty where it is not known
     * @param time how long the search was allowed to take, to the millisecond
     * @param inputs SHA-256 of every file it was made from, by file name
     * @param leftOut why order lines are not in it, for who reads it; not known of one that was read
     */
    public record Made(
            String engine, long seed, String effort, Duration time, Map<String, String> inputs, List<Finding> leftOut) {
        public Made {
            leftOut = List.copyOf(leftOut);
            inputs = Collections.unmodifiableMap(new TreeMap<>(inputs));
        }
    }

    /** What the plan was asked; nothing where its form does not say so. */
    public Optional<PackingProblem> question() {
        return facts instanceof PlanFacts.Whole whole ? Optional.of(whole.problem()) : Optional.empty();
    }

    /** The same plan under a number. */
    public PlanDocument numbered(int other) {
        return new PlanDocument(other, plan, money, made, facts);
    }
}
