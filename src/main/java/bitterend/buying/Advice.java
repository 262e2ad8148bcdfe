package bitterend.buying;

import bitterend.market.LeftOut;
import bitterend.measure.Cost;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What to buy for the orders in hand, ropes left out that nobody offers.
 *
 * @param ways from the least paid to the least cost, each once
 * @param recommended number of the recommended one among them, from 0; -1 where none is within the budget
 * @param paidBound proven: no way that leaves no more unplanned pays less
 * @param ties what the least cost was chosen over
 * @param next up to two sets that do without a size of those of the least cost and of one another, cheapest first
 * @param unheld pieces that nothing on offer can hold
 * @param late ids of pieces whose rope comes after they are due, whatever is ordered
 * @param tooLong what would cost less, if rope might last longer
 * @param affordable where even the least paid is above the budget: what the budget can pay for, the most urgent work first
 * @param unpaid ids of the pieces that have no rope then
 * @param allCompared whether there was time for all that was to be looked at
 */
public record Advice(
        List<Way> ways,
        int recommended,
        Cost paidBound,
        List<Tie> ties,
        List<Purchase> next,
        List<Unheld> unheld,
        List<String> late,
        List<TooLong> tooLong,
        @Nullable Way affordable,
        List<String> unpaid,
        boolean allCompared) {
    static final int MOST_NEXT = 2;

    public Advice {
        ways = List.copyOf(ways);
        ties = List.copyOf(ties);
        next = List.copyOf(next);
        unheld = List.copyOf(unheld);
        late = List.copyOf(late);
        tooLong = List.copyOf(tooLong);
        unpaid = List.copyOf(unpaid);
    }

    /** The way of an aim. */
    public Way way(Aim aim) {
        return ways.stream()
                .filter(way -> way.aims().contains(aim))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no way for " + aim));
    }

    /** The way to recommend; nothing where all are over what may be spent. */
    public Optional<Way> findRecommended() {
        return recommended < 0 ? Optional.empty() : Optional.of(ways.get(recommended));
    }

    /** The least-cost set found. */
    public Purchase best() {
        return way(Aim.LEAST_COST).purchase();
    }

    /** What the budget can pay for, where even the least paid is above it. */
    public Optional<Way> findAffordable() {
        return Optional.ofNullable(affordable);
    }

    /** What is shown side by side: what the budget can pay for before the ways that serve all orders. */
    public List<Way> shown() {
        return Stream.concat(findAffordable().filter(way -> way.purchase().set().reels() > 0).stream(), ways.stream())
                .toList();
    }

    /** Ids of the pieces that could have rope and have none in a way. */
    public List<String> withoutRope(Way way) {
        return way.equals(affordable) ? unpaid : way.purchase().unplanned();
    }

    /** The offers that nobody can order of ropes that are bought or lacking: what is there is not bought again. */
    public List<LeftOut> leftOut(Orders orders) {
        Set<String> wanting = new HashSet<>(late);
        unheld.forEach(piece -> wanting.add(piece.piece()));
        Set<String> ropes = new HashSet<>();
        for (Way way : shown()) {
            way.covers().forEach(cover -> ropes.add(cover.rope()));
            wanting.addAll(way.purchase().unplanned());
        }
        orders.day().pieces().stream()
                .filter(piece -> wanting.contains(piece.id()))
                .forEach(piece -> piece.choices().forEach(choice -> ropes.add(choice.rope())));
        return orders.leftOut().stream()
                .filter(each -> ropes.contains(each.offer().rope()))
                .toList();
    }

    /** The way to go: the recommended one; what the budget can pay for where none is. */
    public Way acted() {
        return findRecommended().or(this::findAffordable).orElseGet(() -> ways.get(0));
    }

    /** What is bought by it. */
    public Purchase act() {
        return acted().purchase();
    }
}
