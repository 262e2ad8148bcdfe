package bitterend.day;

import bitterend.demand.Piece;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.ReelDraw;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The day's question once some of it is cut: pieces that are cut are left out, what is left of a matched set stays with
 * the reel or lot it was begun on, and an earlier plan is kept where it may be.
 */
public final class OpenWork {
    private final PackingProblem day;
    private final Map<String, Movement> cut;
    private final Map<String, Reel> reels = new HashMap<>();

    /**
     * Looks at a day.
     *
     * @param cut the movement that cut it, of every piece that is cut
     */
    public OpenWork(PackingProblem day, Map<String, Movement> cut) {
        this.day = day;
        this.cut = cut;
        day.reels().forEach(reel -> reels.put(reel.id(), reel));
    }

    /** What is still to be cut. */
    public PackingProblem fresh() {
        return problem(Map.of());
    }

    /** What is still to be cut, every piece off the reel of an earlier plan where it may be. */
    public PackingProblem after(CutPlan earlier) {
        Map<String, String> places = new HashMap<>();
        for (ReelDraw draw : earlier.draws()) {
            if (reels.containsKey(draw.reel())) {
                draw.cuts().forEach(place -> places.put(place.piece(), draw.reel()));
            }
        }
        return problem(places);
    }

    private PackingProblem problem(Map<String, String> earlier) {
        List<Piece> open = day.pieces().stream()
                .filter(piece -> !cut.containsKey(piece.id()))
                .toList();
        Set<String> ids = new HashSet<>();
        open.forEach(piece -> ids.add(piece.id()));
        Map<String, String> places = new HashMap<>(earlier);
        places.keySet().retainAll(ids);
        return new PackingProblem(
                day.day(),
                day.ropes(),
                open,
                day.reels(),
                day.values(),
                day.prices(),
                pins(open, ids),
                places,
                day.calendar());
    }

    private List<Pin> pins(List<Piece> open, Set<String> ids) {
        List<Pin> pins = new ArrayList<>();
        Set<String> pinned = new HashSet<>();
        for (Pin pin : day.pins()) {
            if (ids.contains(pin.piece()) && reels.containsKey(pin.reel()) && pinned.add(pin.piece())) {
                pins.add(pin);
            }
        }
        for (Piece piece : open) {
            if (piece.isMatched() && !pinned.contains(piece.id())) {
                begunOn(piece).flatMap(this::reelOfThatLot).ifPresent(reel -> pins.add(new Pin(piece.id(), reel)));
            }
        }
        return pins;
    }

    /** The reel that another piece of the set was cut off, as it stood then. */
    private Optional<Reel> begunOn(Piece piece) {
        return day.pieces().stream()
                .filter(other -> other.matching().set().equals(piece.matching().set()))
                .flatMap(other -> Optional.ofNullable(cut.get(other.id())).stream())
                .map(movement -> movement.entry().after())
                .findFirst();
    }

    /** That reel if it is still there, else the longest of the same lot; a set to the reel finds its reel or nothing. */
    private Optional<String> reelOfThatLot(Reel begun) {
        if (reels.containsKey(begun.id())) {
            return Optional.of(begun.id());
        }
        return reels.values().stream()
                .filter(reel -> reel.rope().equals(begun.rope())
                        && !begun.lot().isEmpty()
                        && reel.lot().equals(begun.lot()))
                .max(Comparator.comparing(Reel::length).thenComparing(Reel::id))
                .map(Reel::id);
    }
}
