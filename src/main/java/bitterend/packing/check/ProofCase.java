package bitterend.packing.check;

import bitterend.packing.check.ProofDay.Group;
import bitterend.packing.check.ProofDay.Line;
import bitterend.packing.check.ProofDay.MatchedSet;
import bitterend.packing.proof.RunOfReel;
import bitterend.packing.proof.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The plans that are left at a node of a proof: what the answers above it say of loads, copies, sets, orders and of what is
 * left undone, and what follows from them. Never leaves out a plan that is there; may keep more than there is.
 */
final class ProofCase {
    private final ProofDay day;
    private final long[] mostUndone;
    private final long[][] least;
    private final long[][] most;
    private final int[] leastUndone;
    private final int[] mostUndoneOf;
    private final BitSet[] reelsOf;
    private final BitSet mustBeUsed = new BitSet();
    private final Map<RunKey, Map<Integer, int[]>> copies = new HashMap<>();
    private final Map<String, List<BitSet>> holders = new HashMap<>();
    private final Map<String, List<BitSet>> ordersMust = new HashMap<>();
    private boolean empty;
    private boolean changed;

    private record RunKey(int reel, int run) {}

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

    // what is asked of a case -------------------------------------------------------------------------------------

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

    // what the answers say ----------------------------------------------------------------------------------------

    /** Narrows the case to the plans for which a statement is true, or is not. */
    void narrow(Statement statement, boolean yes) {
        if (statement instanceof Statement.SetOn set) {
            narrow(set, yes);
        } else if (statement instanceof Statement.OrderTakes order) {
            narrow(order, yes);
        } else if (statement instanceof Statement.ReelUsed used) {
            use(day.reel(used.reel()), yes);
        } else if (statement instanceof Statement.LoadAtMost load) {
            narrow(load, yes);
        } else if (statement instanceof Statement.CopiesAtMost count) {
            narrow(count, yes);
        } else if (statement instanceof Statement.UndoneAtMost undone) {
            narrow(undone, yes);
        } else {
            throw new ProofRefused("a statement of an unknown kind: " + statement);
        }
    }

    private void narrow(Statement.SetOn statement, boolean yes) {
        MatchedSet set = day.sets().get(statement.set());
        if (set == null) {
            throw new ProofRefused("the proof speaks of set " + statement.set() + ", which is not wanted here");
        }
        BitSet on = day.reelsOf(statement.holder());
        for (BitSet holder : day.holders(set)) {
            BitSet within = (BitSet) holder.clone();
            within.and(on);
            if (!within.isEmpty() && !within.equals(holder)) {
                throw new ProofRefused("set " + set.name() + " may lie partly on " + statement.holder());
            }
        }
        if (yes) {
            set.groups().forEach(group -> reelsOf[group.number()].and(on));
            set.groups().forEach(group -> mostUndoneOf[group.line()] = 0);
        } else {
            set.groups().forEach(group -> reelsOf[group.number()].andNot(on));
        }
    }

    private void narrow(Statement.OrderTakes statement, boolean yes) {
        if (!day.orders().contains(statement.order())) {
            throw new ProofRefused("the proof speaks of order " + statement.order() + ", which is not wanted here");
        }
        BitSet on = day.reelsOf(statement.lot());
        if (yes) {
            ordersMust
                    .computeIfAbsent(statement.order(), any -> new ArrayList<>())
                    .add(on);
        } else {
            day.groups().stream()
                    .filter(group -> group.order().equals(statement.order()))
                    .forEach(group -> reelsOf[group.number()].andNot(on));
        }
    }

    private void narrow(Statement.LoadAtMost statement, boolean yes) {
        int reel = day.reel(statement.run().reel());
        int run = run(reel, statement.run());
        if (yes) {
            most[reel][run] = Math.min(most[reel][run], statement.mm());
        } else {
            least[reel][run] = Math.max(least[reel][run], Math.addExact(statement.mm(), 1));
        }
    }

    private void narrow(Statement.CopiesAtMost statement, boolean yes) {
        int reel = day.reel(statement.run().reel());
        int run = run(reel, statement.run());
        int line = line(statement.line());
        int[] range = copies.computeIfAbsent(new RunKey(reel, run), any -> new HashMap<>())
                .computeIfAbsent(
                        line, any -> new int[] {0, day.lines().get(line).count()});
        if (yes) {
            range[1] = Math.min(range[1], statement.pieces());
        } else {
            range[0] = Math.max(range[0], statement.pieces() + 1);
        }
    }

