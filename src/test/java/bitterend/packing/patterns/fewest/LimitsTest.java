package bitterend.packing.patterns.fewest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** No plan falls between the two sides of a decision. */
final class LimitsTest {
    @Test
    void everyReelOfAPlan_isAllowedOnTheSideThatIsTrueOfIt() {
        int asked = 0;
        for (int seed = 0; seed < 600; seed++) {
            Random random = new Random(seed);
            ReelQuestion question = Questions.drawn(random, 12);
            List<Column> plan = plan(question, random);
            Limits limits = new Limits(question);
            for (int n = 0; n < 5; n++) {
                Decision decision = Questions.decision(question, random);
                if (decision == null) {
                    continue;
                }
                boolean holds = plan.stream()
                        .anyMatch(reel -> reel.leader() == decision.leader()
                                && reel.countOf(decision.item()) >= decision.copies());
                limits = limits.with(decision, holds);
                asked++;
                assertFalse(limits.isEmpty(), "seed " + seed);
                for (Column reel : plan) {
                    assertTrue(limits.allows(reel), "seed " + seed);
                }
            }
        }
        assertTrue(asked > 1000, "asked " + asked);
    }

    /** Pieces by lot into reels. */
    private static List<Column> plan(ReelQuestion question, Random random) {
        int[] left = question.count.clone();
        List<Column> plan = new ArrayList<>();
        while (java.util.Arrays.stream(left).sum() > 0) {
            int[] reel = new int[left.length];
            int room = question.room;
            for (int tries = 0; tries < 20; tries++) {
                int item = random.nextInt(left.length);
                if (left[item] > 0 && question.size[item] <= room) {
                    left[item]--;
                    reel[item]++;
                    room -= question.size[item];
                }
            }
            if (room < question.room) {
                plan.add(Column.of(reel));
            }
        }
        return plan;
    }

    @Test
    void aReelThatMustHold_isTheOnlyOneOfItsLeader_andOthersShareTheRest() {
        ReelQuestion question = new ReelQuestion(new int[] {9, 5, 2}, new int[] {1, 1, 3}, 20, 2);
        Limits limits = new Limits(question).with(new Decision(1, 2, 2), true);
        assertTrue(limits.allows(new Column(new int[] {1, 2}, new int[] {1, 2})));
        assertFalse(limits.allows(new Column(new int[] {1, 2}, new int[] {1, 1})));
        assertFalse(limits.allows(new Column(new int[] {0, 1}, new int[] {1, 1})));
        assertTrue(limits.allows(new Column(new int[] {0, 2}, new int[] {1, 1})));
        assertFalse(limits.allows(new Column(new int[] {0, 2}, new int[] {1, 2})));
        Limits other = new Limits(question).with(new Decision(1, 2, 2), false);
        assertTrue(other.allows(new Column(new int[] {1, 2}, new int[] {1, 1})));
        assertFalse(other.allows(new Column(new int[] {1, 2}, new int[] {1, 2})));
        assertTrue(other.allows(new Column(new int[] {0, 1, 2}, new int[] {1, 1, 3})));
    }

    @Test
    void twoReelsThatMustHoldMoreThanThereIs_leaveNoPlan() {
        ReelQuestion question = new ReelQuestion(new int[] {9, 5, 2}, new int[] {1, 1, 3}, 20, 2);
        Limits limits = new Limits(question).with(new Decision(0, 2, 2), true).with(new Decision(1, 2, 2), true);
        assertTrue(limits.isEmpty());
        assertTrue(new Limits(question)
                .with(new Decision(0, 1, 1), true)
                .with(new Decision(1, 2, 1), true)
                .isEmpty());
        assertEquals(1, new Limits(question).groups().size());
    }
}
