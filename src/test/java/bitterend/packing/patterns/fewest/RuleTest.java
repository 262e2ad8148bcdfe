package bitterend.packing.patterns.fewest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Where the search branches, what the sides allow, and what is cut from a reel. */
final class RuleTest {
    private static final ReelQuestion QUESTION =
            new ReelQuestion(new int[] {10, 9, 8, 1}, new int[] {1, 1, 1, 2}, 20, 3);

    private static Optional<Decision> chosen(Rule rule, double[] shares) {
        Program program = new Program(QUESTION, 1);
        program.add(new Column(new int[] {0, 3}, new int[] {1, 1}));
        program.add(new Column(new int[] {1, 2}, new int[] {1, 1}));
        program.add(new Column(new int[] {0, 1}, new int[] {1, 1}));
        program.add(new Column(new int[] {3}, new int[] {2}));
        return rule.best(1, QUESTION, program, shares).stream().findFirst();
    }

    @Test
    void longest_isThePairOfTheMostLoad_notTheFirst() {
        assertEquals(
                new Decision(1, 2, 1),
                chosen(Rule.LONGEST, new double[] {0.5, 0.1, 0, 0}).orElseThrow());
        assertEquals(
                new Decision(0, 1, 1),
                chosen(Rule.LONGEST, new double[] {0.5, 0.1, 0.1, 0}).orElseThrow());
    }

    @Test
    void broken_isWhatIsOpenMost_andOfTwoTheFirst() {
        assertEquals(
                new Decision(0, 3, 1),
                chosen(Rule.BROKEN, new double[] {0.5, 0.1, 0.3, 0}).orElseThrow());
        assertEquals(
                new Decision(1, 2, 1),
                chosen(Rule.BROKEN, new double[] {0.9, 0.3, 0.2, 0}).orElseThrow());
        assertEquals(
                new Decision(0, 1, 1),
                chosen(Rule.BROKEN, new double[] {0.25, 0.25, 0.25, 0}).orElseThrow());
    }

    @Test
    void best_areInOrder_asManyAsAskedFor() {
        Program program = new Program(QUESTION, 1);
        program.add(new Column(new int[] {0, 3}, new int[] {1, 2}));
        program.add(new Column(new int[] {1, 2}, new int[] {1, 1}));
        double[] shares = {0.5, 0.3};
        List<Decision> all = Rule.BROKEN.best(10, QUESTION, program, shares);
        assertEquals(List.of(new Decision(0, 3, 1), new Decision(0, 3, 2), new Decision(1, 2, 1)), all);
        assertEquals(all.subList(0, 2), Rule.BROKEN.best(2, QUESTION, program, shares));
        assertEquals(
                new Decision(1, 2, 1),
                Rule.LONGEST.best(10, QUESTION, program, shares).get(0));
    }

    @Test
    void mixed_weighsBoth() {
        assertEquals(
                new Decision(1, 2, 1),
                chosen(Rule.MIXED, new double[] {0.5, 0.4, 0, 0}).orElseThrow());
        assertEquals(
                new Decision(0, 3, 1),
                chosen(Rule.MIXED, new double[] {0.5, 0.1, 0, 0}).orElseThrow());
        assertEquals(0.85 * 0.5, Rule.MIXED.score(0.85, 0.3), 1e-12);
    }

    @Test
    void whatIsWhole_orLedByOneOfSeveral_isNotBranchedOn() {
        for (Rule rule : Rule.values()) {
            assertTrue(chosen(rule, new double[] {1, 1, 0, 0.5}).isEmpty());
            assertTrue(chosen(rule, new double[] {0, 0, 0, 0}).isEmpty());
        }
        assertEquals(0.85, Rule.LONGEST.score(0.85, 0.3));
        assertEquals(0.3, Rule.BROKEN.score(0.85, 0.3));
    }

    @Test
    void sharesOfSeveralColumns_areSummedByWhatTheyHold() {
        ReelQuestion question = new ReelQuestion(new int[] {10, 2, 1}, new int[] {1, 4, 4}, 20, 3);
        Program program = new Program(question, 1);
        program.add(new Column(new int[] {0, 1}, new int[] {1, 2}));
        program.add(new Column(new int[] {0, 1, 2}, new int[] {1, 1, 1}));
        assertEquals(
                new Decision(0, 1, 2),
                Rule.LONGEST.best(1, question, program, new double[] {0.4, 0.6}).get(0));
    }

