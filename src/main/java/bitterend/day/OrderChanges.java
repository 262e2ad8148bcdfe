package bitterend.day;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Ordered;
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
            change(cut.getKey(), cut.getValue())
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

    private Optional<OrderChange> change(String id, Movement cut) {
        Ordered was = cut.entry().piece().ordered();
        Length length = cut.entry().piece().length();
        Ordered now = book.ordered().getOrDefault(id, Ordered.NONE);
        Optional<Piece> piece = book.find(id);
        if (!was.isKnown()) {
            return Optional.empty();
        }
        if (piece.isEmpty()) {
            OrderChange.What what = isLineThere(was) ? OrderChange.What.FEWER : OrderChange.What.CANCELLED;
            return Optional.of(new OrderChange(id, what, was, Ordered.NONE, length, Length.ZERO));
        }
        Optional<Length> needed = piece.get().lengthOn(cut.entry().after().rope());
        return what(was, now, length, needed)
                .map(what -> new OrderChange(id, what, was, now, length, needed.orElse(Length.ZERO)));
    }

    private boolean isLineThere(Ordered was) {
        return book.ordered().values().stream()
                .anyMatch(now -> now.piece().order().equals(was.piece().order())
                        && now.piece().line().equals(was.piece().line())
                        && now.piece().part().equals(was.piece().part()));
    }

    /** The first of these, worst first. A cut length that only our own tables changed is no change of the order. */
    private static Optional<OrderChange.What> what(Ordered was, Ordered now, Length length, Optional<Length> needed) {
        if (needed.isEmpty()) {
            return Optional.of(OrderChange.What.ROPE);
        }
        boolean finished =
                !was.make().exactly().finished().equals(now.make().exactly().finished());
        boolean ends = !was.make().exactly().ends().equals(now.make().exactly().ends());
        if ((finished || ends) && needed.get().isLongerThan(length)) {
            return Optional.of(OrderChange.What.TOO_SHORT);
        }
        if (finished) {
            return Optional.of(OrderChange.What.LENGTH);
        }
        if (ends) {
            return Optional.of(OrderChange.What.ENDS);
        }
        return was.bond().equals(now.bond()) ? Optional.empty() : Optional.of(OrderChange.What.SET);
    }
}
