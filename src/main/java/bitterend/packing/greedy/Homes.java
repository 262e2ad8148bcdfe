package bitterend.packing.greedy;

import bitterend.demand.Piece;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.PlanPrice;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The runs that may take a piece by the rules of its own; pieces that are alike are asked about once. */
final class Homes {
    private final Eligibility rules;
    private final List<Slot> slots = new ArrayList<>();
    private final Map<String, String> pins;
    private final Map<Kind, List<Slot>> known = new HashMap<>();

    /** All that decides which reels a piece may come off. */
    private record Kind(
            List<Piece.RopeChoice> choices, String certificate, boolean ownRope, String order, String pinnedTo) {}

    Homes(PackingProblem problem, PlanPrice prices) {
        rules = new Eligibility(problem);
        pins = problem.pins().stream().collect(Collectors.toMap(Pin::piece, Pin::reel, (a, b) -> a));
        for (Reel reel : problem.reels()) {
            for (Run run : prices.draw(reel.id()).runs()) {
                slots.add(new Slot(reel, run.index() - 1, run.length()));
            }
        }
        slots.sort(Slot.BY_ID);
    }

    /** Every run of every reel. */
    List<Slot> all() {
        return slots;
    }

    boolean isPinned(Piece piece) {
        return pins.containsKey(piece.id());
    }

    /** Whether a run would take the piece if nothing else were cut there. */
    boolean isHome(Piece piece, Slot slot) {
        return Collections.binarySearch(of(piece), slot, Slot.BY_ID) >= 0;
    }

    /** The runs that would take the piece if nothing else were cut there, by reel and run. */
    List<Slot> of(Piece piece) {
        Kind kind = new Kind(
                piece.choices(),
                piece.certificate(),
                piece.ownRope(),
                piece.order(),
                pins.getOrDefault(piece.id(), ""));
        return known.computeIfAbsent(kind, key -> slots.stream()
                .filter(slot -> rules.against(piece, slot.reel()).isEmpty())
                .filter(slot -> !Bench.cutOn(piece, slot).isLongerThan(slot.length()))
                .toList());
    }
}
