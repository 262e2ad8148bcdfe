package bitterend.quoting.sharing;

import java.math.BigInteger;
import java.util.List;
import org.apache.commons.math3.fraction.BigFraction;

/** Whether the cost can be split so that no group of parties pays more than it would alone. */
public sealed interface Stability {
    /**
     * It can: this is the split nearest to the shares by dual prices. Exact, so that rounding to the smallest coin may put a
     * group that coin above.
     *
     * @param shares of each party, in 1/1000 minor unit
     */
    record Stable(List<BigFraction> shares) implements Stability {
        public Stable {
            shares = List.copyOf(shares);
        }
    }

    /**
     * It cannot: these groups together count every party alike, and would pay less alone than all of it costs.
     *
     * @param groups the groups with their weights; the weights of the groups of any one party add up to 1
     */
    record NoneExists(List<Objection> groups) implements Stability {
        public NoneExists {
            groups = List.copyOf(groups);
        }

        /** What the groups would pay alone, each times its weight, in 1/1000 minor unit. */
        public BigFraction together() {
            return groups.stream()
                    .map(group -> group.weight().multiply(BigInteger.valueOf(group.cost())))
                    .reduce(BigFraction.ZERO, BigFraction::add);
        }
    }

    /**
     * Not all costs that matter are proven, or there are too many parties.
     *
     * @param reason in a sentence
     */
    record NotKnown(String reason) implements Stability {}

    /**
     * A group that objects.
     *
     * @param parties names of its members
     * @param weight how much it counts
     * @param cost what it would pay alone at most, in 1/1000 minor unit
     */
    record Objection(List<String> parties, BigFraction weight, long cost) {
        public Objection {
            parties = List.copyOf(parties);
        }
    }
}
