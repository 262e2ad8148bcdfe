package bitterend.packing.check;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.ReelDraw;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Checks begun sets by the ledger itself: what a plan cuts of a matched set must match what the ledger says is cut of it
 * now, whatever the plan was told. It shares nothing with the code that tells plans.
 */
public final class LedgerSets {
    private final Map<String, Reel> reels = new HashMap<>();
    private final Map<String, Source> cut = new HashMap<>();
    private final Map<String, Long> released = new HashMap<>();
    private final Set<String> begun = new HashSet<>();
    private final Map<String, String> parents = new HashMap<>();

    /** What a piece was cut off, and by which event. */
    private record Source(Reel reel, long event) {}

    /**
     * What the ledger says, as it is at one moment.
     *
     * @param movements all movements, oldest first
     * @param events all events, oldest first
     * @param holdings every reel there ever was
     */
    public record Book(List<Movement> movements, List<Event> events, List<Holding> holdings) {
        public Book {
            movements = List.copyOf(movements);
            events = List.copyOf(events);
            holdings = List.copyOf(holdings);
        }

        /** What it says while an event is written. */
        public static Book of(Ledger.Stock stock) {
            return new Book(stock.movements(), stock.events(), stock.holdings());
        }

        public static Book of(Ledger ledger) {
            return ledger.read(Book::of);
        }
    }

    private LedgerSets(Book stock) {
        stock.holdings().forEach(holding -> reels.put(holding.id(), holding.reel()));
        Set<Long> undone = new HashSet<>();
        Set<Long> undoneEvents = new HashSet<>();
        stock.movements()
                .forEach(movement -> undone.add(movement.entry().origin().undoes()));
        stock.events().forEach(event -> undoneEvents.add(event.act().undoes()));
        stock.movements().stream()
                .filter(movement -> !undone.contains(movement.number()))
                .forEach(this::book);
        stock.events().stream()
                .filter(event -> event.act().kind() == Event.Kind.SET_RELEASED)
                .filter(event -> !undoneEvents.contains(event.number()))
                .forEach(event -> event.named("set").forEach(set -> released.put(set, event.number())));
    }

    private void book(Movement movement) {
        Movement.Entry entry = movement.entry();
        String piece = entry.origin().piece();
        if (begun.add(entry.reel()) && !entry.origin().parent().isEmpty()) {
            parents.put(entry.reel(), entry.origin().parent());
        }
        switch (entry.kind()) {
            case CUT, GIVEN -> cut.put(piece, new Source(entry.after(), movement.event()));
            case SPOILED, MADE_SPARE -> cut.remove(piece);
            default -> {}
        }
    }

    /**
     * Everything that a plan would tear.
     *
     * @param ordered every piece that is ordered, those that are cut included
     */
    public static List<Fault> faults(CutPlan plan, List<Piece> ordered, Book stock) {
        LedgerSets ledger = new LedgerSets(stock);
        Map<String, Piece> byId = new HashMap<>();
        ordered.forEach(piece -> byId.put(piece.id(), piece));
        List<Fault> faults = new ArrayList<>();
        for (ReelDraw draw : plan.draws()) {
            for (Cut each : draw.cuts()) {
                Piece piece = byId.get(each.piece());
                if (piece != null && piece.matching().bond() != Bond.NONE && !ledger.cut.containsKey(piece.id())) {
                    ledger.torn(piece, draw.reel(), ordered).ifPresent(faults::add);
                }
            }
        }
        return faults;
    }

    private Optional<Fault> torn(Piece piece, String reel, List<Piece> ordered) {
        Optional<Reel> on = Optional.ofNullable(reels.get(reel));
        for (Piece mate : ordered) {
            Source source = cut.get(mate.id());
            boolean ofTheSet = mate.matching().bond() != Bond.NONE
                    && mate.matching().set().equals(piece.matching().set());
            if (ofTheSet
                    && source != null
                    && source.event() > released.getOrDefault(piece.matching().set(), 0L)
                    && on.isPresent()
                    && !matches(piece.matching().bond(), source.reel(), on.get())) {
                return Optional.of(new Fault(
                        Check.BEGUN_SET,
                        piece.id(),
                        "off " + reel + " it would not match " + mate.id() + ", which the ledger has as cut off "
                                + source.reel().id() + ", "
                                + Facts.lot(reels.getOrDefault(source.reel().id(), source.reel()))));
            }
        }
        return Optional.empty();
    }

    private boolean matches(Bond bond, Reel was, Reel is) {
        boolean sameReel = received(was.id()).equals(received(is.id()));
        String lot = reels.getOrDefault(was.id(), was).lot();
        boolean sameLot = bond == Bond.ONE_LOT && !lot.isEmpty() && lot.equals(is.lot());
        return was.rope().equals(is.rope()) && (sameReel || sameLot);
    }

    private String received(String reel) {
        String parent = parents.get(reel);
        return parent == null || parent.equals(reel) ? reel : received(parent);
    }
}