    @Test
    void columns_thatCutDifferently_areDifferent_andTheirHashesHardlyEverMeet() {
        Set<Column> all = new HashSet<>();
        for (int seed = 0; seed < 30; seed++) {
            all.addAll(Questions.patterns(Questions.drawn(new Random(seed), 9)));
        }
        long hashes = all.stream().mapToInt(Column::hashCode).distinct().count();
        assertTrue(hashes * 10 > all.size() * 9L, hashes + " of " + all.size());
        Column column = new Column(new int[] {0, 2}, new int[] {1, 1});
        assertNotEquals(column, new Column(new int[] {0, 1}, new int[] {1, 1}));
        assertNotEquals(column, new Column(new int[] {0, 2}, new int[] {1, 2}));
        assertNotEquals(column, new Object());
    }

    @Test
    void aReelOfALeader_isAllowedByWhatIsDecidedOfIt() {
        int asked = 0;
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            ReelQuestion question = Questions.drawn(random, 8);
            Decision decision = question.waste < 0 ? null : Questions.decision(question, random);
            if (decision == null) {
                continue;
            }
            Limits yes = new Limits(question).with(decision, true);
            Limits no = new Limits(question).with(decision, false);
            for (Column column : Questions.patterns(question)) {
                boolean leads = column.leader() == decision.leader();
                boolean holds = column.countOf(decision.item()) >= decision.copies();
                String where = "seed " + seed + ": " + decision + " " + Arrays.toString(column.item)
                        + Arrays.toString(column.count);
                assertEquals(!leads || !holds, no.allows(column), where);
                boolean leaves = column.countOf(decision.leader()) == 0
                        && column.countOf(decision.item()) <= question.count[decision.item()] - decision.copies();
                assertEquals(leads ? holds : leaves, yes.allows(column), where);
                asked++;
            }
        }
        assertTrue(asked > 1_000, "asked " + asked);
    }

    @Test
    void aLeaderThatMayLeadNoReel_allowsNone() {
        ReelQuestion question = new ReelQuestion(new int[] {9, 5, 2}, new int[] {1, 1, 3}, 20, 2);
        Limits limits = new Limits(question).with(new Decision(0, 1, 1), true).with(new Decision(1, 2, 1), false);
        assertFalse(limits.allows(new Column(new int[] {1}, new int[] {1})));
        assertFalse(limits.allows(new Column(new int[] {1, 2}, new int[] {1, 1})));
        assertTrue(limits.allows(new Column(new int[] {0, 1}, new int[] {1, 1})));
        assertTrue(limits.allows(new Column(new int[] {2}, new int[] {3})));
        assertEquals(
                List.of(Limits.Group.ANY, 0),
                limits.groups().stream().map(group -> group.leader).toList());
    }

    @Test
    void tree_thatIsOutOfTime_leavesItsNodeOpen_andGoesOnLater() {
        int wentOn = 0;
        for (int seed = 0; seed < 4; seed++) {
            ReelQuestion question = Questions.graph(seed).pieceByPiece();
            Tree tree = new Tree(question, new Program(question, 1), new PatternTable(question), Rule.LONGEST, false);
            Budget nothing = Budget.endless().part(0);
            nothing.spend(1 << 20);
            assertFalse(tree.run(1, nothing), "seed " + seed);
            assertEquals(0, tree.nodes());
            boolean answered = tree.run(1, Budget.endless());
            assertEquals(1, tree.nodes());
            while (!answered) {
                answered = tree.run(3, Budget.endless());
                wentOn++;
            }
            assertTrue(tree.plan().isEmpty() && !tree.isStuck(), "seed " + seed);
        }
        assertTrue(wentOn > 0, "went on " + wentOn);
    }

    @Test
    void begin_looksShortly_andRunGoesOn() {
        ReelQuestion question = Questions.drawn(new Random(3), 13);
        FewestReels search = new FewestReels(Questions.with(question, Questions.fewest(question)));
        assertEquals(Questions.fewest(question), search.reels());
        search.begin(Budget.endless());
        List<int[][]> plan = search.plan();
        assertFalse(plan.isEmpty());
        search.run(Budget.endless());
        assertEquals(plan, search.plan());
        FewestReels denied = new FewestReels(Questions.graph(2));
        denied.begin(Budget.endless());
        denied.run(Budget.endless());
        assertTrue(denied.plan().isEmpty() && denied.denial().isPresent());
    }

    @Test
    void question_knowsItsWasteAndItsPieces() {
        ReelQuestion question = new ReelQuestion(new int[] {6, 3}, new int[] {2, 3}, 10, 3);
        assertEquals(9, question.waste);
        assertEquals(1, question.leastLoad());
        assertFalse(question.isSpare());
        assertEquals("[0, 0, 1, 1, 1]", Arrays.toString(question.origins()));
        assertEquals("[6, 6, 3, 3, 3]", Arrays.toString(question.pieceByPiece().size));
        assertTrue(new ReelQuestion(new int[] {10}, new int[] {2}, 10, 3).isSpare());
        assertFalse(new ReelQuestion(new int[] {10}, new int[] {2}, 10, 2).isSpare());
    }
}
