package bitterend.report;

import bitterend.demand.Piece;
import bitterend.packing.Bound;
import bitterend.packing.Cut;
import bitterend.packing.PlanPrice;
import bitterend.packing.ReelDraw;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Why a proof may fall short of a plan: matched sets and split orders add to what a plan costs, and a bound that is not
 * shown by cases leaves them out.
 */
final class ProofGap {
    private final Set<String> withSets = new TreeSet<>();
    private final Set<String> withSplits = new TreeSet<>();

    /** What an order takes of one rope. */
    private record Share(String order, String rope) {}

    ProofGap(PlanView view) {
        Map<Share, Set<String>> lots = new HashMap<>();
        for (ReelDraw draw : view.plan().draws()) {
            String rope = view.rope(draw).id();
            for (Cut cut : draw.cuts()) {
                Piece piece = Objects.requireNonNull(view.pieces().get(cut.piece()), cut.piece());
                if (piece.isMatched()) {
                    withSets.add(rope);
                }
                lots.computeIfAbsent(new Share(piece.order(), rope), share -> new HashSet<>())
                        .add(PlanPrice.lotOf(view.reel(draw)));
            }
        }
        boolean priced = view.problem().prices().splitOrder().millis() > 0;
        lots.forEach((share, taken) -> {
            if (priced && taken.size() > 1) {
                withSplits.add(share.rope());
            }
        });
    }

    /** A sentence with a blank before it; empty where neither sets nor split orders can be the reason. */
    String why(List<Bound> open) {
        Set<String> blind = open.stream()
                .filter(bound -> bound.cases().costs().isEmpty())
                .flatMap(bound -> bound.ropes().stream())
                .collect(Collectors.toSet());
        List<String> reasons = new ArrayList<>();
        name(reasons, "the matched sets", withSets, blind);
        name(reasons, "the split orders", withSplits, blind);
        return reasons.isEmpty()
                ? ""
                : " " + LengthsPage.sentence(String.join(" and ", reasons) + " may be why: the proof leaves them out");
    }

    private static void name(List<String> reasons, String what, Set<String> ropes, Set<String> blind) {
        List<String> named = ropes.stream().filter(blind::contains).toList();
        if (!named.isEmpty()) {
            reasons.add(what + " of " + String.join(", ", named));
        }
    }
}
