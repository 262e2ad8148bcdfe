package bitterend.packing.patterns.fewest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import bitterend.packing.proof.FewestProof;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The parts of the search: the question, its program, where it branches, one tree, and what is written of it. */
final class TreeTest {
    /** Two reels of 10 for 6, 5, 5, 4 hold all; for 6, 6, 4, 3 with a piece of 1 they do, too; for 7, 7, 5 they do not. */
    private static ReelQuestion question(int room, int reels, int... sizes) {
        int[] ones = new int[sizes.length];
        java.util.Arrays.fill(ones, 1);
        return new ReelQuestion(sizes, ones, room, reels);
    }

    @Test
    void question_knowsWhatEachReelMustHold() {
        ReelQuestion tight = question(10, 2, 7, 6, 5);
        assertEquals(2, tight.waste);
        assertEquals(8, tight.leastLoad());
        assertFalse(tight.isSpare());
        ReelQuestion loose = question(10, 3, 7, 6, 5);
        assertEquals(0, loose.leastLoad());
        assertTrue(loose.isSpare());
        ReelQuestion pieces = new ReelQuestion(new int[] {5, 2}, new int[] {2, 3}, 10, 2).pieceByPiece();
        assertEquals(5, pieces.items());
        assertEquals(4, pieces.waste);
        assertThrows(IllegalArgumentException.class, () -> question(10, 2, 5, 7));
        assertThrows(IllegalArgumentException.class, () -> question(10, 2, 11));
    }

    @Test
    void columns_areTheSameWhereTheyCutTheSame() {
        Column column = Column.of(new int[] {0, 2, 0, 1});
        assertEquals(column, new Column(new int[] {1, 3}, new int[] {2, 1}));
        assertEquals(column.hashCode(), new Column(new int[] {1, 3}, new int[] {2, 1}).hashCode());
        assertEquals(1, column.leader());
        assertEquals(2, column.countOf(1));
        assertEquals(0, column.countOf(2));
    }

    @Test
    void program_cutsEachPieceOnce_andShutsWhatIsNotAllowed() {
        ReelQuestion question = question(10, 2, 6, 5, 5, 4);
        Program program = new Program(question, 1);
        Column first = new Column(new int[] {0, 3}, new int[] {1, 1});
        Column second = new Column(new int[] {1, 2}, new int[] {1, 1});
        assertTrue(program.add(first));
        assertFalse(program.add(first));
        assertTrue(program.add(second));
        int[] basics = program.basics();
        assertTrue(program.solve(Budget.endless()));
        double[] shares = program.shares(Budget.endless());
        assertEquals(1, shares[0], 1e-6);
        assertEquals(1, shares[1], 1e-6);
        program.enter(new Limits(question).with(new Decision(0, 3, 1), false), basics, Budget.endless());
        assertTrue(program.solve(Budget.endless()));
        assertEquals(0, program.shares(Budget.endless()).length);
        program.prices();
        int scale = program.scale();
        assertTrue(program.dearer());
        assertTrue(program.solve(Budget.endless()));
        int[] dearer = program.prices();
        assertTrue(program.scale() < scale, "prices that are dearer are coarser");
        assertTrue(first.worth(dearer) < PatternTable.LARGEST && first.worth(dearer) > program.scale());
    }

    @Test
    void rules_chooseWhatIsBroken_andNeverWhatIsWhole() {
        ReelQuestion question = question(10, 2, 5, 4, 3, 2);
        Program program = new Program(question, 1);
        program.add(new Column(new int[] {0, 1}, new int[] {1, 1}));
        program.add(new Column(new int[] {0, 2, 3}, new int[] {1, 1, 1}));
        program.add(new Column(new int[] {1, 2}, new int[] {1, 1}));
        double[] broken = {0.25, 0.75, 1};
        for (Rule rule : Rule.values()) {
            Decision chosen = rule.best(1, question, program, broken).get(0);
            assertEquals(0, chosen.leader());
            assertEquals(List.of(), rule.best(1, question, program, new double[] {1, 0, 1}));
        }
        assertEquals(
                new Decision(0, 1, 1),
                Rule.LONGEST.best(1, question, program, broken).get(0));
        assertTrue(Rule.MIXED.score(1, 0.5) > Rule.MIXED.score(1, 0.1));
        assertTrue(Rule.BROKEN.score(1, 0.3) > Rule.BROKEN.score(2, 0.2));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void tree_endsWithAPlan_orIsWrittenDownWhole(boolean triesSides) {
        int branched = 0;
        int sides = 0;
        for (int seed = 0; seed < 200; seed++) {
            ReelQuestion drawn = seed % 20 == 0 ? Questions.graph(seed) : Questions.drawn(new Random(seed), 12);
            ReelQuestion question = drawn.pieceByPiece();
            if (question.waste < 0) {
                continue;
            }
            boolean enough = Questions.fewest(drawn) <= question.reels;
            Tree tree =
                    new Tree(question, new Program(question, 1), new PatternTable(question), Rule.MIXED, triesSides);
            assertTrue(tree.run(10_000, Budget.endless()), "seed " + seed);
            assertFalse(tree.isStuck(), "seed " + seed);
            assertEquals(enough, !tree.plan().isEmpty(), "seed " + seed);
            if (!enough) {
                FewestProof proof = DenialWriter.of(question, tree.root);
                int written = 2 * Questions.leaves(proof.root()) - 1;
                assertTrue(tree.nodes() >= written, "seed " + seed);
                sides += tree.nodes() - written;
                assertEquals(question.reels, proof.reels());
                branched += Questions.leaves(proof.root()) > 1 ? 1 : 0;
            }
        }
        assertTrue(branched > 0, "branched " + branched);
        assertEquals(triesSides, sides > 0, "sides tried " + sides);
    }
}
