package bitterend.quoting.sharing;

import bitterend.quoting.sharing.Stability.Objection;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import org.apache.commons.math3.fraction.BigFraction;

/**
 * Looks for a split of a cost that no group would leave: the core of the game (Gillies 1959). There is one if and only if
 * no balanced collection of groups objects (Bondareva 1963, Shapley 1967). All in exact fractions.
 */
final class StableSplit {
    static final int MOST_PARTIES = 8;

    private final List<Party> parties;
    private final GroupCosts costs;
    private final List<BigFraction> near;

    /**
     * @param costs of every group
     * @param near the split to stay near to, in 1/1000 minor unit
     */
    StableSplit(List<Party> parties, GroupCosts costs, List<BigFraction> near) {
        this.parties = parties;
        this.costs = costs;
        this.near = List.copyOf(near);
    }

    Stability find() {
        if (parties.size() > MOST_PARTIES) {
            return new Stability.NotKnown("looked for with up to " + MOST_PARTIES + " lines");
        }
        CostRange all = costs.whole();
        if (!all.isExact()) {
            return new Stability.NotKnown("the cost of all lines together is not proven to be the least");
        }
        Attempt sure = new Attempt(all.found(), group -> costs.of(group).proven());
        if (sure.outcome.values().isPresent()) {
            return new Stability.Stable(sure.shares());
        }
        Attempt hopeful = new Attempt(all.found(), group -> costs.of(group).found());
        return hopeful.outcome.values().isEmpty()
                ? new Stability.NoneExists(hopeful.objections())
                : new Stability.NotKnown("the cost of some group of lines alone is not proven to be the least");
    }

    /**
     * The split x nearest to the wanted one, in its largest difference t, with x of no group above its limit. The
     * variables are what each party saves against its limit alone, and t.
     */
    private final class Attempt {
        private final long[] alone = new long[parties.size()];
        private final ToLongFunction<Group> limit;
        private final ExactProgram program = new ExactProgram(factors(new Group(0), BigFraction.ZERO, BigFraction.ONE));
        private final Map<Integer, Group> rows = new LinkedHashMap<>();
        private final ExactProgram.Outcome outcome;
        private final int totalAtMost;

        Attempt(long total, ToLongFunction<Group> limit) {
            this.limit = limit;
            Arrays.setAll(alone, party -> limit.applyAsLong(Group.alone(party)));
            Group all = Group.all(parties.size());
            BigFraction saved = new BigFraction(Arrays.stream(alone).sum() - total);
            rows.put(program.atLeast(saved, factors(all, BigFraction.ONE, BigFraction.ZERO)), all);
            totalAtMost = program.atLeast(saved.negate(), factors(all, BigFraction.MINUS_ONE, BigFraction.ZERO));
            for (Group group : Group.proper(parties.size())) {
                if (group.size() > 1) {
                    long apart = group.places().mapToLong(party -> alone[party]).sum();
                    BigFraction least = new BigFraction(apart - limit.applyAsLong(group));
                    rows.put(program.atLeast(least, factors(group, BigFraction.ONE, BigFraction.ZERO)), group);
                }
            }
            for (int party = 0; party < alone.length; party++) {
                stayNear(party);
            }
            outcome = program.solve();
        }

        private void stayNear(int party) {
            BigFraction wanted = new BigFraction(alone[party]).subtract(near.get(party));
            Group alone = Group.alone(party);
            program.atLeast(wanted, factors(alone, BigFraction.ONE, BigFraction.ONE));
            program.atLeast(wanted.negate(), factors(alone, BigFraction.MINUS_ONE, BigFraction.ONE));
        }

        private BigFraction[] factors(Group group, BigFraction each, BigFraction difference) {
            BigFraction[] factors = new BigFraction[parties.size() + 1];
            Arrays.fill(factors, BigFraction.ZERO);
            group.places().forEach(party -> factors[party] = each);
            factors[parties.size()] = difference;
            return factors;
        }

        List<BigFraction> shares() {
            List<BigFraction> saved = outcome.values().orElseThrow();
            List<BigFraction> shares = new ArrayList<>();
            for (int party = 0; party < alone.length; party++) {
                shares.add(new BigFraction(alone[party]).subtract(saved.get(party)));
            }
            return shares;
        }

        /** The rows that clash, as groups whose weights add up to 1 for every party. */
        List<Objection> objections() {
            Map<Integer, BigFraction> refusal = outcome.refusal();
            BigFraction whole = refusal.getOrDefault(totalAtMost, BigFraction.ZERO);
            Map<Group, BigFraction> weights = new LinkedHashMap<>();
            for (Map.Entry<Integer, Group> row : rows.entrySet()) {
                BigFraction factor = refusal.getOrDefault(row.getKey(), BigFraction.ZERO);
                if (row.getValue().size() == parties.size()) {
                    whole = whole.subtract(factor);
                } else if (!factor.equals(BigFraction.ZERO)) {
                    weights.put(row.getValue(), factor);
                }
            }
            return objections(weights, whole);
        }

        private List<Objection> objections(Map<Group, BigFraction> weights, BigFraction whole) {
            Map<Group, BigFraction> balanced = new LinkedHashMap<>();
            for (int party = 0; party < alone.length; party++) {
                BigFraction missing = BigFraction.ONE;
                for (Map.Entry<Group, BigFraction> each : weights.entrySet()) {
                    if (each.getKey().has(party)) {
                        missing = missing.subtract(each.getValue().divide(whole));
                    }
                }
                if (!missing.equals(BigFraction.ZERO)) {
                    balanced.put(Group.alone(party), missing);
                }
            }
            weights.forEach((group, weight) -> balanced.put(group, weight.divide(whole)));
            return balanced.entrySet().stream()
                    .map(each -> new Objection(
                            each.getKey()
                                    .places()
                                    .mapToObj(party -> parties.get(party).name())
                                    .toList(),
                            each.getValue(),
                            limit.applyAsLong(each.getKey())))
                    .toList();
        }
    }
}
