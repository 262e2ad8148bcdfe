package bitterend.packing.patterns.fewest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.bench.HardProblems;
import bitterend.bench.Instance;
import bitterend.packing.check.FewestCheck;
import bitterend.packing.effort.Budget;
import bitterend.packing.patterns.Effort;
import bitterend.packing.patterns.Item;
import bitterend.packing.patterns.PatternPacker;
import bitterend.packing.patterns.PatternPlan;
import bitterend.packing.patterns.ReelKind;
import bitterend.packing.proof.FewestProof;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whether so many reels are enough: the answer against all ways to cut, and what is denied against the checker. */
final class FewestReelsTest {
    private static final int QUESTIONS = 4 * Math.max(60, Integer.getInteger("shops", 200));

    @Test
    void answer_isThatOfAllWays_andTheCheckerConfirmsWhatIsDenied() {
        int denied = 0;
        int planned = 0;
        for (int seed = 0; seed < QUESTIONS; seed++) {
            ReelQuestion drawn = Questions.drawn(new Random(seed), 13);
            int fewest = Questions.fewest(drawn);
            for (int reels = fewest - 1; reels <= fewest; reels++) {
                ReelQuestion question = Questions.with(drawn, reels);
                if (!FewestReels.isFor(question)) {
                    continue;
                }
                FewestReels search = new FewestReels(question);
                search.run(Budget.endless());
                String where = "seed " + seed + ", " + reels + " of " + fewest + " reels";
                assertEquals(reels < fewest, search.denial().isPresent(), where);
                assertEquals(reels >= fewest, !search.plan().isEmpty(), where);
                if (search.denial().isPresent()) {
                    FewestProof proof = search.denial().get();
                    assertEquals("", FewestCheck.fault(proof, question.room, sizes(question), reels), where);
                    denied++;
                } else {
                    isWhole(question, search.plan(), where);
                    planned++;
                }
            }
        }
        assertTrue(denied > QUESTIONS / 20, "denied " + denied);
        assertTrue(planned > QUESTIONS / 2, "planned " + planned);
    }

    @Test
    void piecesThatReelsHoldInTheMeanOnly_areDeniedByBranching() {
        for (int seed = 0; seed < 20; seed++) {
            ReelQuestion question = Questions.graph(seed);
            assertEquals(3, question.reels);
            assertEquals(4, Questions.fewest(question), "seed " + seed);
            FewestReels search = new FewestReels(question);
            search.run(Budget.endless());
            FewestProof proof = search.denial().orElseThrow();
            assertTrue(Questions.leaves(proof.root()) > 1, "seed " + seed);
            assertEquals("", FewestCheck.fault(proof, question.room, sizes(question), 3), "seed " + seed);
            FewestReels more = new FewestReels(Questions.with(question, 4));
            more.run(Budget.endless());
            isWhole(Questions.with(question, 4), more.plan(), "seed " + seed);
        }
    }

    private static Map<Long, Integer> sizes(ReelQuestion question) {
        Map<Long, Integer> sizes = new TreeMap<>();
        for (int i = 0; i < question.items(); i++) {
            sizes.merge((long) question.size[i], question.count[i], Integer::sum);
        }
        return sizes;
    }

    private static void isWhole(ReelQuestion question, List<int[][]> plan, String where) {
        Map<Long, Integer> cut = new TreeMap<>();
        assertTrue(plan.size() <= question.reels, where);
        for (int[][] reel : plan) {
            int load = 0;
            for (int t = 0; t < reel[0].length; t++) {
                load += question.size[reel[0][t]] * reel[1][t];
                cut.merge((long) question.size[reel[0][t]], reel[1][t], Integer::sum);
            }
            assertTrue(load <= question.room, where);
        }
        assertEquals(sizes(question), cut, where);
    }

