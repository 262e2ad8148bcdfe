package bitterend.day;

import bitterend.demand.Piece;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.ReelDraw;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The day's question once some of it is cut: pieces that are cut are left out, what is left of a matched set is bound to
 * what its cut pieces came off, and an earlier plan is kept where it may be.
 */
public final class OpenWork {
    private final PackingProblem day;
    private final RackToday rack;
    private final Set<String> reels = new HashSet<>();

    /** Looks at a day, and at what its ledger says; {@link RackToday#NONE} for a shop that has none. */
    public OpenWork(PackingProblem day, RackToday rack) {
        this.day = day;
        this.rack = rack;
        day.reels().forEach(reel -> reels.add(reel.id()));
    }

    /** What is still to be cut. */
    public PackingProblem fresh() {
        return problem(Map.of());
    }

    /** What is still to be cut, every piece off the reel of an earlier plan where it may be. */
    public PackingProblem after(CutPlan earlier) {
        Map<String, String> places = new HashMap<>();
        for (ReelDraw draw : earlier.draws()) {
            if (reels.contains(draw.reel())) {
                draw.cuts().forEach(place -> places.put(place.piece(), draw.reel()));
            }
        }
        return problem(places);
    }

    private PackingProblem problem(Map<String, String> earlier) {
        BegunSets sets = new BegunSets(day.pieces(), rack);
        List<Piece> open = day.pieces().stream()
                .filter(piece -> !rack.cut().containsKey(piece.id()))
                .map(sets::bound)
                .toList();
        Set<String> ids = new HashSet<>();
        open.forEach(piece -> ids.add(piece.id()));
        return day.withEarlier(earlier).about(open).withPins(pins(ids));
    }

    private List<Pin> pins(Set<String> open) {
        List<Pin> pins = new ArrayList<>();
        Set<String> pinned = new HashSet<>();
        for (Pin pin : day.pins()) {
            if (open.contains(pin.piece()) && reels.contains(pin.reel()) && pinned.add(pin.piece())) {
                pins.add(pin);
            }
        }
        return pins;
    }
}