    private void narrow(Statement.UndoneAtMost statement, boolean yes) {
        int line = line(statement.line());
        if (yes) {
            mostUndoneOf[line] = Math.min(mostUndoneOf[line], statement.pieces());
        } else {
            leastUndone[line] = Math.max(leastUndone[line], statement.pieces() + 1);
        }
    }

    private void use(int reel, boolean yes) {
        if (yes) {
            mustBeUsed.set(reel);
        } else {
            for (int run = 0; run < most[reel].length; run++) {
                most[reel][run] = 0;
            }
        }
    }

    private int line(int number) {
        if (number < 0 || number >= day.lines().size()) {
            throw new ProofRefused("the proof speaks of line " + number + ", which it does not name");
        }
        return number;
    }

    private int run(int reel, RunOfReel run) {
        if (run.run() > most[reel].length) {
            throw new ProofRefused("reel " + run.reel() + " has no run " + run.run());
        }
        return run.run() - 1;
    }

    // what follows from them --------------------------------------------------------------------------------------

    /** Draws the conclusions until nothing follows any more. */
    void conclude() {
        do {
            changed = false;
            day.sets().values().forEach(this::concludeOfSet);
            day.groups().forEach(this::dropWhereTooLong);
            day.lines().forEach(this::concludeOfLine);
            concludeOfUndone();
            day.alike().forEach(this::concludeOfAlike);
            concludeOfReels();
            concludeOfOrders();
        } while (changed && !empty);
    }

    /** A set lies on one holder that has room for all of it, or nowhere. */
    private void concludeOfSet(MatchedSet set) {
        List<BitSet> left = holders.getOrDefault(set.name(), new ArrayList<>());
        changed |= left.removeIf(holder -> !mayHold(holder, set));
        BitSet anywhere = new BitSet();
        left.forEach(anywhere::or);
        boolean mustStay = left.isEmpty();
        boolean mustGo = false;
        for (Group group : set.groups()) {
            keepOn(group, anywhere);
            mustStay |= leastUndone[group.line()] > 0;
            mustGo |= mostUndoneOf[group.line()] < day.lines().get(group.line()).count();
        }
        for (Group group : set.groups()) {
            if (mustStay) {
                atLeastUndone(group.line(), day.lines().get(group.line()).count());
            }
            if (mustGo) {
                atMostUndone(group.line(), 0);
            }
        }
    }

    /** Whether by length and number the set could lie there if nothing else did. */
    private boolean mayHold(BitSet holder, MatchedSet set) {
        long shortestSum = 0;
        for (Group group : set.groups()) {
            long places = 0;
            long shortest = Long.MAX_VALUE;
            for (int reel = holder.nextSetBit(0); reel >= 0; reel = holder.nextSetBit(reel + 1)) {
                if (mayLieOn(group, reel)) {
                    long size = group.terms().size(reel);
                    shortest = Math.min(shortest, size);
                    for (long room : most[reel]) {
                        places += room / size;
                    }
                }
            }
            if (places < group.count()) {
                return false;
            }
            shortestSum = Math.addExact(shortestSum, Math.multiplyExact(shortest, (long) group.count()));
        }
        long rooms = holder.stream()
                .mapToLong(reel -> Arrays.stream(most[reel]).sum())
                .sum();
        return shortestSum <= rooms;
    }

    private void dropWhereTooLong(Group group) {
        BitSet fits = new BitSet();
        for (int reel = reelsOf[group.number()].nextSetBit(0);
                reel >= 0;
                reel = reelsOf[group.number()].nextSetBit(reel + 1)) {
            for (int run = 0; run < most[reel].length; run++) {
                if (group.terms().size(reel) <= most[reel][run] && copies(group.line(), reel, run)[1] > 0) {
                    fits.set(reel);
                }
            }
        }
        keepOn(group, fits);
    }

    /** What lies nowhere is undone; what must lie on a run is not. */
    private void concludeOfLine(Line line) {
        int homeless = day.groups().stream()
                .filter(group -> group.line() == line.number() && reelsOf[group.number()].isEmpty())
                .mapToInt(Group::count)
                .sum();
        atLeastUndone(line.number(), homeless);
        int placed = copies.values().stream()
                .filter(onRun -> onRun.containsKey(line.number()))
                .mapToInt(onRun -> onRun.get(line.number())[0])
                .sum();
        atMostUndone(line.number(), line.count() - placed);
        empty |= leastUndone[line.number()] > mostUndoneOf[line.number()];
    }

