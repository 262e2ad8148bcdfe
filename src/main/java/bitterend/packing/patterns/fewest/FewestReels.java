package bitterend.packing.patterns.fewest;

import bitterend.packing.effort.Budget;
import bitterend.packing.proof.FewestProof;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Answers whether so many reels are enough.
 *
 * <p>Sources: P. C. Gilmore, R. E. Gomory, "A linear programming approach to the cutting stock problem", Operations Research 9
 * (1961) 849-859; L. S. Lasdon, <i>Optimization Theory for Large Systems</i>, Macmillan 1970 (what prices prove); F.
 * Vanderbeck, "Computational study of a column generation algorithm for bin packing and cutting stock problems", Mathematical
 * Programming 86 (1999) 565-594 (branching on what lies together). The waste that bounds each load, the branching on the
 * reel's longest piece and the race are ours.
 */
public final class FewestReels {
    /** Cells of a table, twice four bytes each. */
    private static final long MOST_CELLS = 12_500_000;
    /** Nodes of each rule in the first lap; four times as many in each after it. */
    private static final int FIRST_LAP = 30;

    private static final int LAPS = 3;
    private static final int LONGER = 4;
    /** Where sides are tried, each counts as a node. */
    private static final int SIDES = 2;

    private static final long SEED = 7;

    private final ReelQuestion question;
    private final Race whole;
    private @Nullable Race single;
    private List<int[][]> plan = List.of();
    private Optional<FewestProof> denial = Optional.empty();

    public FewestReels(ReelQuestion question) {
        this.question = question;
        whole = new Race(question);
    }

    /** Whether tables of it are small enough. */
    public static boolean isFor(ReelQuestion question) {
        return question.waste >= 0 && (long) question.items() * (question.room + 1) <= MOST_CELLS;
    }

    /** A short look: the first lap, whatever is equal taken together. */
    public void begin(Budget budget) {
        whole.lap(budget);
    }

    /** Looks for a plan or the reason why there is none, until that is found, or the laps or the budget end. */
    public void run(Budget budget) {
        boolean answered = isAnswered() || whole.run(budget);
        if (!answered && !budget.over()) {
            ReelQuestion apart = question.pieceByPiece();
            if (single == null && apart.items() > question.items() && isFor(apart)) {
                single = new Race(apart);
            }
            if (single != null) {
                single.run(budget);
            }
        }
    }

    /** How many reels it asks about. */
    public int reels() {
        return question.reels;
    }

    private boolean isAnswered() {
        return !plan.isEmpty() || denial.isPresent();
    }

    /**
     * One search by each rule, in turn; from the second lap on one more that tries sides: before it where reels need not be full,
     * else behind it, since it finds plans later.
     */
    private final class Race {
        private final ReelQuestion of;
        private final List<Tree> trees = new ArrayList<>();
        private int laps;
        private int length = FIRST_LAP;

        Race(ReelQuestion of) {
            this.of = of;
            Program program = new Program(of, SEED);
            PatternTable table = new PatternTable(of);
            for (Rule rule : Rule.values()) {
                trees.add(new Tree(of, program, table, rule, false));
                trees.add(new Tree(of, program, table, rule, true));
            }
            if (of.waste > 0) {
                // What is open most tells more where reels need not be full.
                Collections.reverse(trees);
            }
        }

        /** Whether it was answered. */
        boolean run(Budget budget) {
            boolean answered = false;
            while (laps < LAPS && !answered && !budget.over()) {
                answered = lap(budget);
            }
            return answered;
        }

        boolean lap(Budget budget) {
            for (Tree tree : trees) {
                // Not in the first lap: where few nodes are enough, trying costs more than it saves.
                boolean takesPart = laps > 0 || !tree.triesSides;
                int nodes = tree.triesSides ? SIDES * length : length;
                if (takesPart && !budget.over() && tree.run(nodes, budget)) {
                    answer(of, tree);
                    return true;
                }
            }
            if (!budget.over()) {
                laps++;
                length *= LONGER;
            }
            return false;
        }
    }

    private void answer(ReelQuestion of, Tree tree) {
        if (tree.plan().isEmpty()) {
            denial = Optional.of(DenialWriter.of(of, tree.root));
            return;
        }
        int[] origin = of == question ? identity() : question.origins();
        List<int[][]> reels = new ArrayList<>();
        for (Column column : tree.plan()) {
            int[] item = new int[column.item.length];
            for (int t = 0; t < item.length; t++) {
                item[t] = origin[column.item[t]];
            }
            reels.add(new int[][] {item, column.count.clone()});
        }
        plan = reels;
    }

    private int[] identity() {
        return IntStream.range(0, question.items()).toArray();
    }

    /** A plan of so many reels: of each its items, some maybe twice, and how many of each; none where none was found. */
    public List<int[][]> plan() {
        return plan;
    }

    /** Why there is no plan of so many reels, sizes in steps; empty where that is not known. */
    public Optional<FewestProof> denial() {
        return denial;
    }
}
