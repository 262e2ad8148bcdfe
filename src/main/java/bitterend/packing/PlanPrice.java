package bitterend.packing;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.stock.Reel;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** The true price of a whole packing: every draw, and what holds across reels. */
public final class PlanPrice {
    private final PackingProblem problem;
    private final Urgency urgency;
    private final Map<String, Reel> reels = new HashMap<>();
    private final Map<String, DrawPrice> draws = new HashMap<>();

    public PlanPrice(PackingProblem problem) {
        this.problem = problem;
        urgency = new Urgency(problem);
        problem.reels().forEach(reel -> reels.put(reel.id(), reel));
    }

    /** All draws, split orders and moved pieces. */
    public Cost of(Packing packing) {
        Map<String, RunLoad[]> loads = loads(packing);
        Cost sum = acrossReels(packing);
        for (Map.Entry<String, RunLoad[]> entry : loads.entrySet()) {
            sum = sum.plus(draw(entry.getKey()).of(entry.getValue()));
        }
        return sum;
    }

    /** The work that a packing leaves undone. */
    public Undone undone(Packing packing) {
        Undone undone = Undone.NONE;
        for (Piece piece : problem.pieces()) {
            if (!packing.places().containsKey(piece.id())) {
                undone = undone.plus(urgency.of(piece));
            }
        }
        return undone;
    }

    /** Whether one packing is better than another: less work undone, or as little for less money. */
    public boolean isBetter(Packing one, Packing other) {
        int work = undone(one).compareTo(undone(other));
        return work != 0 ? work < 0 : of(one).compareTo(of(other)) < 0;
    }

    /** What an order takes of one rope. */
    private record Share(String order, String rope) {}

    /** The ropes of which an order takes more than one lot. */
    public Set<String> splitRopes(Packing packing) {
        Set<String> ropes = new HashSet<>();
        lots(packing).forEach((share, lots) -> {
            if (lots.size() > 1) {
                ropes.add(share.rope());
            }
        });
        return ropes;
    }

    /** The lots that each order takes of each rope. */
    private Map<Share, Set<String>> lots(Packing packing) {
        Map<Share, Set<String>> lots = new HashMap<>();
        for (Piece piece : problem.pieces()) {
            RunId place = packing.places().get(piece.id());
            if (place != null) {
                Reel reel = reel(place.reel());
                lots.computeIfAbsent(new Share(piece.order(), reel.rope()), key -> new HashSet<>())
                        .add(lotOf(reel));
            }
        }
        return lots;
    }

    /** Split orders and moved pieces. */
    public Cost acrossReels(Packing packing) {
        long moved = problem.earlier().entrySet().stream()
                .filter(before -> packing.placeOf(before.getKey())
                        .filter(place -> !place.reel().equals(before.getValue()))
                        .isPresent())
                .count();
        long split = lots(packing).values().stream()
                .mapToLong(set -> set.size() - 1L)
                .sum();
        return problem.prices()
                .splitOrder()
                .times(split)
                .plus(problem.prices().movedPiece().times(moved));
    }

    /** The lot of a reel; a reel of unknown lot is a lot of its own. */
    public static String lotOf(Reel reel) {
        return reel.lot().isEmpty() ? "reel " + reel.id() : "lot " + reel.lot();
    }

    /**
     * Where a matched set lies together: pieces on reels of the same holder do.
     *
     * @return the reel for a set that comes off one reel, else the lot of one rope
     */
    public static String holderOf(Piece.Bond bond, Reel reel) {
        return bond == Piece.Bond.ONE_REEL ? reel.id() : reel.rope() + ", " + lotOf(reel);
    }

    /** The load of every run of every reel that is cut. */
    public Map<String, RunLoad[]> loads(Packing packing) {
        Map<String, RunLoad[]> loads = new HashMap<>();
        for (Piece piece : problem.pieces()) {
            RunId place = packing.places().get(piece.id());
            if (place != null) {
                RunLoad[] load = loads.computeIfAbsent(place.reel(), this::empty);
                load[place.run() - 1] = load[place.run() - 1].plus(
                        piece.lengthOn(reel(place.reel()).rope()).orElseThrow());
            }
        }
        return loads;
    }

    /** The price list of one reel. */
    public DrawPrice draw(String reel) {
        return draws.computeIfAbsent(reel, id -> new DrawPrice(problem, reel(id)));
    }

    private RunLoad[] empty(String reel) {
        RunLoad[] load = new RunLoad[draw(reel).runs().size()];
        java.util.Arrays.fill(load, RunLoad.NONE);
        return load;
    }

    private Reel reel(String id) {
        Reel reel = reels.get(id);
        if (reel == null) {
            throw new IllegalArgumentException("no reel " + id);
        }
        return reel;
    }
}