    /** No more undone of a class than is allowed, so no line more than what the others leave of that. */
    private void concludeOfUndone() {
        for (int urgency = 1; urgency <= mostUndone.length; urgency++) {
            long left = mostUndone[urgency - 1];
            for (Line line : day.lines()) {
                left -= line.urgency() == urgency ? leastUndone[line.number()] * line.weight() : 0;
            }
            empty |= left < 0;
            for (MatchedSet set : day.sets().values()) {
                keepWithin(set, urgency, left);
            }
            for (Line line : day.lines()) {
                if (line.urgency() == urgency && left >= 0) {
                    long more = left / line.weight();
                    if (more < mostUndoneOf[line.number()] - leastUndone[line.number()]) {
                        atMostUndone(line.number(), (int) (leastUndone[line.number()] + more));
                    }
                }
            }
        }
    }

    /** A set that weighs more than may be left undone is cut. */
    private void keepWithin(MatchedSet set, int urgency, long left) {
        long weight = set.groups().stream()
                .filter(group -> group.terms().urgency() == urgency && leastUndone[group.line()] == 0)
                .mapToLong(group -> group.terms().weight() * group.count())
                .sum();
        if (weight > left) {
            set.groups().forEach(group -> atMostUndone(group.line(), 0));
        }
    }

    /** Of reels that are alike, the one with the greater load comes first; with several runs, the one that is used. */
    private void concludeOfAlike(List<Integer> reels) {
        for (int i = 1; i < reels.size(); i++) {
            int before = reels.get(i - 1);
            int after = reels.get(i);
            if (most[before].length == 1) {
                atMostLoad(after, 0, most[before][0]);
            } else if (isUnused(before)) {
                for (int run = 0; run < most[after].length; run++) {
                    atMostLoad(after, run, 0);
                }
            }
        }
        for (int i = reels.size() - 1; i > 0; i--) {
            int before = reels.get(i - 1);
            int after = reels.get(i);
            if (least[before].length == 1 && least[before][0] < least[after][0]) {
                least[before][0] = least[after][0];
                changed = true;
            }
            if (mustBeUsed.get(after) && !mustBeUsed.get(before)) {
                mustBeUsed.set(before);
                changed = true;
            }
        }
    }

    private boolean isUnused(int reel) {
        return Arrays.stream(most[reel]).allMatch(load -> load <= 0);
    }

    private void concludeOfReels() {
        for (int reel = 0; reel < most.length; reel++) {
            for (int run = 0; run < most[reel].length; run++) {
                empty |= least[reel][run] > most[reel][run];
                if (least[reel][run] > 0 && !mustBeUsed.get(reel)) {
                    mustBeUsed.set(reel);
                    changed = true;
                }
            }
            if (mustBeUsed.get(reel) && least[reel].length == 1 && least[reel][0] == 0) {
                least[reel][0] = 1;
                changed = true;
            }
            empty |= mustBeUsed.get(reel) && isUnused(reel);
        }
        copies.forEach((on, lines) -> lines.keySet().forEach(line -> concludeOfCopies(on, line)));
    }

    private void concludeOfCopies(RunKey on, int line) {
        int[] range = copies(line, on.reel(), on.run());
        empty |= range[0] > range[1];
        if (range[0] > 0 && !mustBeUsed.get(on.reel())) {
            mustBeUsed.set(on.reel());
            changed = true;
        }
    }

    private void concludeOfOrders() {
        ordersMust.forEach((order, all) -> {
            Set<BitSet> open = new HashSet<>(all);
            day.groups().stream()
                    .filter(group -> group.order().equals(order))
                    .forEach(group -> open.removeIf(on -> on.intersects(reelsOf[group.number()])));
            empty |= !open.isEmpty();
        });
    }

    private void keepOn(Group group, BitSet reels) {
        BitSet off = (BitSet) reelsOf[group.number()].clone();
        off.andNot(reels);
        if (!off.isEmpty()) {
            reelsOf[group.number()].andNot(off);
            changed = true;
        }
    }

    private void atLeastUndone(int line, int pieces) {
        if (leastUndone[line] < pieces) {
            leastUndone[line] = pieces;
            changed = true;
        }
    }

    private void atMostUndone(int line, int pieces) {
        if (mostUndoneOf[line] > pieces) {
            mostUndoneOf[line] = pieces;
            changed = true;
        }
    }

    private void atMostLoad(int reel, int run, long load) {
        if (most[reel][run] > load) {
            most[reel][run] = load;
            changed = true;
        }
    }
}
