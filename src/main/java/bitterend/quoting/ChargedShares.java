package bitterend.quoting;

import bitterend.measure.Coins;
import bitterend.measure.Cost;
import bitterend.measure.Money;
import bitterend.measure.UnitPrice;
import bitterend.quoting.sharing.Party;
import bitterend.quoting.sharing.RopeShares;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.fraction.BigFraction;

/** Turns shares of the cost alone into what each line pays of the total that is charged. */
final class ChargedShares {
    private final List<Party> parties;
    private final UnitPrice price;
    private final Cost total;

    ChargedShares(List<Party> parties, UnitPrice price, Cost total) {
        this.parties = parties;
        this.price = price;
        this.total = total;
    }

    /** In whole coins that add up to the rounded total. */
    List<Money> coins(RopeShares shares, boolean floorAtRope) {
        List<BigFraction> scaled = scaled(shares);
        return Coins.of(total, floorAtRope ? floored(scaled) : scaled);
    }

    /** In proportion to the shares of the cost alone; by length where that cost is nothing. */
    private List<BigFraction> scaled(RopeShares shares) {
        boolean free = shares.cost().equals(Cost.ZERO);
        List<BigFraction> weights = free ? lengths() : shares.fair();
        BigFraction sum = weights.stream().reduce(BigFraction.ZERO, BigFraction::add);
        return weights.stream()
                .map(weight -> weight.multiply(fraction(total)).divide(sum))
                .toList();
    }

    /**
     * No line below the rope in its pieces; what lies above the rope shrinks in proportion. As they are if there is too little,
     * which the cost alone never is.
     */
    private List<BigFraction> floored(List<BigFraction> shares) {
        List<BigFraction> floors =
                parties.stream().map(party -> fraction(price.of(party.cut()))).toList();
        BigFraction spare = fraction(total).subtract(sum(floors));
        List<BigFraction> above = IntStream.range(0, shares.size())
                .mapToObj(i -> shares.get(i).subtract(floors.get(i)))
                .map(excess -> excess.compareTo(BigFraction.ZERO) > 0 ? excess : BigFraction.ZERO)
                .toList();
        BigFraction aboveAll = sum(above);
        if (spare.compareTo(BigFraction.ZERO) < 0 || aboveAll.equals(BigFraction.ZERO)) {
            return shares;
        }
        List<BigFraction> raised = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            raised.add(floors.get(i).add(above.get(i).multiply(spare).divide(aboveAll)));
        }
        return raised;
    }

    private List<BigFraction> lengths() {
        return parties.stream().map(party -> new BigFraction(party.cut().mm())).toList();
    }

    private static BigFraction sum(List<BigFraction> parts) {
        return parts.stream().reduce(BigFraction.ZERO, BigFraction::add);
    }

    private static BigFraction fraction(Cost cost) {
        return new BigFraction(BigInteger.valueOf(cost.millis()));
    }
}
