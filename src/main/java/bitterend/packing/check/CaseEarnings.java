package bitterend.packing.check;

import bitterend.measure.Length;
import bitterend.packing.check.LoadStates.Item;
import bitterend.packing.check.ProofDay.Group;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * Z: the most that a reel earns at given prices over all ways to draw from it that a case leaves. Charges are taken by run.
 * A run before the last that is cut may be cut off whole and put aside; whether it is cut is tried both ways. Where a run
 * must carry a load, a shorter load does not stand for a longer one.
 */
final class CaseEarnings {
    private static final long NEVER = Long.MIN_VALUE;
    private static final int TABLES = 64;

    private final ProofDay day;
    private final ProofGoal goal;
    private final LoadStates.Work work;
    private final long[] longest;
    private final Map<Object, LoadStates> tables = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, LoadStates> eldest) {
            return size() > TABLES;
        }
    };

    CaseEarnings(ProofDay day, ProofGoal goal, LoadStates.Work work) {
        this.day = day;
        this.goal = goal;
        this.work = work;
        longest = longest(day);
    }

    /** For each reel the longest load of a run of it or of another that the same pieces may come off. */
    private static long[] longest(ProofDay day) {
        Map<List<Long>, List<Integer>> alike = new HashMap<>();
        long[] longest = new long[day.reels().size()];
        for (int reel = 0; reel < longest.length; reel++) {
            int on = reel;
            for (int run = 0; run < day.runs(reel).size(); run++) {
                longest[reel] = Math.max(longest[reel], day.room(reel, run));
            }
            List<Long> sizes =
                    day.groups().stream().map(group -> group.terms().size(on)).toList();
            alike.computeIfAbsent(sizes, any -> new ArrayList<>()).add(reel);
        }
        for (List<Integer> reels : alike.values()) {
            long most = reels.stream().mapToLong(reel -> longest[reel]).max().orElse(0);
            reels.forEach(reel -> longest[reel] = most);
        }
        return longest;
    }

    /** The most that the reel earns; empty when the case leaves no way to draw from it, not even none. */
    OptionalLong of(ProofCase at, ReadPrices prices, int reel) {
        Reel drawn = day.reels().get(reel);
        long handling = goal.scaled(day.facts().problem().prices().handling());
        long fetching = goal.scaled(DerivedDraw.fetching(day.facts(), drawn));
        int runs = day.runs(reel).size();
        int lastForced = lastForced(at, reel);
        long best = at.mustBeUsed(reel) || lastForced >= 0 ? NEVER : 0;
        long before = -fetching;
        RunItems items = new RunItems(at, prices, reel);
        for (int run = 0; run < runs && before != NEVER; run++) {
            long here = ofRun(at, items, reel, run);
            if (here != NEVER && run >= lastForced) {
                best = Math.max(best, Math.addExact(before, here));
            }
            long passed = isForced(at, reel, run) ? here : Math.max(here, -handling);
            before = passed == NEVER ? NEVER : Math.addExact(before, passed);
        }
        return best == NEVER ? OptionalLong.empty() : OptionalLong.of(best);
    }

    private int lastForced(ProofCase at, int reel) {
        int run = day.runs(reel).size() - 1;
        while (run >= 0 && !isForced(at, reel, run)) {
            run--;
        }
        return run;
    }

    /** Whether the case wants something cut from the run. */
    private boolean isForced(ProofCase at, int reel, int run) {
        return at.least(reel, run) > 0
                || at.counted(reel, run).values().stream().anyMatch(range -> range[0] > 0);
    }

    /** The most that a run earns with at least one piece; {@link #NEVER} when there is no such load. */
    private long ofRun(ProofCase at, RunItems items, int reel, int run) {
        long most = at.most(reel, run);
        if (most <= 0 || items.contradicts(run)) {
            return NEVER;
        }
        LoadStates.Group all = items.on(run);
        long least = Math.max(1, at.least(reel, run));
        LoadStates loads = loads(all, reel, least > shortest(all));
        Reel drawn = day.reels().get(reel);
        StockValue value = day.facts().problem().valueOn(drawn);
        long length = day.runs(reel).get(run).length().mm();
        long earned = loads.most(least, most, size -> goal.scaled(value.of(new Length(Math.max(0, length - size)))));
        return earned == NEVER ? NEVER : Math.subtractExact(earned, goal.scaled(value.of(new Length(length))));
    }

    /** No load is shorter than this. */
    private static long shortest(LoadStates.Group all) {
        long shortest = all.items().stream().mapToLong(Item::size).min().orElse(Long.MAX_VALUE);
        for (LoadStates.Group inner : all.inner()) {
            shortest = Math.min(shortest, shortest(inner));
        }
        return shortest;
    }

    private LoadStates loads(LoadStates.Group all, int reel, boolean exact) {
        long room = longest[reel];
        return tables.computeIfAbsent(List.of(all, room, exact), any -> LoadStates.of(all, room, exact, work));
    }

    /** The pieces that may be on each run of a reel, in the groups that share a charge. */
    private final class RunItems {
        private final ProofCase at;
        private final ReadPrices prices;
        private final int reel;
        private final List<Group> here = new ArrayList<>();
        private final LoadStates.Group plain;

        RunItems(ProofCase at, ReadPrices prices, int reel) {
            this.at = at;
            this.prices = prices;
            this.reel = reel;
            day.groups().stream().filter(group -> at.mayLieOn(group, reel)).forEach(here::add);
            plain = group(0, here, -1, List.of());
        }

        /** Whether more of a line is asked for than there may be. */
        boolean contradicts(int run) {
            return at.counted(reel, run).keySet().stream().anyMatch(line -> contradicts(line, run));
        }

        private boolean contradicts(int line, int run) {
            int[] range = at.copies(line, reel, run);
            return range[0] > Math.min(range[1], there(line));
        }

        private int there(int line) {
            return here.stream()
                    .filter(group -> group.line() == line)
                    .mapToInt(Group::count)
                    .sum();
        }

        LoadStates.Group on(int run) {
            return prices.hasCharges() || !at.counted(reel, run).isEmpty() ? charged(run) : plain;
        }

        private LoadStates.Group charged(int run) {
            Map<String, List<Group>> byOrder = new TreeMap<>();
            Map<String, List<Group>> bySet = new TreeMap<>();
            List<Group> free = new ArrayList<>();
            for (Group group : here) {
                String order = chargedOrder(group, run);
                String set = chargedSet(group, run);
                if (!order.isEmpty()) {
                    byOrder.computeIfAbsent(order, any -> new ArrayList<>()).add(group);
                } else if (!set.isEmpty()) {
                    bySet.computeIfAbsent(set, any -> new ArrayList<>()).add(group);
                } else {
                    free.add(group);
                }
            }
            List<LoadStates.Group> inner = new ArrayList<>();
            byOrder.forEach((order, of) -> inner.add(ofOrder(order, of, run)));
            bySet.forEach((set, of) -> inner.add(ofSet(set, of, run)));
            return group(0, free, run, inner);
        }

        private LoadStates.Group ofOrder(String order, List<Group> groups, int run) {
            Map<String, List<Group>> bySet = new TreeMap<>();
            List<Group> singles = new ArrayList<>();
            for (Group group : groups) {
                String set = chargedSet(group, run);
                (set.isEmpty() ? singles : bySet.computeIfAbsent(set, any -> new ArrayList<>())).add(group);
            }
            List<LoadStates.Group> inner = new ArrayList<>();
            bySet.forEach((set, of) -> inner.add(ofSet(set, of, run)));
            return group(prices.order(order, reel, run), singles, run, inner);
        }

        private LoadStates.Group ofSet(String set, List<Group> groups, int run) {
            return group(prices.set(set, reel, run), groups, run, List.of());
        }

        /** A set of several orders bears no charge of an order: leaving one out can only raise what a reel earns. */
        private String chargedOrder(Group group, int run) {
            ProofDay.MatchedSet set = day.sets().get(group.terms().set());
            boolean ofSeveral = set != null && set.order().isEmpty();
            return !ofSeveral && prices.order(group.order(), reel, run) > 0 ? group.order() : "";
        }

        private String chargedSet(Group group, int run) {
            return prices.set(group.terms().set(), reel, run) > 0
                    ? group.terms().set()
                    : "";
        }

        private LoadStates.Group group(long charge, List<Group> groups, int run, List<LoadStates.Group> inner) {
            Map<Integer, Integer> byLine = new TreeMap<>();
            Map<Integer, Long> sizes = new HashMap<>();
            for (Group group : groups) {
                byLine.merge(group.line(), group.count(), Integer::sum);
                sizes.put(group.line(), group.terms().size(reel));
            }
            Map<List<Long>, Integer> alike = new LinkedHashMap<>();
            List<Item> items = new ArrayList<>();
            byLine.forEach((line, count) -> {
                long size = sizes.getOrDefault(line, 0L);
                long price = prices.piece(line, reel);
                int left = Math.min(count, day.lines().get(line).count() - at.leastUndone(line));
                if (run >= 0 && at.counted(reel, run).containsKey(line)) {
                    int[] range = at.copies(line, reel, run);
                    int least = there(line) == count ? range[0] : 0;
                    items.add(new Item(size, price, Math.min(left, range[1]), least));
                } else if (left > 0) {
                    alike.merge(List.of(size, price), left, Integer::sum);
                }
            });
            alike.forEach((piece, count) -> items.add(new Item(piece.get(0), piece.get(1), count, 0)));
            return new LoadStates.Group(charge, items, inner);
        }
    }
}
