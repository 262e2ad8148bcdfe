package bitterend.packing.order;

import bitterend.demand.Piece;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.RunId;
import bitterend.packing.Urgency;
import bitterend.packing.WantedRope;
import bitterend.packing.bench.RackState;
import bitterend.packing.bench.Workbench;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Reels that one thing alone keeps from a piece, which a person may end: what to do about them that would help. */
final class BarredReels {
    /** So many are named. */
    static final int NAMED = 3;

    private final PackingProblem problem;
    private final Workbench bench;
    private final RackState rack;
    private final Eligibility rules;
    private final Urgency urgency;

    BarredReels(Workbench bench, RackState rack, Eligibility rules) {
        this.problem = bench.problem();
        this.bench = bench;
        this.rack = rack;
        this.rules = rules;
        urgency = new Urgency(problem);
    }

    /** A reel and the one thing that keeps it from a piece. */
    record Bar(Reel reel, Reason reason) {}

    /** What a person may do about reels that are barred. */
    String settle(Piece piece) {
        String free = settle(toBeGivenFree(piece));
        List<Bar> back = free.isEmpty() ? toBeCalledBack(piece) : List.of();
        return back.isEmpty() ? free : "call back the sheet of " + oneOf(back) + " with plan --withdraw, or ";
    }

    /** The same about these. */
    String settle(List<Bar> bars) {
        List<Bar> kept =
                bars.stream().filter(bar -> bar.reason().rule() != Rule.ISSUED).toList();
        if (!kept.isEmpty()) {
            return "release " + oneOf(kept) + ", or ";
        }
        return bars.isEmpty() ? "" : "post the sheet of " + oneOf(bars) + ", or call it back with plan --withdraw, or ";
    }

    private static String oneOf(List<Bar> bars) {
        String named = bars.stream().limit(NAMED).map(bar -> bar.reel().id()).collect(Collectors.joining(", "));
        String more = bars.size() > NAMED ? " and " + (bars.size() - NAMED) + " more" : "";
        return (bars.size() == 1 ? "" : "one of ") + named + more;
    }

    /**
     * What keeps a reel from a piece that a person may end, and that has room for it, or for all of its set, beside what is
     * planned there.
     */
    List<Bar> toBeGivenFree(Piece piece) {
        return barred(piece, Rule.toGiveFree(), reel -> hasRoom(reel, piece));
    }

    /** Issued reels that are full of work of which some is less urgent. */
    private List<Bar> toBeCalledBack(Piece piece) {
        return barred(piece, Set.of(Rule.ISSUED), reel -> mightGiveWay(reel, piece));
    }

    /** Reels that one of these rules alone keeps from a piece, and that would help it. */
    private List<Bar> barred(Piece piece, Set<Rule> by, Predicate<Reel> helps) {
        List<Bar> bars = new ArrayList<>();
        for (Reel reel : problem.reels()) {
            List<Reason> all = rules.all(piece, reel);
            if (all.size() == 1 && by.contains(all.get(0).rule()) && helps.test(reel)) {
                bars.add(new Bar(reel, all.get(0)));
            }
        }
        return bars;
    }

    private boolean mightGiveWay(Reel reel, Piece piece) {
        int own = urgency.classOf(piece);
        return reel.runs().stream()
                .filter(run -> rules.fits(piece, reel, run).isEmpty())
                .flatMap(run -> rack.onRun(bench.numberOf(new RunId(reel.id(), run.index()))).stream())
                .anyMatch(other -> urgency.classOf(bench.piece(other)) > own);
    }

    private boolean hasRoom(Reel reel, Piece piece) {
        long taken = new WantedRope(problem, piece).takesOn(reel).mm();
        return reel.runs().stream()
                .mapToInt(run -> bench.numberOf(new RunId(reel.id(), run.index())))
                .anyMatch(run -> rack.free(run) >= taken);
    }
}
