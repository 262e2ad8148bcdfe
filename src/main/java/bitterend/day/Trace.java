package bitterend.day;

import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Standing;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** From any piece to its reel, lot, certificate and plan, and from any lot to every piece. */
public final class Trace {
    private final Ledger.Stock stock;

    public Trace(Ledger.Stock stock) {
        this.stock = stock;
    }

    /** Everything that happened to a piece, oldest first, what was taken back included. */
    public List<Movement> ofPiece(String piece) {
        return stock.ofPieces().stream()
                .filter(movement -> movement.entry().origin().piece().equals(piece))
                .toList();
    }

    /** What was decided about a piece or its set without moving rope, oldest first: released, spliced, passed, delivered. */
    public List<Event> eventsOf(String piece) {
        Set<String> sets = new LinkedHashSet<>();
        ofPiece(piece)
                .forEach(movement ->
                        sets.add(movement.entry().piece().ordered().bond().set()));
        return Standing.events(stock.events()).stream()
                .filter(event -> event.movements().isEmpty())
                .filter(event -> event.named("piece").contains(piece)
                        || event.act().kind() == Event.Kind.SET_RELEASED
                                && event.named("set").stream().anyMatch(sets::contains))
                .toList();
    }

    /** The pieces that are cut of a lot now, in the order in which they were cut. */
    public List<Movement> ofLot(String lot) {
        return new CutPieces(stock)
                .cuts().values().stream()
                        .filter(movement -> movement.entry().after().lot().equals(lot))
                        .sorted(java.util.Comparator.comparingLong(Movement::number))
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
