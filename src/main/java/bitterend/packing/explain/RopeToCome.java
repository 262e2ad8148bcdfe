package bitterend.packing.explain;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Arrival;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.RunId;
import bitterend.packing.bench.RackState;
import bitterend.packing.bench.Workbench;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The reels on order that would take work if it could wait for them, beside what the plan puts on them. */
final class RopeToCome {
    private final PackingProblem problem;
    private final Workbench bench;
    private final RackState rack;
    private final Eligibility rules;

    RopeToCome(Workbench bench, RackState rack) {
        problem = bench.problem();
        this.bench = bench;
        this.rack = rack;
        rules = new Eligibility(problem);
    }

    /** A reason for each order of reels of which one reel would take all of these pieces; they are named as {@code work}. */
    List<Reason> takes(String work, List<Piece> longestFirst) {
        List<Reason> reasons = new ArrayList<>();
        Set<String> named = new HashSet<>();
        for (Reel reel : problem.reels()) {
            Arrival arrival = problem.arrivals().get(reel.id());
            if (arrival != null
                    && !named.contains(arrival.order())
                    && longestFirst.stream().allMatch(piece -> isOnlyLate(piece, reel))
                    && new SetRoom(bench, rack, List.of(reel)).takes(longestFirst)) {
                named.add(arrival.order());
                reasons.add(new Reason(Rule.COMES_IN_TIME, told(work, reel, arrival)));
            }
        }
        return reasons;
    }

    /** Whether nothing but its day keeps a piece off a reel. */
    private boolean isOnlyLate(Piece piece, Reel reel) {
        return rules.all(piece, reel).stream().allMatch(reason -> reason.rule() == Rule.COMES_IN_TIME);
    }

    private Sentence told(String work, Reel reel, Arrival arrival) {
        Sentence told = Sentence.of("order " + arrival.order() + " would do for " + work + ": ")
                .and(reel.contents().written())
                .and(" of " + reel.rope());
        Length whole = reel.runs().get(0).length();
        Length free = new Length(rack.free(bench.numberOf(new RunId(reel.id(), 1))));
        Sentence left = free.isShorterThan(whole)
                ? told.and(", of which the plan leaves ").and(free)
                : told;
        return left.and(", expected " + arrival.expected()
                + (arrival.from().equals(arrival.expected()) ? "" : ", counted on from " + arrival.from()));
    }
}
