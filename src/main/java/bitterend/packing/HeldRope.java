package bitterend.packing;

import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.stock.Held;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How much of each reel is left alone since it is held: what is held at its inner end on the day, less what is cut of it for
 * those it is held for. Where a reel has less than is held of it, the first in its list comes first.
 */
final class HeldRope {
    private final LocalDate day;
    private final Map<String, Map<String, Length>> served = new HashMap<>();

    /** @param ropes the ropes on the reels, by id */
    HeldRope(LocalDate day, Map<String, Rope> ropes, List<Piece> pieces, List<Reel> reels, List<Pin> pins) {
        this.day = day;
        Map<String, String> ropeOn = new HashMap<>();
        reels.forEach(reel -> ropeOn.put(reel.id(), reel.rope()));
        Map<String, Piece> byId = new HashMap<>();
        pieces.forEach(piece -> byId.put(piece.id(), piece));
        for (Pin pin : pins) {
            Piece piece = byId.get(pin.piece());
            Rope rope = ropes.get(ropeOn.getOrDefault(pin.reel(), ""));
            if (pin.isOfHeldRope() && piece != null && rope != null) {
                piece.lengthOn(rope.id()).ifPresent(cut -> served.computeIfAbsent(pin.reel(), any -> new TreeMap<>())
                        .merge(pin.heldFor(), cut.plus(rope.cutting().loss()), Length::plus));
            }
        }
    }

    /** The reel with what of it is left alone. */
    Reel on(Reel reel) {
        if (reel.custody().held().isEmpty()) {
            return reel;
        }
        Map<String, Length> cut = new HashMap<>(served.getOrDefault(reel.id(), Map.of()));
        Length room = Length.max(
                Length.ZERO, reel.contents().certainEnd().minus(reel.contents().leadTrim()));
        Length alone = Length.ZERO;
        for (Held held : reel.custody().heldOn(day)) {
            Length there = Length.min(held.length(), room);
            room = room.minus(there);
            Length taken = Length.min(there, cut.getOrDefault(held.whom(), Length.ZERO));
            cut.computeIfPresent(held.whom(), (whom, left) -> left.minus(taken));
            alone = alone.plus(there.minus(taken));
        }
        return reel.holding(alone);
    }
}
