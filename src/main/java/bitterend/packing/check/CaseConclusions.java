package bitterend.packing.check;

import bitterend.packing.check.ProofCase.RunKey;
import bitterend.packing.check.ProofDay.Group;
import bitterend.packing.check.ProofDay.Line;
import bitterend.packing.check.ProofDay.MatchedSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What follows from the answers of a case: of sets, lines, work undone, reels that are alike, and orders. */
final class CaseConclusions {
    private final ProofCase of;
    private final ProofDay day;
    private final long[] mostUndone;
    private final long[][] least;
    private final long[][] most;
    private final int[] leastUndone;
    private final int[] mostUndoneOf;
    private final BitSet[] reelsOf;
    private final BitSet mustBeUsed;
    private final Map<RunKey, Map<Integer, int[]>> copies;
    private final Map<String, List<BitSet>> holders;
    private final Map<String, List<BitSet>> ordersMust;
    private boolean empty;
    private boolean changed;

    CaseConclusions(ProofCase of) {
        this.of = of;
        day = of.day;
        mostUndone = of.mostUndone;
        least = of.least;
        most = of.most;
        leastUndone = of.leastUndone;
        mostUndoneOf = of.mostUndoneOf;
        reelsOf = of.reelsOf;
        mustBeUsed = of.mustBeUsed;
        copies = of.copies;
        holders = of.holders;
        ordersMust = of.ordersMust;
    }

    /** Draws the conclusions until nothing follows any more; whether a plan may be left. */
    boolean leavePlans() {
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
        return !empty;
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
                if (reelsOf[group.number()].get(reel)) {
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
                if (group.terms().size(reel) <= most[reel][run] && of.copies(group.line(), reel, run)[1] > 0) {
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
        int[] range = of.copies(line, on.reel(), on.run());
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
