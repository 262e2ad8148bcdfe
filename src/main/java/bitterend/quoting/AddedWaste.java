package bitterend.quoting;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.PackingProblem;
import bitterend.quoting.sharing.CostRange;
import bitterend.quoting.sharing.NewRope;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;

/**
 * What a request adds to the booked work: the book cut with it less the book cut without it, on today's rack and on new
 * reels. Both are known within their bounds, so that the difference lies in an interval.
 */
final class AddedWaste {
    private final QuoteBasis basis;
    private final Packer packer;
    private final Effort effort;

    AddedWaste(QuoteBasis basis, Packer packer, Effort effort) {
        this.basis = basis;
        this.packer = packer;
        this.effort = effort;
    }

    /**
     * The waste that pieces of one rope add.
     *
     * @param asked the pieces of the request in that rope
     * @param worth what the rope in them is worth
     */
    WasteView of(NewRope rope, List<Piece> asked, Cost worth) {
        Set<String> ids = new HashSet<>();
        asked.forEach(piece -> ids.add(piece.id()));
        List<Piece> booked = basis.book().pieces().stream()
                .filter(piece -> !ids.contains(piece.id()))
                .toList();
        RackAndMarket market = new RackAndMarket(basis, rope.rope().id(), booked, asked);
        CostRange without = pack(market, List.of());
        CostRange with = pack(market, asked);
        if (without.isUnknown() || with.isUnknown()) {
            return new WasteView.NotKnown("the rack and new reels do not hold the booked work and this request whole");
        }
        return new WasteView.Span(
                new Cost(with.proven() - without.found()).minus(worth),
                new Cost(with.found() - without.found()).minus(worth),
                new Cost(with.found() - without.proven()).minus(worth),
                1);
    }

    /** On new reels of such sizes that what is taken of each can be had. */
    private CostRange pack(RackAndMarket market, List<Piece> more) {
        Map<String, SizeChoice> sizes = market.sizes();
        while (true) {
            Map<String, NewRope> bought = new TreeMap<>();
            sizes.forEach((rope, choice) -> bought.put(rope, choice.rope()));
            PackingProblem problem = market.problem(more, bought);
            if (problem.pieces().isEmpty()) {
                return new CostRange(0, 0);
            }
            Packer.Result result = packer.pack(problem, effort);
            boolean anew = false;
            for (NewRope rope : bought.values()) {
                SizeChoice choice = Objects.requireNonNull(sizes.get(rope.rope().id()));
                anew |= choice.giveUpOne(rope.taken(problem, result.packing()), false);
            }
            if (!anew) {
                return CostRange.of(result, problem.pieces().size());
            }
        }
    }
}
