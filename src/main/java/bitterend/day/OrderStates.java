package bitterend.day;

import bitterend.day.PieceStatus.State;
import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.packing.ShopCalendar;
import bitterend.packing.WorkingDays;
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
    private final Map<String, CutPlace> planned;
    private final WorkingDays working;
    private final Map<String, Movement> cuts = new HashMap<>();
    private final Map<String, LookedOver> made = new HashMap<>();
    private final Set<String> delivered = new HashSet<>();
    private final Set<String> useless = new HashSet<>();
    private final List<SparePiece> spares = new ArrayList<>();

    /**
     * Of a shop without a ledger.
     *
     * @param planned where the plan in force cuts a piece, by its id
     * @param calendar on which days the shop works
     */
    public OrderStates(OrderBook book, Map<String, CutPlace> planned, ShopCalendar calendar) {
        this.book = book;
        this.planned = Map.copyOf(planned);
        working = new WorkingDays(calendar);
    }

    /** Of a shop with a ledger, as it is at one moment. */
    public OrderStates(OrderBook book, Map<String, CutPlace> planned, ShopCalendar calendar, Ledger.Stock stock) {
        this(book, planned, calendar);
        cuts.putAll(new CutPieces(stock).cuts());
        FinishedPieces finished = new FinishedPieces(stock, cuts);
        cuts.keySet().forEach(piece -> finished.find(piece).ifPresent(found -> made.put(piece, found)));
        delivered.addAll(DeliveredPieces.of(stock));
        new OrderChanges(book)
                .in(stock).stream().filter(OrderChange::isUseless).forEach(change -> useless.add(change.piece()));
        spares.addAll(SparePieces.of(stock, book));
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
        String line = piece.source().lineId();
        LocalDate cutBy = working.cutBy(piece);
        if (cut == null) {
            CutPlace place = planned.getOrDefault(id, CutPlace.NONE);
            State state = place.isPlanned() ? State.PLANNED : State.OPEN;
            return new PieceStatus(id, line, state, cutBy, place, List.of(), LookedOver.NOT_YET);
        }
        return new PieceStatus(
                id,
                line,
                state(id),
                cutBy,
                CutPlace.NONE,
                List.of(cut.entry().after()),
                made.getOrDefault(id, LookedOver.NOT_YET));
    }

    private State state(String cut) {
        if (delivered.contains(cut)) {
            return State.DELIVERED;
        }
        if (useless.contains(cut)) {
            return State.SHORT;
        }
        LookedOver found = made.get(cut);
        return found == null ? State.CUT : found.isGood() ? State.PASSED : State.SPLICED;
    }
}
