package bitterend.packing.order;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.Eligibility;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceKind;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunLoad;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** On how many other runs a piece would still fit beside everything that is planned there. */
final class OtherHomes {
    private final Eligibility rules;
    private final Map<String, List<Room>> rooms = new HashMap<>();
    private final Map<PieceKind, Count> known = new HashMap<>();

    private record Room(Reel reel, Run run, RunLoad load, Length loss) {
        boolean takes(Length cut) {
            return load.plus(cut).fits(run.length(), loss);
        }
    }

    /** Runs that would take one more piece, on all reels and by reel. */
    private record Count(long all, Map<String, Long> byReel) {}

    OtherHomes(PackingProblem problem, Packing packing, PlanPrice prices) {
        rules = new Eligibility(problem);
        Map<String, RunLoad[]> loads = prices.loads(packing);
        for (Reel reel : problem.reels()) {
            RunLoad[] load = loads.get(reel.id());
            for (Run run : prices.draw(reel.id()).runs()) {
                RunLoad there = load == null ? RunLoad.NONE : load[run.index() - 1];
                rooms.computeIfAbsent(reel.rope(), rope -> new ArrayList<>())
                        .add(new Room(reel, run, there, prices.draw(reel.id()).loss()));
            }
        }
    }

    /** Runs on other reels than its own that would take the piece as well. */
    long of(Piece piece, String ownReel) {
        Count count = known.computeIfAbsent(rules.kindOf(piece), key -> count(piece));
        return count.all() - count.byReel().getOrDefault(ownReel, 0L);
    }

    private Count count(Piece piece) {
        Map<String, Long> byReel = piece.choices().stream()
                .flatMap(choice ->
                        rooms.getOrDefault(choice.rope(), List.of()).stream().filter(room -> room.takes(choice.cut())))
                .filter(room -> rules.allows(piece, room.reel()))
                .collect(Collectors.groupingBy(room -> room.reel().id(), Collectors.counting()));
        return new Count(byReel.values().stream().mapToLong(Long::longValue).sum(), byReel);
    }
}
