package bitterend.packing.check;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.loads.BestPlans;
import bitterend.packing.loads.LoadPacker;
import bitterend.packing.loads.TightDay;
import bitterend.packing.proof.ProofTree;
import java.math.BigInteger;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The proofs of the load engine, read by a checker that knows nothing of it. {@code -Dtight.days=N} looks at more days. */
final class LoadProofTest {
    private static final int DAYS = Integer.getInteger("tight.days", 150);
    private static final Effort EFFORT = new Effort(Duration.ofDays(1), 400_000, 0, 1, () -> false, progress -> {});

    @Test
    void proofs_areConfirmedWhole() {
        for (int seed = 0; seed < DAYS; seed++) {
            PackingProblem day = TightDay.of(seed, 8);
            String name = "seed " + seed;
            LoadPacker.of(day, new BestPlans(day), seed).ifPresent(engine -> confirm(name, day, engine.run(EFFORT)));
        }
    }

    private static void confirm(String name, PackingProblem day, LoadPacker.Answer answer) {
        ProofGoal money =
                new ProofGoal(0, answer.proof().scale(), answer.undone().weights());
        confirm(name, day, answer.proof(), money, answer.shown());
        for (LoadPacker.LeastWork least : answer.least()) {
            List<Long> before = answer.undone().weights().subList(0, least.urgency() - 1);
            ProofGoal goal = new ProofGoal(least.urgency(), least.proof().scale(), before);
            confirm(name + ", class " + least.urgency(), day, least.proof(), goal, least.weight());
        }
    }

    private static void confirm(String name, PackingProblem day, ProofTree proof, ProofGoal goal, long claimed) {
        Optional<BigInteger> proven = RandomProof.check(day, proof, goal).proven();
        assertTrue(
                proven.isEmpty() || proven.get().compareTo(BigInteger.valueOf(claimed)) >= 0,
                name + ": " + claimed + " claimed, " + proven + " proven");
    }
}