    @ParameterizedTest
    @EnumSource(
            value = HardProblems.Kind.class,
            names = {"GAP", "SPLIT"})
    void hardProblems_areProven_eachByCasesOrByAPlan(HardProblems.Kind kind) {
        for (int seed = 300; seed < 303; seed++) {
            Instance instance = Instance.of(HardProblems.drawn(kind, 90, 5000, seed));
            PatternPlan plan = PatternPacker.pack(instance.problem(), Effort.ofWork(3_000_000_000L));
            assertEquals(instance.upper(), plan.cost(), instance.name());
            assertTrue(plan.proven(), instance.name());
            plan.denial().ifPresent(proof -> assertEquals(instance.upper() - 1, proof.reels()));
        }
    }

    /** Searches in turn share their columns, of which many are dropped once: each goes on where it was. */
    @Test
    void searchesInTurn_denyWhatTheCheckerConfirms() {
        int dropped = 0;
        for (int seed = 300; seed < 306; seed++) {
            Instance instance = Instance.of(HardProblems.drawn(HardProblems.Kind.GAP, 150, 2500, seed));
            ReelQuestion question = reelLess(instance);
            Program program = new Program(question, seed);
            PatternTable table = new PatternTable(question);
            List<Tree> trees = Arrays.stream(Rule.values())
                    .flatMap(rule -> Stream.of(false, true)
                            .map(triesSides -> new Tree(question, program, table, rule, triesSides)))
                    .toList();
            Optional<Tree> answered = Optional.empty();
            for (int turn = 0; answered.isEmpty(); turn++) {
                assertTrue(turn < 3_000, instance.name());
                Tree tree = trees.get(turn % trees.size());
                answered = tree.run(1, Budget.endless()) ? Optional.of(tree) : Optional.empty();
            }
            dropped += answered.get() == trees.get(0) && trees.get(1).nodes() == 0 ? 0 : program.dropped();
            assertEquals(List.of(), answered.get().plan());
            FewestProof proof = DenialWriter.of(question, answered.get().root);
            assertEquals("", FewestCheck.fault(proof, question.room, sizes(question), question.reels), instance.name());
        }
        assertTrue(dropped > 0);
    }

    private static ReelQuestion reelLess(Instance instance) {
        ReelKind reel = instance.problem().reels().get(0);
        int[] size = reel.lengths().stream()
                .mapToInt(length -> Math.toIntExact(length + reel.cutLoss()))
                .toArray();
        int[] count = instance.problem().items().stream().mapToInt(Item::demand).toArray();
        return new ReelQuestion(
                size,
                count,
                Math.toIntExact(reel.runs().get(0).length() + reel.cutLoss()),
                Math.toIntExact(instance.upper() - 1));
    }

    @Test
    void aPlan_namesItemsOfOneLengthApart() {
        ReelQuestion question = new ReelQuestion(new int[] {6, 6, 4, 4, 4}, new int[] {1, 2, 1, 1, 1}, 10, 3);
        FewestReels search = new FewestReels(question);
        search.run(Budget.endless());
        int[] cut = new int[5];
        search.plan().forEach(reel -> {
            for (int t = 0; t < reel[0].length; t++) {
                cut[reel[0][t]] += reel[1][t];
            }
        });
        assertEquals(
                List.of(1, 2, 1, 1, 1), java.util.Arrays.stream(cut).boxed().toList());
    }

    @Test
    void aBudgetThatEnds_leavesTheQuestionOpen() {
        ReelQuestion question = Questions.drawn(new Random(3), 13);
        FewestReels search = new FewestReels(Questions.with(question, Questions.fewest(question)));
        Budget nothing = Budget.endless().part(0);
        nothing.spend(1 << 20);
        search.run(nothing);
        assertTrue(search.plan().isEmpty() && search.denial().isEmpty());
    }

    @Test
    void whatIsTooFinelyDivided_orDoesNotFit_isNotAsked() {
        assertFalse(FewestReels.isFor(new ReelQuestion(new int[] {2}, new int[] {3}, 5, 1)));
        assertFalse(FewestReels.isFor(new ReelQuestion(new int[] {2}, new int[] {3}, 30_000_000, 1)));
        assertTrue(FewestReels.isFor(new ReelQuestion(new int[] {2}, new int[] {3}, 6, 1)));
    }
}
