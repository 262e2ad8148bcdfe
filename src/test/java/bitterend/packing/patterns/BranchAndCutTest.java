package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The exact search among given patterns, run to its end and broken off at any moment. */
final class BranchAndCutTest {
    private static final int SHOPS = Math.max(40, Integer.getInteger("shops", 200) / 4);
    private static final long SEED = Long.getLong("shops.seed", 20260306);

    @Test
    void searchedToTheEnd_provesTheOptimum() {
        int searched = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            Case one = new Case(SEED + shop, 8, 12);
            if (!one.usable()) {
                continue;
            }
            BranchAndCut selection = one.selection(one.best.cost());
            if (selection.open(one.patterns, new int[one.instance.types.length], one.most, Budget.endless())) {
                selection.search(Budget.endless());
                assertEquals(one.optimum, one.best.cost(), one.where);
                assertTrue(Math.min(selection.bound(), one.best.cost()) <= one.optimum, one.where);
                searched++;
            }
        }
        assertTrue(searched > SHOPS / 2, "searched " + searched);
    }

    @Test
    void brokenOff_provesNoMoreThanTheOptimum() {
        int open = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            Case one = new Case(SEED + shop, 8, 12);
            for (int steps = 1; one.usable() && steps < 200_000; steps *= 4) {
                Incumbent best = new Incumbent(one.instance, progress -> {});
                best.offer(one.start);
                BranchAndCut selection =
                        new BranchAndCut(one.instance, best, best.cost() + 10 * one.instance.step, shop);
                Budget budget = Budget.endless().part(steps);
                if (selection.open(one.patterns, new int[one.instance.types.length], one.most, budget)) {
                    selection.search(budget);
                    assertTrue(
                            Math.min(selection.bound(), best.cost()) <= one.optimum,
                            one.where + " after " + steps + " steps: " + selection.bound());
                    open += Math.min(selection.bound(), best.cost()) < best.cost() ? 1 : 0;
                }
            }
        }
        assertTrue(open > SHOPS / 8, "hardly any search was broken off: " + open);
    }

    /** Told to stop at the first question, the second, and so on: no node that is open then may be forgotten. */
    @Test
    void stoppedAtAnyQuestion_provesNoMoreThanTheOptimum() {
        int open = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            Case one = new Case(SEED + shop, 8, 12);
            for (int questions = 0; one.usable() && questions < 40; questions++) {
                Incumbent best = new Incumbent(one.instance, progress -> {});
                best.offer(one.start);
                BranchAndCut selection =
                        new BranchAndCut(one.instance, best, best.cost() + 10 * one.instance.step, shop);
                int[] left = {questions};
                Budget budget = Budget.of(Long.MAX_VALUE, Duration.ofDays(1), () -> --left[0] < 0);
                if (selection.open(one.patterns, new int[one.instance.types.length], one.most, Budget.endless())) {
                    selection.search(budget);
                    assertTrue(
                            Math.min(selection.bound(), best.cost()) <= one.optimum,
                            one.where + " after " + questions + " questions: " + selection.bound());
                    open += Math.min(selection.bound(), best.cost()) < best.cost() ? 1 : 0;
                }
            }
        }
        assertTrue(open > SHOPS / 8, "hardly any search was broken off: " + open);
    }

    /** A task with all its patterns and its optimum. */
    static final class Case {
        final Instance instance;
        final Incumbent best;
        final List<Pattern> patterns;
        final List<Pattern> start;
        final int[] most;
        final String where;
        long optimum = -1;

        Case(long seed, int fewest, int mostPieces) {
            PatternProblem problem = TreeShops.all(new Random(seed), fewest, mostPieces);
            instance = new Normaliser(problem).instance();
            where = "seed " + seed + " " + problem;
            best = new Incumbent(instance, progress -> {});
            new InitialPlans(instance, best, 1, Budget.endless()).run(1);
            start = best.plan();
            patterns = AllPatterns.of(instance);
            most = NodeBoundTest.supplies(instance);
            StateReferee.optimum(instance)
                    .filter(found -> found.weight() == 0)
                    .ifPresent(found -> optimum = found.cost());
        }

        boolean usable() {
            return optimum >= 0 && best.complete() && !patterns.isEmpty();
        }

        BranchAndCut selection(long highest) {
            return new BranchAndCut(instance, best, highest, 1);
        }
    }
}
