package bitterend.packing.check;

import bitterend.packing.proof.ProofNode;
import bitterend.packing.proof.ProofTree;
import bitterend.packing.proof.Statement;
import java.math.BigInteger;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Follows a proof by cases to its leaves and computes what each of them proves, with an exact table of its own for each
 * run. Knows nothing of how the proof was found.
 */
final class ProofCheck {
    private final ProofDay day;
    private final ProofTree proof;
    private final ProofGoal goal;
    private final CaseDemand demand;
    private final CaseEarnings earnings;
    private final Map<Integer, ReadPrices> prices = new HashMap<>();

    /** A node and the answers that lead to it. */
    private record Step(ProofNode node, List<Answer> path) {}

    private record Answer(Statement statement, boolean yes) {}

    ProofCheck(ProofDay day, ProofTree proof, ProofGoal goal, LoadStates.Work work) {
        this.day = day;
        this.proof = proof;
        this.goal = goal;
        demand = new CaseDemand(day, goal, work);
        earnings = new CaseEarnings(day, goal, work);
    }

    /**
     * What the worst leaf proves, rounded up to whole 1/1000 minor units or units of weight; empty when no plan is left at
     * any leaf.
     *
     * @throws ProofRefused when the proof names what is not there, or calls a case empty that is not
     * @throws ArithmeticException when it would take too much work, or its numbers are too large
     */
    Optional<BigInteger> proven() {
        return leaves().stream()
                .flatMap(Optional::stream)
                .min(BigInteger::compareTo)
                .map(numerator -> ceiling(numerator, BigInteger.valueOf(proof.scale())));
    }

    /** What each leaf proves, in units of a price, those for which a statement is true first; empty where no plan is left. */
    List<Optional<BigInteger>> leaves() {
        List<Optional<BigInteger>> leaves = new ArrayList<>();
        Deque<Step> open = new ArrayDeque<>(List.of(new Step(proof.root(), List.of())));
        while (!open.isEmpty()) {
            Step step = open.pop();
            if (step.node() instanceof ProofNode.Branch branch) {
                open.push(new Step(branch.no(), with(step.path(), branch.statement(), false)));
                open.push(new Step(branch.yes(), with(step.path(), branch.statement(), true)));
            } else {
                leaves.add(ofLeaf(step));
            }
        }
        return leaves;
    }

    private static List<Answer> with(List<Answer> path, Statement statement, boolean yes) {
        List<Answer> longer = new ArrayList<>(path);
        longer.add(new Answer(statement, yes));
        return longer;
    }

    private Optional<BigInteger> ofLeaf(Step step) {
        ProofCase at = new ProofCase(day, goal.undone());
        step.path().forEach(answer -> at.narrow(answer.statement(), answer.yes()));
        at.conclude();
        if (step.node() instanceof ProofNode.Leaf leaf) {
            return at.isEmpty() ? Optional.empty() : numerator(at, prices(leaf.prices()));
        }
        if (step.node() instanceof ProofNode.Empty) {
            if (!at.isEmpty()) {
                throw new ProofRefused("the proof calls a case empty in which plans may be left");
            }
            return Optional.empty();
        }
        throw new ProofRefused("a node of an unknown kind: " + step.node());
    }

    private ReadPrices prices(int list) {
        if (list < 0 || list >= proof.prices().size()) {
            throw new ProofRefused("there is no price list " + list);
        }
        return prices.computeIfAbsent(
                list, number -> new ReadPrices(day, proof.prices().get(number)));
    }

    /** What prices prove in a case, in units of a price; empty when they show that no plan is left. */
    private Optional<BigInteger> numerator(ProofCase at, ReadPrices leaf) {
        BigInteger sum = BigInteger.ZERO;
        for (int urgency = 1; urgency <= goal.undone().size(); urgency++) {
            sum = sum.subtract(BigInteger.valueOf(leaf.undone(urgency))
                    .multiply(BigInteger.valueOf(goal.undone().get(urgency - 1))));
        }
        Optional<BigInteger> paid = demand.of(at, leaf);
        if (paid.isEmpty()) {
            return paid;
        }
        sum = sum.add(paid.get());
        for (int reel = 0; reel < day.reels().size(); reel++) {
            OptionalLong earned = earnings.of(at, leaf, reel);
            if (earned.isEmpty()) {
                return Optional.empty();
            }
            sum = sum.subtract(BigInteger.valueOf(earned.getAsLong()));
        }
        return Optional.of(sum);
    }

    private static BigInteger ceiling(BigInteger numerator, BigInteger scale) {
        BigInteger[] parts = numerator.divideAndRemainder(scale);
        return parts[1].signum() > 0 ? parts[0].add(BigInteger.ONE) : parts[0];
    }
}
