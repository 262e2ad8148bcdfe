package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.DrawPrice;
import bitterend.packing.Eligibility;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import bitterend.packing.Urgency;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds room for single pieces that an engine left unplanned though a run would still take them. */
final class Leftovers {
    private final PackingProblem problem;
    private final PlanPrice prices;
    private final Eligibility rules;
    private final Urgency urgency;

    Leftovers(PackingProblem problem, PlanPrice prices) {
        this.problem = problem;
        this.prices = prices;
        rules = new Eligibility(problem);
        urgency = new Urgency(problem);
    }

    /** The packing with every single piece placed that still finds room, the urgent first, each where it costs least. */
    Packing placed(Packing packing) {
        List<Piece> open = problem.pieces().stream()
                .filter(piece ->
                        !piece.isMatched() && packing.placeOf(piece.id()).isEmpty())
                .sorted(Comparator.comparing((Piece piece) -> urgency.of(piece))
                        .reversed()
                        .thenComparing(Piece::id))
                .toList();
        if (open.isEmpty()) {
            return packing;
        }
        Map<String, RunId> places = new HashMap<>(packing.places());
        Map<String, RunLoad[]> loads = new HashMap<>(prices.loads(packing));
        for (Piece piece : open) {
            cheapest(loads, piece).ifPresent(room -> {
                places.put(piece.id(), room.at());
                RunLoad[] load = loadsOf(loads, room.at().reel());
                load[room.at().run() - 1] = load[room.at().run() - 1].plus(room.cut());
                loads.put(room.at().reel(), load);
            });
        }
        return new Packing(places);
    }

    /** A run that takes a piece, its cut length there, and what it adds to the price of the draw. */
    private record Room(RunId at, Length cut, Cost adds) {}

    private Optional<Room> cheapest(Map<String, RunLoad[]> loads, Piece piece) {
        List<Room> rooms = new ArrayList<>();
        for (Reel reel : problem.reels()) {
            if (rules.against(piece, reel).isEmpty()) {
                Length cut = piece.lengthOn(reel.rope()).orElseThrow();
                addRooms(rooms, reel.id(), cut, loadsOf(loads, reel.id()));
            }
        }
        return rooms.stream().min(Comparator.comparing(Room::adds).thenComparing(Room::at));
    }

    private void addRooms(List<Room> rooms, String reel, Length cut, RunLoad[] load) {
        DrawPrice price = prices.draw(reel);
        Cost was = price.of(load);
        for (int run = 0; run < load.length; run++) {
            RunLoad before = load[run];
            load[run] = before.plus(cut);
            if (load[run].fits(price.runs().get(run).length(), price.loss())) {
                rooms.add(new Room(new RunId(reel, run + 1), cut, price.of(load).minus(was)));
            }
            load[run] = before;
        }
    }

    /** The loads of a reel, a copy. */
    private RunLoad[] loadsOf(Map<String, RunLoad[]> loads, String reel) {
        RunLoad[] known = loads.get(reel);
        return known == null ? empty(prices.draw(reel).runs().size()) : known.clone();
    }

    private static RunLoad[] empty(int runs) {
        RunLoad[] empty = new RunLoad[runs];
        Arrays.fill(empty, RunLoad.NONE);
        return empty;
    }
}
