package bitterend.day;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Ordered;
import bitterend.stock.PieceCut;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Compares what was ordered when pieces were cut with what is ordered now. */
public final class OrderChanges {
    private final OrderBook book;

    public OrderChanges(OrderBook book) {
        this.book = book;
    }

    /**
     * Every cut piece that is still here and whose order changed, by piece; without those that a person accepted as they
     * are, and those that were cut before the ledger kept what was ordered.
     */
    public List<OrderChange> in(Ledger.Stock stock) {
        List<OrderChange> changes = new ArrayList<>();
        List<Event> accepted = stock.standing(Event.Kind.ORDER_CHANGED);
        Map<String, Movement> cuts = new HashMap<>(new CutPieces(stock).cuts());
        cuts.keySet().removeAll(DeliveredPieces.of(stock));
        for (Map.Entry<String, Movement> cut : cuts.entrySet()) {
            change(
                            cut.getKey(),
                            RopeBack.today(stock, cut.getValue()),
                            cut.getValue().entry().piece())
                    .filter(change -> !isAccepted(change, accepted))
                    .ifPresent(changes::add);
        }
        changes.sort(Comparator.comparing(OrderChange::piece, NaturalOrder.IDS));
        return changes;
    }

    private static boolean isAccepted(OrderChange change, List<Event> accepted) {
        return accepted.stream()
                .anyMatch(event -> event.fact("piece " + change.piece()).equals(change.accepted()));
    }

    private Optional<OrderChange> change(String id, Reel reel, PieceCut cut) {
        Ordered was = cut.ordered();
        Length length = cut.length();
        Ordered now = book.ordered().getOrDefault(id, Ordered.NONE);
        Optional<Piece> piece = book.find(id);
        if (!was.isKnown()) {
            return Optional.empty();
        }
        if (piece.isEmpty()) {
            OrderChange.What what = isLineThere(was) ? OrderChange.What.FEWER : OrderChange.What.CANCELLED;
            return Optional.of(new OrderChange(id, what, was, Ordered.NONE, length, Length.ZERO));
        }
        Optional<Length> needed = piece.get().lengthOn(reel.rope());
        return make(was, now, length, needed)
                .or(() -> rope(was, now, reel))
                .or(() -> rest(was, now))
                .map(what -> new OrderChange(id, what, was, now, length, needed.orElse(Length.ZERO)));
    }

    private boolean isLineThere(Ordered was) {
        return book.ordered().values().stream()
                .anyMatch(now -> now.piece().order().equals(was.piece().order())
                        && now.piece().line().equals(was.piece().line())
                        && now.piece().part().equals(was.piece().part()));
    }

    /** Of what the piece cannot become, worst first. A cut length that only our own tables changed is no change. */
    private static Optional<OrderChange.What> make(Ordered was, Ordered now, Length length, Optional<Length> needed) {
        if (needed.isEmpty()) {
            return Optional.of(OrderChange.What.ROPE);
        }
        boolean another =
                isOtherLength(was, now) || isOtherEnds(was, now) || isMeasuredOtherwise(was.terms(), now.terms());
        return another && needed.get().isLongerThan(length)
                ? Optional.of(OrderChange.What.TOO_SHORT)
                : Optional.empty();
    }

    /** A certificate that is asked for now, or whose rope it is to be, where its rope is not like that. */
    private static Optional<OrderChange.What> rope(Ordered was, Ordered now, Reel reel) {
        Ordered.Terms then = was.terms();
        Ordered.Terms asked = now.terms();
        if (!then.isKept()) {
            return Optional.empty();
        }
        if (!asked.certificate().isEmpty()
                && !asked.certificate().equals(then.certificate())
                && !asked.certificate().equals(reel.papers().certificate())) {
            return Optional.of(OrderChange.What.CERTIFICATE);
        }
        return asked.ownRope() == then.ownRope() ? Optional.empty() : Optional.of(OrderChange.What.OWN_ROPE);
    }

    private static Optional<OrderChange.What> rest(Ordered was, Ordered now) {
        if (isOtherLength(was, now)) {
            return Optional.of(OrderChange.What.LENGTH);
        }
        if (isOtherEnds(was, now)) {
            return Optional.of(OrderChange.What.ENDS);
        }
        if (isMeasuredOtherwise(was.terms(), now.terms())) {
            return Optional.of(OrderChange.What.MEASURING);
        }
        return was.bond().equals(now.bond()) ? Optional.empty() : Optional.of(OrderChange.What.SET);
    }

    private static boolean isOtherLength(Ordered was, Ordered now) {
        return !was.make().exactly().finished().equals(now.make().exactly().finished());
    }

    private static boolean isOtherEnds(Ordered was, Ordered now) {
        return !was.make().exactly().ends().equals(now.make().exactly().ends());
    }

    private static boolean isMeasuredOtherwise(Ordered.Terms was, Ordered.Terms now) {
        return was.isKept() && !was.measured().equals(now.measured());
    }
}
