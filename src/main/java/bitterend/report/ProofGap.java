package bitterend.report;

import bitterend.demand.Piece;
import bitterend.packing.Bound;
import bitterend.packing.Packing;
import bitterend.packing.PlanPrice;
import bitterend.packing.ReelDraw;
import java.util.ArrayList;
import java.util.List;
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

    ProofGap(PlanView view, PlanPrice prices) {
        for (ReelDraw draw : view.plan().draws()) {
            boolean isOfSets = draw.cuts().stream()
                    .map(cut -> Objects.requireNonNull(view.pieces().get(cut.piece()), cut.piece()))
                    .anyMatch(Piece::isMatched);
            if (isOfSets) {
                withSets.add(view.rope(draw).id());
            }
        }
        if (view.problem().prices().splitOrder().millis() > 0) {
            withSplits.addAll(prices.splitRopes(Packing.of(view.plan().draws())));
        }
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
