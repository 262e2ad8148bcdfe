package bitterend.packing.order;

import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.Eligibility;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunLoad;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** On how many other runs a piece would still fit beside everything that is planned there. */
final class OtherHomes {
    private final Eligibility rules;
    private final Map<String, String> pins = new HashMap<>();
    private final List<Room> rooms = new ArrayList<>();
    private final Set<String> ordersWithReels = new HashSet<>();
    private final Map<Kind, Long> known = new HashMap<>();

    private record Room(Reel reel, Run run, RunLoad load, Length loss) {
        boolean takes(Length cut) {
            return load.plus(cut).fits(run.length(), loss);
        }
    }

    private record Kind(
            List<Piece.RopeChoice> choices,
            String certificate,
            boolean ownRope,
            String order,
            List<CutMate> begun,
            String pin,
            String reel) {}

    OtherHomes(PackingProblem problem, Packing packing, PlanPrice prices) {
        rules = new Eligibility(problem);
        problem.pins().forEach(pin -> pins.put(pin.piece(), pin.reel()));
        Map<String, RunLoad[]> loads = prices.loads(packing);
        for (Reel reel : problem.reels()) {
            ordersWithReels.add(reel.custody().order());
            RunLoad[] load = loads.get(reel.id());
            for (Run run : prices.draw(reel.id()).runs()) {
                RunLoad there = load == null ? RunLoad.NONE : load[run.index() - 1];
                rooms.add(new Room(reel, run, there, prices.draw(reel.id()).loss()));
            }
        }
    }

    /** Runs on other reels than its own that would take the piece as well. */
    long of(Piece piece, String ownReel) {
        Kind kind = new Kind(
                piece.choices(),
                piece.certificate(),
                piece.ownRope(),
                ordersWithReels.contains(piece.order()) ? piece.order() : "",
                piece.matching().begun(),
                pins.getOrDefault(piece.id(), ""),
                ownReel);
        return known.computeIfAbsent(kind, key -> count(piece, ownReel));
    }

    private long count(Piece piece, String ownReel) {
        return rooms.stream()
                .filter(room -> !room.reel().id().equals(ownReel))
                .filter(room -> rules.against(piece, room.reel()).isEmpty())
                .filter(room -> room.takes(piece.lengthOn(room.reel().rope()).orElseThrow()))
                .count();
    }
}
