package bitterend.packing.greedy;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.measure.Cost;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Places a matched set whole or not at all: on the one lot, or the one reel, where that is cheapest. */
final class SetFitting {
    private final Bench bench;
    private final Homes homes;
    private final Map<Kind, List<List<Slot>>> holders = new HashMap<>();

    /** Sets whose longest pieces are alike may come off the same lots (reels). */
    private record Kind(int ofLongest, Bond bond) {}

    SetFitting(Bench bench, Homes homes) {
        this.bench = bench;
        this.homes = homes;
    }

    /** Tries every lot (reel) and keeps the cheapest; leaves the bench as it was when none holds the set. */
    boolean place(List<Piece> set) {
        List<Piece> longestFirst = set.stream()
                .sorted(Comparator.comparing(Piece::cut).reversed().thenComparing(Piece::id))
                .toList();
        List<Slot> best = List.of();
        Cost bestPrice = Cost.ZERO;
        Piece longest = longestFirst.get(0);
        Kind kind = new Kind(homes.open(longest).kind(), longest.matching().bond());
        for (List<Slot> holder : holders.computeIfAbsent(kind, any -> holders(longest))) {
            Optional<Attempt> attempt = attempt(longestFirst, holder);
            if (attempt.isPresent() && (best.isEmpty() || attempt.get().price().compareTo(bestPrice) < 0)) {
                best = attempt.get().slots();
                bestPrice = attempt.get().price();
            }
        }
        for (int i = 0; i < best.size(); i++) {
            bench.place(longestFirst.get(i), best.get(i));
        }
        return !best.isEmpty();
    }

    private record Attempt(List<Slot> slots, Cost price) {}

    private Optional<Attempt> attempt(List<Piece> pieces, List<Slot> holder) {
        List<Slot> taken = new ArrayList<>();
        Cost price = Cost.ZERO;
        for (Piece piece : pieces) {
            Optional<Slot> slot = bench.cheapest(
                    piece,
                    holder.stream().filter(home -> homes.isHome(piece, home)).toList());
            if (slot.isEmpty()) {
                break;
            }
            price = price.plus(bench.priceOf(piece, slot.get()));
            bench.place(piece, slot.get());
            taken.add(slot.get());
        }
        for (int i = 0; i < taken.size(); i++) {
            bench.remove(pieces.get(i), taken.get(i));
        }
        return taken.size() == pieces.size() ? Optional.of(new Attempt(taken, price)) : Optional.empty();
    }

    private List<List<Slot>> holders(Piece first) {
        Map<String, List<Slot>> byHolder = new TreeMap<>();
        for (Slot slot : homes.all()) {
            if (first.isAllowedOn(slot.reel().rope())) {
                String holder = slot.holderOf(first.matching().bond());
                byHolder.computeIfAbsent(holder, key -> new ArrayList<>()).add(slot);
            }
        }
        return List.copyOf(byHolder.values());
    }
}
