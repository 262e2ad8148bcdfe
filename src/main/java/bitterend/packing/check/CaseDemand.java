package bitterend.packing.check;

import bitterend.packing.check.ProofDay.Group;
import bitterend.packing.check.ProofDay.Line;
import bitterend.packing.check.ProofDay.MatchedSet;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Phi: the least that the pieces pay at given prices, whatever lots their orders lie on, cut or left undone. An order that
 * may lie on one lot of each rope only, or pays nothing for a further one, needs no choice of lots.
 */
final class CaseDemand {
    /** Lots of one order of which every choice is tried. */
    static final int LOTS = 12;

    private final ProofDay day;
    private final ProofGoal goal;
    private final LoadStates.Work work;
    private final List<BitSet> lots;

    CaseDemand(ProofDay day, ProofGoal goal, LoadStates.Work work) {
        this.day = day;
        this.goal = goal;
        this.work = work;
        lots = day.lots();
    }

    /** The least that all orders pay; empty when the case leaves them no way. */
    Optional<BigInteger> of(ProofCase at, ReadPrices prices) {
        BigInteger sum = BigInteger.ZERO;
        Set<String> choosing = new HashSet<>();
        for (String order : day.orders()) {
            OrderChoice choice = new OrderChoice(at, prices, order);
            if (choice.matters()) {
                choosing.add(order);
                Optional<BigInteger> least = choice.least();
                if (least.isEmpty()) {
                    return least;
                }
                sum = sum.add(least.get());
            }
        }
        Optional<BigInteger> others = withoutChoice(at, prices, choosing);
        return others.map(sum::add);
    }

    /** Lines and sets of which no order has to choose lots, and sets of several orders. */
    private Optional<BigInteger> withoutChoice(ProofCase at, ReadPrices prices, Set<String> choosing) {
        BigInteger sum = BigInteger.ZERO;
        for (MatchedSet set : day.sets().values()) {
            if (set.order().isEmpty() || !choosing.contains(set.order())) {
                long least = ofSet(at, prices, set, lots);
                if (least == Long.MAX_VALUE) {
                    return Optional.empty();
                }
                sum = sum.add(BigInteger.valueOf(least));
            }
        }
        Map<Integer, List<Group>> byLine = new LinkedHashMap<>();
        for (Group group : day.groups()) {
            if (group.terms().set().isEmpty() && !choosing.contains(group.order())) {
                byLine.computeIfAbsent(group.line(), any -> new ArrayList<>()).add(group);
            }
        }
        for (Map.Entry<Integer, List<Group>> line : byLine.entrySet()) {
            Optional<BigInteger> least =
                    ofLine(at, prices, day.lines().get(line.getKey()), line.getValue(), everywhere());
            if (least.isEmpty()) {
                return least;
            }
            sum = sum.add(least.get());
        }
        return Optional.of(sum);
    }

    private BitSet everywhere() {
        BitSet all = new BitSet();
        all.set(0, day.reels().size());
        return all;
    }

    /** Pieces of a line that stand alone, on some reels: as many undone as pays, or as must be. */
    private Optional<BigInteger> ofLine(ProofCase at, ReadPrices prices, Line line, List<Group> groups, BitSet reels) {
        int there = groups.stream().mapToInt(Group::count).sum();
        int least = Math.max(0, at.leastUndone(line.number()) - (line.count() - there));
        int most = Math.min(there, at.mostUndone(line.number()));
        long undone = goal.ofUndone(line, prices);
        BigInteger sum = BigInteger.ZERO;
        int homeless = 0;
        List<Long> extras = new ArrayList<>();
        for (Group group : groups) {
            BitSet on = (BitSet) at.reels(group).clone();
            on.and(reels);
            if (on.isEmpty()) {
                homeless += group.count();
                sum = sum.add(BigInteger.valueOf(undone).multiply(BigInteger.valueOf(group.count())));
            } else {
                long cut = prices.cheapest(group, on);
                sum = sum.add(BigInteger.valueOf(cut).multiply(BigInteger.valueOf(group.count())));
                for (int i = 0; i < group.count(); i++) {
                    extras.add(Math.subtractExact(undone, cut));
                }
            }
        }
        if (homeless > most) {
            return Optional.empty();
        }
        extras.sort(null);
        for (int i = 0; i < extras.size() && homeless + i < most; i++) {
            if (extras.get(i) < 0 || homeless + i < least) {
                sum = sum.add(BigInteger.valueOf(extras.get(i)));
            }
        }
        return Optional.of(sum);
    }

    /** The least that a set pays within some lots; {@link Long#MAX_VALUE} when it can neither be cut nor left. */
    private long ofSet(ProofCase at, ReadPrices prices, MatchedSet set, List<BitSet> within) {
        long undone = 0;
        boolean mayStay = true;
        boolean mayGo = true;
        for (Group group : set.groups()) {
            Line line = day.lines().get(group.line());
            undone = Math.addExact(undone, Math.multiplyExact(goal.ofUndone(line, prices), (long) group.count()));
            mayStay &= at.mostUndone(group.line()) >= line.count();
            mayGo &= at.leastUndone(group.line()) == 0;
        }
        long least = mayStay ? undone : Long.MAX_VALUE;
        for (BitSet holder : mayGo ? at.holders(set.name()) : List.<BitSet>of()) {
            if (within.stream().anyMatch(holder::intersects)) {
                long cut = -prices.ofSet(set.name(), holder);
                for (Group group : set.groups()) {
                    BitSet on = (BitSet) at.reels(group).clone();
                    on.and(holder);
                    cut = Math.addExact(cut, Math.multiplyExact(prices.cheapest(group, on), (long) group.count()));
                }
                least = Math.min(least, cut);
            }
        }
        return least;
    }

