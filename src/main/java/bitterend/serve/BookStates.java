package bitterend.serve;

import bitterend.day.OrderChange;
import bitterend.day.OrdersTold;
import bitterend.day.PieceStatus;
import bitterend.day.PieceStatus.State;
import bitterend.work.ShopNow;
import bitterend.work.orders.AskOrders;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** How far each line of the order book is, in few words, and what changed of it after cutting. */
final class BookStates {
    private final LocalDate today;
    private final Map<String, List<PieceStatus>> lines = new HashMap<>();
    private final Set<String> overdue = new HashSet<>();
    private final Map<String, String> lineOf = new HashMap<>();
    private final Map<String, List<OrderChange>> changes = new HashMap<>();
    private final Map<String, Integer> spares = new HashMap<>();

    BookStates(ShopNow now) {
        today = Loft.day(now);
        OrdersTold told = new AskOrders(now, today).status();
        told.orders().forEach(order -> order.pieces().forEach(piece -> {
            lines.computeIfAbsent(piece.line(), line -> new ArrayList<>()).add(piece);
            lineOf.put(piece.piece(), piece.line());
            if (order.isOverdue(today) && !piece.is(State.DELIVERED)) {
                overdue.add(piece.line());
            }
        }));
        told.changes().forEach(change -> changes.computeIfAbsent(line(change.piece()), line -> new ArrayList<>())
                .add(change));
        told.spares().forEach(spare -> spares.merge(line(spare.cutAs()), 1, Integer::sum));
    }

    private String line(String piece) {
        return lineOf.getOrDefault(piece, piece);
    }

    /** How many of its pieces are how far: {@code 1 cut, 2 planned; overdue}; empty for a line that nobody knows. */
    String of(String line) {
        List<PieceStatus> pieces = lines.getOrDefault(line, List.of());
        List<String> words = new ArrayList<>();
        for (State state : State.values()) {
            long count = pieces.stream().filter(piece -> piece.is(state)).count();
            if (count > 0) {
                words.add(count + " " + state.word());
            }
        }
        if (spares.containsKey(line)) {
            words.add(spares.get(line) + " spare");
        }
        boolean late = pieces.stream().anyMatch(piece -> piece.isLate(today));
        return String.join(", ", words) + (overdue.contains(line) ? "; overdue" : late ? "; cut late" : "");
    }

    /** What changed of a line after pieces of it were cut; empty for nothing. */
    String changed(String line) {
        List<OrderChange> all = changes.getOrDefault(line, List.of());
        long useless = all.stream().filter(OrderChange::isUseless).count();
        return all.isEmpty()
                ? ""
                : "Changed after cutting: " + all.size() + " cut, "
                        + (useless == 0
                                ? "long enough all the same"
                                : useless + " of them cannot become what is ordered now")
                        + ". The screen of orders says what can be done.";
    }
}
