package bitterend.quoting;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.quoting.sharing.CostRange;
import bitterend.quoting.sharing.NewRope;
import bitterend.quoting.sharing.Sharing;
import java.util.ArrayList;
import java.util.List;

/**
 * What a request would have added to the shop's usual work: each past week cut from new reels with it and without it. The
 * costs are those of the best cutting found.
 */
final class UsualWaste {
    private static final int MOST_WEEKS = 26;

    private final QuoteBasis basis;
    private final Sharing sharing;

    UsualWaste(QuoteBasis basis, Sharing sharing) {
        this.basis = basis;
        this.sharing = sharing;
    }

    /** The waste that pieces of one rope add: its mean and range over the last half year of weeks with work in that rope. */
    WasteView of(NewRope rope, List<Piece> asked, Cost worth) {
        List<List<Piece>> weeks = basis.pastWeeks().stream()
                .map(week -> week.stream()
                        .filter(piece -> !piece.ownRope() && rope.holds(piece))
                        .map(UsualWaste::past)
                        .toList())
                .filter(week -> !week.isEmpty())
                .toList();
        if (weeks.isEmpty()) {
            return new WasteView.NotKnown("no past work in this rope is recorded");
        }
        List<Cost> added = weeks.subList(Math.max(0, weeks.size() - MOST_WEEKS), weeks.size()).stream()
                .map(week -> added(rope, week, asked).minus(worth))
                .toList();
        Cost sum = added.stream().reduce(Cost.ZERO, Cost::plus);
        return new WasteView.Span(
                added.stream().min(Cost::compareTo).orElseThrow(),
                new Cost(Math.floorDiv(sum.millis(), (long) added.size())),
                added.stream().max(Cost::compareTo).orElseThrow(),
                added.size());
    }

    private Cost added(NewRope rope, List<Piece> week, List<Piece> asked) {
        List<Piece> both = new ArrayList<>(week);
        both.addAll(asked);
        CostRange with = sharing.cost(rope, both);
        CostRange without = sharing.cost(rope, week);
        return new Cost(with.found() - without.found());
    }

    /** The piece under a name that no piece of today has. */
    private static Piece past(Piece piece) {
        return new Piece(
                "past " + piece.id(),
                piece.source(),
                piece.choices(),
                Piece.Matching.NONE,
                "",
                false,
                piece.finished().roundedUp(),
                piece.ends());
    }
}
