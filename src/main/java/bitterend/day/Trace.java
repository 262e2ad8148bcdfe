package bitterend.day;

import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.PieceAccount.Made;
import bitterend.stock.Standing;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** From any piece to its reel, lot, certificate and plan, and from any lot to every piece. */
public final class Trace {
    private final Ledger.Stock stock;

    public Trace(Ledger.Stock stock) {
        this.stock = stock;
    }

    /**
     * Everything that happened to a piece, oldest first, what was taken back included: to the good piece of that id, to the
     * spare pieces that were made of it or that it was made of, or to the spare piece of that name.
     */
    public List<Movement> ofPiece(String piece) {
        List<Movement> all = stock.ofPieces();
        Set<String> names = new HashSet<>(Set.of(piece));
        Set<Long> cuts = new HashSet<>();
        source(piece).ifPresent(made -> cuts.add(made.cut().number()));
        all.stream()
                .map(movement -> movement.entry().origin())
                .filter(origin -> origin.piece().equals(piece) && !origin.was().isEmpty())
                .forEach(origin -> names.add(origin.was()));
        return all.stream()
                .filter(movement -> cuts.contains(movement.number())
                        || names.contains(movement.entry().origin().piece())
                        || names.contains(movement.entry().origin().was()))
                .toList();
    }

    /** The reel that the rope of a piece was cut off; that of its last movement when there is no such piece any more. */
    public String reelOf(String piece) {
        return source(piece)
                .map(Made::cut)
                .orElseGet(() -> {
                    List<Movement> found = ofPiece(piece);
                    return found.get(found.size() - 1);
                })
                .entry()
                .reel();
    }

    private Optional<Made> source(String piece) {
        CutPieces pieces = new CutPieces(stock);
        return Optional.ofNullable(pieces.good().get(piece))
                .or(() -> Optional.ofNullable(pieces.spares().get(piece)));
    }

    /** What was decided about a piece or its set without moving rope, oldest first: released, spliced, passed, delivered. */
    public List<Event> eventsOf(String piece) {
        Set<String> sets = new LinkedHashSet<>();
        ofPiece(piece).stream()
                .filter(movement -> movement.entry().origin().piece().equals(piece))
                .forEach(movement ->
                        sets.add(movement.entry().piece().ordered().bond().set()));
        return Standing.events(stock.events()).stream()
                .filter(event -> event.movements().isEmpty())
                .filter(event -> event.named("piece").contains(piece)
                        || (event.act().kind() == Event.Kind.SET_RELEASED
                                && event.named("set").stream().anyMatch(sets::contains)))
                .toList();
    }

    /**
     * The pieces that came of a lot, spare and short ones too, in the order in which they were cut. A reel whose lot was
     * corrected after the cut counts under both lots.
     */
    public List<Movement> ofLot(String lot) {
        CutPieces pieces = new CutPieces(stock);
        Map<String, String> now = new HashMap<>();
        stock.holdings().forEach(holding -> now.put(holding.id(), holding.reel().lot()));
        return Stream.concat(pieces.good().values().stream(), pieces.spares().values().stream())
                .filter(made -> made.cut().entry().after().lot().equals(lot)
                        || lot.equals(now.get(made.cut().entry().reel())))
                .map(Made::made)
                .sorted(Comparator.comparingLong(Movement::number))
                .toList();
    }

    /** Reels and coils of a lot that are on the rack. */
    public List<Holding> rackOf(String lot) {
        return stock.holdings().stream()
                .filter(holding -> !holding.gone() && holding.reel().lot().equals(lot))
                .toList();
    }

    /** The reels a reel came off, itself first, back to the one that was received. */
    public List<String> ancestry(String reel) {
        Set<String> line = new LinkedHashSet<>();
        String next = reel;
        while (!next.isEmpty() && line.add(next)) {
            List<Movement> history = stock.history(next);
            next = history.isEmpty() ? "" : history.get(0).entry().origin().parent();
        }
        return List.copyOf(line);
    }
}
