package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.market.Offer;
import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import java.util.List;
import java.util.Set;

/** Packs the orders in hand within limits on what may be bought, and reads the purchase off the packing. */
final class PurchasePacker {
    private final Orders orders;
    private final List<Piece> pieces;
    private final PurchaseProblem market;

    PurchasePacker(Orders orders, List<Piece> pieces, Set<String> late) {
        this.orders = orders;
        this.pieces = pieces;
        market = new PurchaseProblem(orders, late);
    }

    /** The purchase behind the best packing found. */
    Purchase purchase(Packer packer, Limits limits, Effort effort) {
        PackingProblem problem = market.problem(pieces, limits);
        Packer.Result result = packer.pack(problem, effort);
        PurchasedReels bought = new PurchasedReels(orders, market, problem, result.packing());
        ReelSet set = bought.set(limits.committed());
        Cost sunk = sum(limits.committed(), this::sunk);
        Cost bound = result.bounds().stream().map(Bound::best).reduce(Cost.ZERO, Cost::plus);
        return new Purchase(
                set,
                result.cost().plus(sunk),
                bound.plus(sunk),
                sum(set, Offer::paid),
                bought.left(set),
                unplanned(result.packing()),
                bought.lines(set));
    }

    /** What a reel bought whatever happens loses on the way to the rack: the price paid above its value there. */
    private Cost sunk(Offer offer) {
        return offer.paid().minus(market.value(offer, true).of(offer.usable()));
    }

    private Cost sum(ReelSet set, java.util.function.Function<Offer, Cost> amount) {
        return set.counts().entrySet().stream()
                .map(entry -> amount.apply(orders.offer(entry.getKey())).times(entry.getValue()))
                .reduce(Cost.ZERO, Cost::plus);
    }

    private List<String> unplanned(Packing packing) {
        return pieces.stream()
                .map(Piece::id)
                .filter(id -> packing.placeOf(id).isEmpty())
                .sorted(NaturalOrder.IDS)
                .toList();
    }
}
