package bitterend.packing.check;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.stock.Held;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The checker's own reading of what is held: a reel keeps what is held of it on the day, as far as it reaches, less the
 * pieces that are cut of it for those it is held for, each with its cut loss.
 */
final class HeldBack {
    private final PackingProblem problem;
    private final Map<String, List<Pin>> served = new HashMap<>();
    private final Map<String, Piece> pieces = new HashMap<>();

    HeldBack(PackingProblem problem) {
        this.problem = problem;
        problem.pieces().forEach(piece -> pieces.put(piece.id(), piece));
        for (Pin pin : problem.pins()) {
            if (!pin.heldFor().isEmpty()) {
                served.computeIfAbsent(pin.reel(), any -> new ArrayList<>()).add(pin);
            }
        }
    }

    /** What nobody may cut of a reel. */
    Length on(Reel reel) {
        long reaches = reel.length().mm()
                - reel.contents().uncertainty().mm()
                - reel.contents().innerWraps().mm()
                - reel.contents().leadTrim().mm();
        long kept = 0;
        Map<String, Long> used = new HashMap<>();
        for (Held held : reel.custody().held()) {
            if (!problem.day().isAfter(held.until())) {
                long there = Math.max(0, Math.min(held.length().mm(), reaches));
                reaches -= there;
                String whom = held.kind() + held.name();
                long left = cutFor(reel, held) - used.getOrDefault(whom, 0L);
                long taken = Math.min(there, Math.max(0, left));
                used.merge(whom, taken, Long::sum);
                kept += there - taken;
            }
        }
        return new Length(kept);
    }

    private long cutFor(Reel reel, Held held) {
        String whom = (held.kind() == Held.For.ORDER ? "order " : "customer ") + held.name();
        long loss = problem.ropeOn(reel).cutting().loss().mm();
        return served.getOrDefault(reel.id(), List.of()).stream()
                .filter(pin -> pin.heldFor().equals(whom))
                .map(pin -> Optional.ofNullable(pieces.get(pin.piece())).flatMap(piece -> piece.lengthOn(reel.rope())))
                .flatMap(Optional::stream)
                .mapToLong(cut -> cut.mm() + loss)
                .sum();
    }

    /** What the pieces take that are to be cut of what is held of a reel and are not among these. */
    Length waitingFor(Reel reel, Set<String> cut) {
        long loss = problem.ropeOn(reel).cutting().loss().mm();
        return new Length(served.getOrDefault(reel.id(), List.of()).stream()
                .filter(pin -> !cut.contains(pin.piece()))
                .map(pin -> Optional.ofNullable(pieces.get(pin.piece())).flatMap(piece -> piece.lengthOn(reel.rope())))
                .flatMap(Optional::stream)
                .mapToLong(length -> length.mm() + loss)
                .sum());
    }

    /** Why a piece may not be cut of what is held: it is held for another; empty where it may. */
    Optional<String> wronglyServed(Piece piece) {
        for (Map.Entry<String, List<Pin>> reel : served.entrySet()) {
            for (Pin pin : reel.getValue()) {
                if (pin.piece().equals(piece.id()) && !isHeld(reel.getKey(), pin, piece)) {
                    return Optional.of("nothing of reel " + reel.getKey() + " is held for it");
                }
            }
        }
        return Optional.empty();
    }

    private boolean isHeld(String reel, Pin pin, Piece piece) {
        return problem.reels().stream()
                .filter(each -> each.id().equals(reel))
                .flatMap(each -> each.custody().held().stream())
                .filter(held -> !held.until().isBefore(problem.day()))
                .anyMatch(held -> switch (held.kind()) {
                    case ORDER -> pin.heldFor().equals("order " + held.name())
                            && piece.source().order().equals(held.name());
                    case CUSTOMER -> pin.heldFor().equals("customer " + held.name())
                            && held.name()
                                    .equals(problem.customers()
                                            .get(piece.source().order()));
                });
    }
}
