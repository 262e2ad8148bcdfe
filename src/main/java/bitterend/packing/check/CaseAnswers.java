package bitterend.packing.check;

import bitterend.packing.check.ProofCase.RunKey;
import bitterend.packing.check.ProofDay.MatchedSet;
import bitterend.packing.proof.RunOfReel;
import bitterend.packing.proof.Statement;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the answers of a proof say of a case; a statement about what is not of the day is refused. */
final class CaseAnswers {
    private final ProofDay day;
    private final long[][] least;
    private final long[][] most;
    private final int[] leastUndone;
    private final int[] mostUndoneOf;
    private final BitSet[] reelsOf;
    private final BitSet mustBeUsed;
    private final Map<RunKey, Map<Integer, int[]>> copies;
    private final Map<String, List<BitSet>> ordersMust;

    CaseAnswers(ProofCase of) {
        day = of.day;
        least = of.least;
        most = of.most;
        leastUndone = of.leastUndone;
        mostUndoneOf = of.mostUndoneOf;
        reelsOf = of.reelsOf;
        mustBeUsed = of.mustBeUsed;
        copies = of.copies;
        ordersMust = of.ordersMust;
    }

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
}
