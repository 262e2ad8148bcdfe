package bitterend.day;

import bitterend.day.PieceStatus.State;
import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** How far every order has come, by what the ledger, the plan in force and the order book say. */
public final class OrderStates {
    private final OrderBook book;
    private final Map<String, String> planned;
    private final Map<String, Movement> cuts = new HashMap<>();
    private final Map<String, Length> spliced = new HashMap<>();
    private final Set<String> passed = new HashSet<>();
    private final Set<String> delivered = new HashSet<>();
    private final Set<String> useless = new HashSet<>();
    private final List<SparePiece> spares = new ArrayList<>();

    /**
     * Of a shop without a ledger.
     *
     * @param planned the plan in force, of every piece that it cuts
     */
    public OrderStates(OrderBook book, Map<String, String> planned) {
        this.book = book;
        this.planned = Map.copyOf(planned);
    }

    /** Of a shop with a ledger, as it is at one moment. */
    public OrderStates(OrderBook book, Map<String, String> planned, Ledger.Stock stock) {
        this(book, planned);
        cuts.putAll(new CutPieces(stock).cuts());
        for (Event event : stock.standing(Event.Kind.SPLICED)) {
            DeliveredPieces.ofThisCut(event, cuts)
                    .forEach(piece -> spliced.put(piece, length(event.fact("piece " + piece))));
        }
        stock.standing(Event.Kind.PASSED).forEach(event -> passed.addAll(DeliveredPieces.ofThisCut(event, cuts)));
        delivered.addAll(DeliveredPieces.of(stock));
        new OrderChanges(book)
                .in(stock).stream().filter(OrderChange::isUseless).forEach(change -> useless.add(change.piece()));
        spares.addAll(SparePieces.of(stock, book));
    }

    private static Length length(String mm) {
        return mm.endsWith(" mm") ? new Length(Long.parseLong(mm.substring(0, mm.length() - 3))) : Length.ZERO;
    }

    /** Every order: what is overdue first, then by due day and number; what is delivered last. */
    public List<OrderStatus> orders(LocalDate day) {
        Map<String, List<OrderBook.Line>> byOrder = new TreeMap<>(NaturalOrder.IDS);
        for (OrderBook.Line line : book.lines()) {
            byOrder.computeIfAbsent(line.assembly().ordered().source().order(), order -> new ArrayList<>())
                    .add(line);
        }
        return byOrder.entrySet().stream()
                .map(entry -> status(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparing((OrderStatus order) -> order.isDone())
                        .thenComparing(order -> !order.isOverdue(day))
                        .thenComparing(OrderStatus::due))
                .toList();
    }

    private OrderStatus status(String order, List<OrderBook.Line> lines) {
        List<PieceStatus> pieces = lines.stream()
                .flatMap(line -> line.pieces().stream())
                .map(this::status)
                .toList();
        List<Piece> all = lines.stream().flatMap(line -> line.pieces().stream()).toList();
        LocalDate due = all.stream()
                .filter(piece -> !delivered.contains(piece.id()))
                .map(piece -> piece.source().due())
                .min(LocalDate::compareTo)
                .or(() -> all.stream().map(piece -> piece.source().due()).max(LocalDate::compareTo))
                .orElse(LocalDate.MAX);
        String customer = lines.get(0).assembly().ordered().customer();
        return new OrderStatus(order, customer, due, pieces, spares(order));
    }

    private List<SparePiece> spares(String order) {
        return spares.stream()
                .filter(spare -> spare.ordered().piece().order().equals(order))
                .toList();
    }

    private PieceStatus status(Piece piece) {
        String id = piece.id();
        Movement cut = cuts.get(id);
        if (cut == null) {
            String plan = planned.getOrDefault(id, "");
            return new PieceStatus(
                    id, plan.isEmpty() ? State.OPEN : State.PLANNED, plan, List.of(), false, Length.ZERO);
        }
        Length made = spliced.getOrDefault(id, Length.ZERO);
        return new PieceStatus(id, state(id), "", List.of(cut.entry().after()), passed.contains(id), made);
    }

    private State state(String cut) {
        if (delivered.contains(cut)) {
            return State.DELIVERED;
        }
        if (useless.contains(cut)) {
            return State.SHORT;
        }
        if (passed.contains(cut)) {
            return State.PASSED;
        }
        return spliced.containsKey(cut) ? State.SPLICED : State.CUT;
    }
}
