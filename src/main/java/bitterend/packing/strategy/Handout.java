package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.packing.Packing;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.packing.Undone;
import bitterend.packing.patterns.Draw;
import bitterend.packing.patterns.PatternPlan;
import bitterend.packing.patterns.Take;
import bitterend.stock.Reel;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Hands the places of a pattern plan out to pieces. Places of one item are the same to the engine; here the matched sets
 * choose first, the most urgent before the rest, each the lot or reel that holds it with the fewest places to spare, then the orders, lot by lot.
 */
final class Handout {
    private final PatternBridge bridge;
    private final List<List<Place>> open = new ArrayList<>();
    private final Map<String, RunId> places;

    private record Place(Reel reel, RunId run) {}

    Handout(PatternBridge bridge, PatternPlan plan) {
        this.bridge = bridge;
        places = new TreeMap<>(bridge.fixed().places());
        bridge.kinds().forEach(kind -> open.add(new ArrayList<>()));
        List<ArrayDeque<Reel>> reels = new ArrayList<>();
        bridge.reels().forEach(kind -> reels.add(new ArrayDeque<>(kind)));
        for (Draw draw : plan.draws()) {
            for (int i = 0; i < draw.reels(); i++) {
                open(reels.get(draw.type()).removeFirst(), draw.takes());
            }
        }
        open.forEach(kind -> kind.sort(Comparator.comparing((Place place) -> PlanPrice.lotOf(place.reel()))
                .thenComparing(Place::run)));
    }

    /** The packing; a matched set that finds no one lot or reel is left out, and its places stay free. */
    Packing packing() {
        Map<String, List<Integer>> sets = new TreeMap<>();
        Map<String, List<Piece>> members = new TreeMap<>();
        for (int k = 0; k < bridge.kinds().size(); k++) {
            for (Piece piece : bridge.kinds().get(k)) {
                if (piece.isMatched()) {
                    sets.computeIfAbsent(piece.matching().set(), name -> new ArrayList<>())
                            .add(k);
                    members.computeIfAbsent(piece.matching().set(), name -> new ArrayList<>())
                            .add(piece);
                }
            }
        }
        List<String> urgentFirst = sets.keySet().stream()
                .sorted(Comparator.comparing((String name) -> undone(members.getOrDefault(name, List.of())))
                        .reversed()
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
        for (String name : urgentFirst) {
            placeSet(members.getOrDefault(name, List.of()), sets.getOrDefault(name, List.of()));
        }
        placeSingles();
        return new Packing(places);
    }

    private Undone undone(List<Piece> pieces) {
        return pieces.stream().map(bridge::undoneOf).reduce(Undone.NONE, Undone::plus);
    }

    private void open(Reel reel, List<Take> takes) {
        for (Take take : takes) {
            for (int i = 0; i < take.count(); i++) {
                open.get(take.item()).add(new Place(reel, new RunId(reel.id(), take.run() + 1)));
            }
        }
    }

    private void placeSet(List<Piece> pieces, List<Integer> kinds) {
        Piece.Bond bond = pieces.get(0).matching().bond();
        Map<String, Map<Integer, Integer>> offered = new TreeMap<>();
        for (int kind : kinds.stream().distinct().toList()) {
            for (Place place : open.get(kind)) {
                offered.computeIfAbsent(PlanPrice.holderOf(bond, place.reel()), name -> new HashMap<>())
                        .merge(kind, 1, Integer::sum);
            }
        }
        Map<Integer, Integer> wanted = new HashMap<>();
        kinds.forEach(kind -> wanted.merge(kind, 1, Integer::sum));
        Optional<String> holder = offered.entrySet().stream()
                .filter(entry -> wanted.entrySet().stream()
                        .allMatch(want -> entry.getValue().getOrDefault(want.getKey(), 0) >= want.getValue()))
                .min(Comparator.comparingInt(
                                (Map.Entry<String, Map<Integer, Integer>> entry) -> entry.getValue().values().stream()
                                        .mapToInt(Integer::intValue)
                                        .sum())
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey);
        holder.ifPresent(name -> take(pieces, kinds, name));
    }

    private void take(List<Piece> pieces, List<Integer> kinds, String holder) {
        Piece.Bond bond = pieces.get(0).matching().bond();
        for (int i = 0; i < pieces.size(); i++) {
            List<Place> of = open.get(kinds.get(i));
            int at = 0;
            while (!PlanPrice.holderOf(bond, of.get(at).reel()).equals(holder)) {
                at++;
            }
            places.put(pieces.get(i).id(), of.remove(at).run());
        }
    }

    /** Kind by kind, the orders with most pieces first, each on the lots it uses already, then where it fits whole. */
    private void placeSingles() {
        Map<String, Map<String, Integer>> lotsOfOrders = new HashMap<>();
        for (int k = 0; k < open.size(); k++) {
            Map<String, ArrayDeque<Place>> byLot = new TreeMap<>();
            open.get(k).forEach(place -> byLot.computeIfAbsent(lot(place), lot -> new ArrayDeque<>())
                    .add(place));
            Map<String, List<Piece>> byOrder = new TreeMap<>();
            bridge.kinds().get(k).stream().filter(piece -> !piece.isMatched()).forEach(piece -> byOrder.computeIfAbsent(
                            piece.order(), order -> new ArrayList<>())
                    .add(piece));
            byOrder.values().stream()
                    .sorted(Comparator.comparingInt(pieces -> -pieces.size()))
                    .forEach(pieces -> placeOrder(
                            new ArrayDeque<>(pieces),
                            byLot,
                            lotsOfOrders.computeIfAbsent(pieces.get(0).order(), order -> new HashMap<>())));
        }
    }

    private void placeOrder(ArrayDeque<Piece> pieces, Map<String, ArrayDeque<Place>> byLot, Map<String, Integer> used) {
        while (!pieces.isEmpty() && !byLot.isEmpty()) {
            String lot = bestLot(pieces.size(), byLot, used);
            ArrayDeque<Place> offered = byLot.getOrDefault(lot, new ArrayDeque<>());
            while (!pieces.isEmpty() && !offered.isEmpty()) {
                places.put(pieces.removeFirst().id(), offered.removeFirst().run());
                used.merge(lot, 1, Integer::sum);
            }
            byLot.values().removeIf(ArrayDeque::isEmpty);
        }
    }

    /** The lot that the order uses most; else the one that holds the pieces with fewest places to spare; else the largest. */
    private static String bestLot(int wanted, Map<String, ArrayDeque<Place>> byLot, Map<String, Integer> used) {
        return byLot.entrySet().stream()
                .min(Comparator.comparingInt(
                                (Map.Entry<String, ArrayDeque<Place>> lot) -> -used.getOrDefault(lot.getKey(), 0))
                        .thenComparing(lot -> lot.getValue().size() < wanted)
                        .thenComparingInt(lot -> lot.getValue().size() < wanted
                                ? -lot.getValue().size()
                                : lot.getValue().size())
                        .thenComparing(Map.Entry::getKey))
                .orElseThrow()
                .getKey();
    }

    private static String lot(Place place) {
        return PlanPrice.holderOf(Piece.Bond.ONE_LOT, place.reel());
    }
}
