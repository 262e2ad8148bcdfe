package bitterend.packing.check;

import bitterend.packing.check.ProofDay.Group;
import bitterend.packing.check.ProofDay.Line;
import bitterend.packing.proof.Statement;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The plans that are left at a node of a proof: what the answers above it say of loads, copies, sets, orders and of what is
 * left undone, and what follows from them. Never leaves out a plan that is there; may keep more than there is.
 */
final class ProofCase {
    final ProofDay day;
    final long[] mostUndone;
    final long[][] least;
    final long[][] most;
    final int[] leastUndone;
    final int[] mostUndoneOf;
    final BitSet[] reelsOf;
    final BitSet mustBeUsed = new BitSet();
    final Map<RunKey, Map<Integer, int[]>> copies = new HashMap<>();
    final Map<String, List<BitSet>> holders = new HashMap<>();
    final Map<String, List<BitSet>> ordersMust = new HashMap<>();
    private boolean empty;

    record RunKey(int reel, int run) {}

    /**
     * All plans of the day that leave no more undone than this.
     *
     * @param mostUndone weight of each class that may be left undone, the first class first; without limit in the others
     */
    ProofCase(ProofDay day, List<Long> mostUndone) {
        this.day = day;
        this.mostUndone = mostUndone.stream().mapToLong(Long::longValue).toArray();
        int reels = day.reels().size();
        least = new long[reels][];
        most = new long[reels][];
        for (int reel = 0; reel < reels; reel++) {
            int runs = day.runs(reel).size();
            least[reel] = new long[runs];
            most[reel] = new long[runs];
            for (int run = 0; run < runs; run++) {
                most[reel][run] = day.room(reel, run);
            }
        }
        leastUndone = new int[day.lines().size()];
        mostUndoneOf = day.lines().stream().mapToInt(Line::count).toArray();
        reelsOf = new BitSet[day.groups().size()];
        for (Group group : day.groups()) {
            BitSet on = new BitSet();
            for (int reel = 0; reel < reels; reel++) {
                on.set(reel, group.terms().size(reel) > 0);
            }
            reelsOf[group.number()] = on;
        }
        day.sets().values().forEach(set -> holders.put(set.name(), new ArrayList<>(day.holders(set))));
    }

    /** Whether no plan is left. */
    boolean isEmpty() {
        return empty;
    }

    long least(int reel, int run) {
        return least[reel][run];
    }

    long most(int reel, int run) {
        return most[reel][run];
    }

    boolean mustBeUsed(int reel) {
        return mustBeUsed.get(reel);
    }

    int leastUndone(int line) {
        return leastUndone[line];
    }

    int mostUndone(int line) {
        return mostUndoneOf[line];
    }

    /** Whether a group may come off a reel. */
    boolean mayLieOn(Group group, int reel) {
        return reelsOf[group.number()].get(reel);
    }

    BitSet reels(Group group) {
        return reelsOf[group.number()];
    }

    /** Fewest and most pieces of a line on a run. */
    int[] copies(int line, int reel, int run) {
        int most = day.lines().get(line).count() - leastUndone[line];
        int[] asked = counted(reel, run).get(line);
        return asked == null ? new int[] {0, most} : new int[] {asked[0], Math.min(most, asked[1])};
    }

    /** The lines of which a number is asked on a run, with the fewest and most pieces that were asked for. */
    Map<Integer, int[]> counted(int reel, int run) {
        return copies.getOrDefault(new RunKey(reel, run), Map.of());
    }

    /** Where a set may still lie. */
    List<BitSet> holders(String set) {
        return holders.getOrDefault(set, List.of());
    }

    /** Reels of which the order takes at least one each. */
    List<BitSet> mustTake(String order) {
        return ordersMust.getOrDefault(order, List.of());
    }

    /** Narrows the case to the plans for which a statement is true, or is not. */
    void narrow(Statement statement, boolean yes) {
        new CaseAnswers(this).narrow(statement, yes);
    }

    /** Draws the conclusions until nothing follows any more. */
    void conclude() {
        empty = empty || !new CaseConclusions(this).leavePlans();
    }
}
