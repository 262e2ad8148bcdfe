package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Which pieces some reel could hold if nothing else were cut from it. */
final class Holding {
    private final PackingProblem problem;
    private final Eligibility rules;
    private final Map<String, Piece> pieces;

    /** Reels there and on offer, in one problem. */
    Holding(PackingProblem problem) {
        this.problem = problem;
        rules = new Eligibility(problem);
        pieces = problem.pieces().stream().collect(Collectors.toMap(Piece::id, piece -> piece));
    }

    /** Whether no reel could hold any of some pieces, none of which must match another: what is cut elsewhere does not matter. */
    boolean holdsNone(Collection<String> ids) {
        return ids.stream().map(pieces::get).allMatch(piece -> piece != null && !piece.isMatched() && !holds(piece));
    }

    boolean holds(Piece piece) {
        return problem.reels().stream().anyMatch(reel -> holds(known(piece), reel));
    }

    private boolean holds(Piece piece, Reel reel) {
        return reel.runs().stream()
                .anyMatch(run -> rules.against(piece, reel, run).isEmpty());
    }

    /** Why nothing holds a piece: what stands against the longest run of its ropes, or that there is none. */
    Unheld unheld(Piece wanted) {
        Piece piece = known(wanted);
        Length longest = Length.ZERO;
        List<Reason> others = new ArrayList<>();
        for (Reel reel : problem.reels()) {
            Optional<Reason> against = rules.against(piece, reel);
            if (against.isEmpty()) {
                longest = reel.runs().stream().map(run -> run.length()).reduce(longest, Length::max);
            } else if (against.get().rule() != Rule.SAME_ROPE) {
                others.add(against.get());
            }
        }
        return new Unheld(piece.id(), piece.cut(), why(piece, longest, others));
    }

    /** The piece with every rope of this problem that it may come off. */
    private Piece known(Piece piece) {
        return pieces.getOrDefault(piece.id(), piece);
    }

    private static Sentence why(Piece piece, Length longest, List<Reason> others) {
        if (longest.isPositive()) {
            return Sentence.of("takes ")
                    .and(piece.cut())
                    .and(" in one length; the longest to be had is ")
                    .and(longest);
        }
        return others.isEmpty()
                ? Sentence.of("no reel of " + piece.orderedRope() + " is there or on offer")
                : others.get(others.size() - 1).sentence();
    }
}