    /** The lots an order may lie on, and what it pays on each choice of them. */
    private final class OrderChoice {
        private final ProofCase at;
        private final ReadPrices prices;
        private final String order;
        private final List<Group> singles = new ArrayList<>();
        private final List<MatchedSet> sets = new ArrayList<>();
        private final List<BitSet> may = new ArrayList<>();
        private final List<Boolean> must = new ArrayList<>();
        private final List<Long> charges = new ArrayList<>();
        private final long split;

        OrderChoice(ProofCase at, ReadPrices prices, String order) {
            this.at = at;
            this.prices = prices;
            this.order = order;
            split = goal.scaled(day.facts().problem().prices().splitOrder());
            for (Group group : day.groups()) {
                if (group.order().equals(order) && group.terms().set().isEmpty()) {
                    singles.add(group);
                }
            }
            day.sets().values().stream()
                    .filter(set -> set.order().equals(order))
                    .forEach(sets::add);
            lots.forEach(this::addLot);
        }

        private void addLot(BitSet lot) {
            boolean reached = day.groups().stream()
                    .anyMatch(group ->
                            group.order().equals(order) && at.reels(group).intersects(lot));
            if (reached) {
                may.add(lot);
                must.add(at.mustTake(order).stream().anyMatch(lot::intersects));
                charges.add(prices.ofOrder(order, lot));
            }
        }

        /** Whether it makes a difference which lots the order lies on. */
        boolean matters() {
            Set<String> ropes = new HashSet<>();
            boolean two = may.stream().anyMatch(lot -> !ropes.add(rope(lot)));
            return (two && split > 0) || charges.stream().anyMatch(charge -> charge > 0);
        }

        private String rope(BitSet lot) {
            return day.reels().get(lot.nextSetBit(0)).rope();
        }

        Optional<BigInteger> least() {
            boolean single =
                    sets.size() + singles.stream().mapToInt(Group::count).sum() == 1;
            if (single) {
                return best(Stream.concat(
                        Stream.of(new BitSet()), IntStream.range(0, may.size()).mapToObj(OrderChoice::only)));
            }
            return may.size() > LOTS
                    ? withoutSplits()
                    : best(IntStream.range(0, 1 << may.size()).mapToObj(bits -> BitSet.valueOf(new long[] {bits})));
        }

        private static BitSet only(int lot) {
            BitSet one = new BitSet();
            one.set(lot);
            return one;
        }

        /** Too many lots to try: all of them, all charges, and nothing for further lots. */
        private Optional<BigInteger> withoutSplits() {
            long all = charges.stream().reduce(0L, Math::addExact);
            return onLots(may).map(least -> least.subtract(BigInteger.valueOf(all)));
        }

        private Optional<BigInteger> best(Stream<BitSet> choices) {
            return choices.map(this::ofChoice).flatMap(Optional::stream).min(BigInteger::compareTo);
        }

        /** What the order pays on these of its lots; empty when it cannot lie there or must lie elsewhere too. */
        private Optional<BigInteger> ofChoice(BitSet choice) {
            work.spend(1L + singles.size() + sets.size());
            List<BitSet> on = new ArrayList<>();
            Set<String> ropes = new HashSet<>();
            BigInteger extra = BigInteger.ZERO;
            for (int lot = 0; lot < may.size(); lot++) {
                if (choice.get(lot)) {
                    on.add(may.get(lot));
                    boolean first = ropes.add(rope(may.get(lot)));
                    extra = extra.add(BigInteger.valueOf((first ? 0 : split) - charges.get(lot)));
                } else if (must.get(lot)) {
                    return Optional.empty();
                }
            }
            BigInteger beside = extra;
            return onLots(on).map(beside::add);
        }

        /** What the pieces of the order pay when they lie on these lots alone. */
        private Optional<BigInteger> onLots(List<BitSet> on) {
            BitSet reels = new BitSet();
            on.forEach(reels::or);
            BigInteger sum = BigInteger.ZERO;
            for (MatchedSet set : sets) {
                long least = ofSet(at, prices, set, on);
                if (least == Long.MAX_VALUE) {
                    return Optional.empty();
                }
                sum = sum.add(BigInteger.valueOf(least));
            }
            Map<Integer, List<Group>> byLine = new LinkedHashMap<>();
            singles.forEach(group -> byLine.computeIfAbsent(group.line(), any -> new ArrayList<>())
                    .add(group));
            for (Map.Entry<Integer, List<Group>> line : byLine.entrySet()) {
                Optional<BigInteger> least = ofLine(at, prices, day.lines().get(line.getKey()), line.getValue(), reels);
                if (least.isEmpty()) {
                    return least;
                }
                sum = sum.add(least.get());
            }
            return Optional.of(sum);
        }
    }
}
