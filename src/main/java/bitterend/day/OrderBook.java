package bitterend.day;

import bitterend.demand.Assembly;
import bitterend.demand.Piece;
import bitterend.demand.PieceId;
import bitterend.stock.Ordered;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What is ordered now: every piece of every line, whatever became of it. */
public final class OrderBook {
    private final List<Line> lines;
    private final Map<String, Piece> pieces = new LinkedHashMap<>();
    private final Map<String, Ordered> ordered = new TreeMap<>();

    /**
     * A line, or one part of it.
     *
     * @param assembly what is ordered
     * @param pieces its pieces
     */
    public record Line(Assembly assembly, List<Piece> pieces) {
        public Line {
            pieces = List.copyOf(pieces);
        }
    }

    public OrderBook(List<Line> lines) {
        this.lines = List.copyOf(lines);
        for (Line line : lines) {
            for (Piece piece : line.pieces()) {
                pieces.put(piece.id(), piece);
                ordered.put(piece.id(), ordered(line.assembly(), piece));
            }
        }
    }

    /** The lines by order and line, the parts of a line one after the other. */
    public List<Line> lines() {
        return lines;
    }

    /** What the ledger keeps of each piece when it is cut, by piece id. */
    public Map<String, Ordered> ordered() {
        return Collections.unmodifiableMap(ordered);
    }

    /** A piece that is ordered now. */
    public Optional<Piece> find(String id) {
        return Optional.ofNullable(pieces.get(id));
    }

    /** The pieces of a matched set. */
    public List<Piece> ofSet(String set) {
        return pieces.values().stream()
                .filter(piece -> piece.isMatched() && piece.matching().set().equals(set))
                .toList();
    }

    /**
     * What was ordered of a piece when a plan was made of it, as far as the plan keeps it: how it is measured, and who wants
     * it, are what they are now where its line or its order is still there.
     */
    public Ordered planned(Piece piece) {
        Optional<Assembly> same = lines.stream()
                .map(Line::assembly)
                .filter(each ->
                        each.ordered().source().lineId().equals(piece.source().lineId()))
                .findFirst();
        String customer = lines.stream()
                .map(Line::assembly)
                .filter(each -> each.ordered().source().order().equals(piece.order()))
                .map(each -> each.ordered().customer())
                .findFirst()
                .orElse("");
        return ordered(
                piece,
                same.map(each -> each.ordered().customer()).orElse(customer),
                same.map(each -> each.make().measuring().words()).orElse(""));
    }

    private static Ordered ordered(Assembly assembly, Piece piece) {
        return ordered(
                piece,
                assembly.ordered().customer(),
                assembly.make().measuring().words());
    }

    private static Ordered ordered(Piece piece, String customer, String measured) {
        PieceId id = piece.pieceId();
        LocalDate due = piece.source().due();
        return new Ordered(
                new Ordered.Piece(id.order(), id.line(), id.number(), id.legs() == 1 ? 0 : id.leg(), id.part()),
                new Ordered.Make(piece.orderedRope(), piece.finished().kept(), piece.ends(), piece.cut()),
                new Ordered.Bond(piece.matching().set(), match(piece.matching().bond())),
                new Ordered.Wish(customer, due.equals(LocalDate.MAX) ? "" : due.toString()),
                new Ordered.Terms(piece.certificate(), piece.ownRope(), measured));
    }

    private static String match(Piece.Bond bond) {
        return switch (bond) {
            case NONE -> "";
            case ONE_LOT -> "lot";
            case ONE_REEL -> "reel";
        };
    }
}
