package bitterend.packing.patterns.fewest;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What may be cut from a reel at a node of the search, by the item of its longest piece. */
final class Limits {
    private final ReelQuestion question;
    private final List<Decision> yes;
    private final List<Decision> no;
    /** Of each leader whose reel must hold something, how many of each item. */
    private final Map<Integer, int[]> held = new HashMap<>();
    /** Of leaders that some decision speaks of. */
    private final Map<Integer, Group> groups = new HashMap<>();

    private final Group shared;
    private boolean empty;

    /** Reels that may be cut alike: those of one leader, or of all leaders that no decision speaks of. */
    static final class Group {
        /** Item of the longest piece; {@link #ANY} where it is any that may lead. */
        final int leader;

        final int[] least;
        final int[] most;
        /** Items that may lead. */
        final BitSet leads = new BitSet();

        static final int ANY = -1;

        Group(int leader, int items) {
            this.leader = leader;
            least = new int[items];
            most = new int[items];
        }

        /** The first item that such a reel may hold. */
        int first() {
            return Math.max(0, leader);
        }

        boolean allows(Column column) {
            for (int t = 0; t < column.item.length; t++) {
                if (column.count[t] > most[column.item[t]]) {
                    return false;
                }
            }
            if (leader == ANY) {
                return leads.get(column.leader());
            }
            for (int j = 0; j < least.length; j++) {
                if (least[j] > 0 && column.countOf(j) < least[j]) {
                    return false;
                }
            }
            return !leads.isEmpty();
        }
    }

    /** No limits but those of the question. */
    Limits(ReelQuestion question) {
        this(question, List.of(), List.of());
    }

    private Limits(ReelQuestion question, List<Decision> yes, List<Decision> no) {
        this.question = question;
        this.yes = yes;
        this.no = no;
        BitSet own = new BitSet();
        for (Decision decision : yes) {
            own.set(decision.leader());
            int[] least = held.computeIfAbsent(decision.leader(), leader -> new int[question.items()]);
            least[decision.item()] = Math.max(least[decision.item()], decision.copies());
        }
        no.forEach(decision -> own.set(decision.leader()));
        own.stream().forEach(leader -> groups.put(leader, group(leader)));
        shared = group(Group.ANY);
        for (int item = 0; item < question.items(); item++) {
            shared.leads.set(item, !own.get(item) && shared.most[item] > 0);
        }
    }

    /** The limits of one side of a decision. */
    Limits with(Decision decision, boolean holds) {
        List<Decision> more = new ArrayList<>(holds ? yes : no);
        more.add(decision);
        return holds ? new Limits(question, more, no) : new Limits(question, yes, more);
    }

    private Group group(int leader) {
        Group group = new Group(leader, question.items());
        System.arraycopy(question.count, 0, group.most, 0, group.most.length);
        held.forEach((whose, least) -> {
            if (whose == leader) {
                System.arraycopy(least, 0, group.least, 0, least.length);
            } else {
                group.most[whose] = 0;
                for (int item = whose + 1; item < least.length; item++) {
                    group.most[item] -= least[item];
                }
            }
        });
        for (Decision decision : no) {
            if (decision.leader() == leader) {
                group.most[decision.item()] = Math.min(group.most[decision.item()], decision.copies() - 1);
            }
        }
        boolean possible = true;
        for (int item = 0; item < group.most.length; item++) {
            group.most[item] = Math.max(0, group.most[item]);
            possible &= group.least[item] <= group.most[item];
        }
        if (leader != Group.ANY) {
            group.leads.set(leader, possible && group.most[leader] > 0);
            empty |= group.leads.isEmpty() && held.containsKey(leader);
        }
        return group;
    }

    /** No plan is left: some leader must hold what it may not. */
    boolean isEmpty() {
        return empty;
    }

    /** All of them; the shared one first. */
    List<Group> groups() {
        List<Group> all = new ArrayList<>(List.of(shared));
        groups.values().stream().filter(group -> !group.leads.isEmpty()).forEach(all::add);
        return all;
    }

    boolean allows(Column column) {
        return groups.getOrDefault(column.leader(), shared).allows(column);
    }
}
