package bitterend.quoting;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import bitterend.measure.Written;
import bitterend.quoting.Neighbour.Variant;
import bitterend.quoting.sharing.CostRange;
import bitterend.quoting.sharing.NewRope;
import bitterend.quoting.sharing.Party;
import bitterend.quoting.sharing.Sharing;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Looks among the lengths and quantities a customer would also take for those that waste less rope. */
final class Neighbours {
    private static final int MOST_TRIALS = 40;
    private static final BigInteger TWENTIETHS_LEFT = BigInteger.valueOf(19);
    private static final BigInteger TWENTIETHS = BigInteger.valueOf(20);

    private final QuoteBasis basis;
    private final SizeSearch sizes;
    private final Set<String> freightPaid;

    /** @param freightPaid suppliers whose freight the request is not charged */
    Neighbours(QuoteBasis basis, Sharing sharing, Set<String> freightPaid) {
        this.basis = basis;
        this.freightPaid = freightPaid;
        sizes = new SizeSearch(basis, sharing::cutQuickly);
    }

    /** The best change of length and the best change of quantity of one line, if they save a twentieth of the waste. */
    List<Neighbour> of(QuoteLine line, List<QuoteLine> sameRope) {
        List<Piece> others = sameRope.stream()
                .filter(other -> !other.equals(line))
                .flatMap(other -> other.pieces().stream())
                .toList();
        Written finished = line.assembly().make().finished();
        List<Trial> lengths = lengths(line).stream()
                .flatMap(length -> trial(line, others, length, line.quantity()).stream())
                .toList();
        List<Trial> quantities = quantities(line).stream()
                .flatMap(quantity -> trial(line, others, finished, quantity).stream())
                .toList();
        List<Neighbour> found = new ArrayList<>();
        if (!lengths.isEmpty() || !quantities.isEmpty()) {
            trial(line, others, finished, line.quantity()).ifPresent(asked -> {
                Variant now = asked.at(asked.price());
                for (List<Trial> trials : List.of(lengths, quantities)) {
                    List<Variant> variants =
                            trials.stream().map(each -> each.at(asked.price())).toList();
                    best(now, variants).ifPresent(best -> found.add(new Neighbour(line.name(), now, best)));
                }
            });
        }
        return found;
    }

    /**
     * A way of making the line, packed.
     *
     * @param cost of cutting all pieces of the rope
     * @param cut all their cut lengths together
     * @param price of a metre on the reels that are cut then
     */
    private record Trial(Written finished, int quantity, Cost cost, Length cut, UnitPrice price) {
        /** Beside others, with the rope in the pieces at one price for all of them. */
        Variant at(UnitPrice price) {
            Cost worth = price.of(cut);
            return new Variant(finished, quantity, cost.minus(worth), worth);
        }
    }

    /** The least waste for the rope in the pieces; of several the nearest to what was asked. */
    private static Optional<Variant> best(Variant asked, List<Variant> variants) {
        return variants.stream()
                .min(Comparator.<Variant>naturalOrder()
                        .thenComparingLong(
                                each -> Math.abs(each.finished().exact().units()
                                        - asked.finished().exact().units()))
                        .thenComparingInt(each -> Math.abs(each.quantity() - asked.quantity())))
                .filter(best -> saves(asked, best));
    }

    private static boolean saves(Variant asked, Variant best) {
        BigInteger before = asked.wasteTimesWorthOf(best);
        BigInteger after = best.wasteTimesWorthOf(asked);
        return before.signum() > 0
                && after.multiply(TWENTIETHS).compareTo(before.multiply(TWENTIETHS_LEFT)) <= 0
                && asked.waste().minus(best.waste()).millis() >= Cost.MILLIS_PER_MINOR;
    }

    /** Every length in steps of what cuts are rounded to, wider where that would be more than forty. */
    private List<Written> lengths(QuoteLine line) {
        FineLength finished = line.assembly().make().finished().exact();
        QuoteLine.Leeway leeway = line.asked().leeway();
        long step = basis.rope(line.rope()).cutting().toNearest().roundedUp().mm();
        long range = leeway.shorter().plus(leeway.longer()).mm();
        long wider = step * Math.max(1, -Math.floorDiv(-range, step * MOST_TRIALS));
        List<Written> lengths = new ArrayList<>();
        for (long mm = -leeway.shorter().mm() / wider * wider;
                mm <= leeway.longer().mm();
                mm += wider) {
            FineLength changed = finished.plus(FineLength.ofMillimetres(mm));
            if (mm != 0 && changed.isPositive()) {
                lengths.add(Written.worked(changed));
            }
        }
        return lengths;
    }

    private static List<Integer> quantities(QuoteLine line) {
        QuoteLine.Leeway leeway = line.asked().leeway();
        int from = leeway.fewest() == 0 ? line.quantity() : leeway.fewest();
        int to = leeway.most() == 0 ? line.quantity() : leeway.most();
        int step = Math.max(1, (to - from) / MOST_TRIALS);
        List<Integer> quantities = new ArrayList<>();
        for (int quantity = from; quantity <= to; quantity += step) {
            if (quantity != line.quantity()) {
                quantities.add(quantity);
            }
        }
        return quantities;
    }

    /** What the rope of the line costs when the line is changed; nothing when it could not be made so. */
    private Optional<Trial> trial(QuoteLine line, List<Piece> others, Written finished, int quantity) {
        NewRope rope = basis.anySize(line.rope());
        List<Piece> own = line.changed(finished, quantity, basis.model()).pieces();
        List<Piece> pieces = new ArrayList<>(others);
        pieces.addAll(own);
        if (own.isEmpty() || !pieces.stream().allMatch(rope::holds)) {
            return Optional.empty();
        }
        BoughtRope bought = sizes.bought(line.rope(), pieces, freightPaid);
        CostRange cost = bought.cutting().cost();
        return cost.isUnknown()
                ? Optional.empty()
                : Optional.of(new Trial(
                        finished, quantity, new Cost(cost.found()), new Party("", pieces).cut(), bought.byMetre()));
    }
}
