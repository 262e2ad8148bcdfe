package bitterend.packing.loads;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.DrawPrice;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunLoad;
import bitterend.packing.Urgency;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Every plan of a small day, one by one: the least work undone, and the least it costs to leave just that. */
final class BruteForce {
    private final PackingProblem problem;
    private final List<Piece> pieces;
    private final List<Place> places = new ArrayList<>();
    private final List<List<Place>> choices = new ArrayList<>();
    private final Map<Reel, RunLoad[]> loads = new HashMap<>();
    private final Map<Reel, DrawPrice> prices = new HashMap<>();
    private final Place[] at;
    private long[] least;
    private long cost = Long.MAX_VALUE;

    private record Place(Reel reel, int run) {}

    BruteForce(PackingProblem problem) {
        this.problem = problem;
        pieces = problem.pieces();
        at = new Place[pieces.size()];
        Eligibility rules = new Eligibility(problem);
        for (Reel reel : problem.reels()) {
            prices.put(reel, new DrawPrice(problem, reel));
            RunLoad[] none = new RunLoad[reel.runs().size()];
            Arrays.fill(none, RunLoad.NONE);
            loads.put(reel, none);
            for (int run = 0; run < none.length; run++) {
                places.add(new Place(reel, run));
            }
        }
        for (Piece piece : pieces) {
            choices.add(places.stream()
                    .filter(place -> rules.against(piece, place.reel()).isEmpty())
                    .toList());
        }
        least = undone(problem, List.of());
        place(0);
    }

    static long[] undone(PackingProblem problem, Collection<String> planned) {
        long[] undone = new long[LoadModel.CLASSES];
        Urgency urgency = new Urgency(problem);
        for (Piece piece : problem.pieces()) {
            if (!planned.contains(piece.id())) {
                undone[urgency.classOf(piece) - 1] += Urgency.weight(piece);
            }
        }
        return undone;
    }

    long[] least() {
        return least;
    }

    long cost() {
        return cost;
    }

    private void place(int p) {
        if (p == pieces.size()) {
            weigh();
            return;
        }
        Piece piece = pieces.get(p);
        for (Place place : choices.get(p)) {
            if (joins(piece, p, place)) {
                RunLoad[] there = loads.get(place.reel());
                RunLoad before = there[place.run()];
                Length cut = piece.lengthOn(place.reel().rope()).orElseThrow();
                DrawPrice price = prices.get(place.reel());
                RunLoad after = before.plus(cut);
                if (after.fits(price.runs().get(place.run()).length(), price.loss())) {
                    there[place.run()] = after;
                    at[p] = place;
                    place(p + 1);
                    there[place.run()] = before;
                }
            }
        }
        at[p] = null;
        if (joins(piece, p, null)) {
            place(p + 1);
        }
    }

    /** Whether the pieces of its set so far lie together with it. */
    private boolean joins(Piece piece, int p, Place place) {
        if (!piece.isMatched()) {
            return true;
        }
        for (int q = 0; q < p; q++) {
            if (pieces.get(q).matching().set().equals(piece.matching().set())) {
                if (place == null || at[q] == null) {
                    return place == null && at[q] == null;
                }
                return PlanPrice.holderOf(piece.matching().bond(), place.reel())
                        .equals(PlanPrice.holderOf(piece.matching().bond(), at[q].reel()));
            }
        }
        return true;
    }

    private void weigh() {
        List<String> planned = new ArrayList<>();
        Set<String> lots = new HashSet<>();
        Set<String> ropes = new HashSet<>();
        for (int p = 0; p < at.length; p++) {
            if (at[p] != null) {
                Piece piece = pieces.get(p);
                planned.add(piece.id());
                String rope = piece.order() + "|" + at[p].reel().rope();
                ropes.add(rope);
                lots.add(rope + "|" + PlanPrice.lotOf(at[p].reel()));
            }
        }
        long[] undone = undone(problem, planned);
        int order = Arrays.compare(undone, least);
        if (order > 0) {
            return;
        }
        long sum =
                problem.prices().splitOrder().times(lots.size() - ropes.size()).millis();
        for (Reel reel : problem.reels()) {
            sum += prices.get(reel).of(loads.get(reel)).millis();
        }
        if (order < 0 || sum < cost) {
            least = undone;
            cost = sum;
        }
    }
}
