package bitterend.serve;

import bitterend.finding.CommandWord;
import bitterend.finding.Findings;
import bitterend.report.Figures;
import bitterend.report.PlanMark;
import bitterend.report.sheet.CardSheet;
import bitterend.work.PlanGate;
import bitterend.work.Plans;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import bitterend.work.plans.PlanOfPiece;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The splice cards of pieces that are cut, the same as are printed, each by the plan that cut the piece. */
final class WaitingCards {
    private final Loft loft;
    private final ShopNow now;
    private final Plans plans;
    private final Figures figures;

    WaitingCards(Loft loft, ShopNow now) {
        this.loft = loft;
        this.now = now;
        plans = now.at().plans(new Findings());
        figures = loft.figures(now);
    }

    /** The card of each piece that has one: it was cut by a plan that is sound, and its order says what it said then. */
    Map<String, CardSheet> of(Collection<String> pieces) {
        Map<String, Set<String>> byPlan = new TreeMap<>();
        pieces.forEach(piece -> plan(piece).ifPresent(plan -> byPlan.computeIfAbsent(plan, any -> new HashSet<>())
                .add(piece)));
        Map<String, CardSheet> cards = new HashMap<>();
        byPlan.forEach((plan, cut) -> cards(plan, cut).forEach(card -> card.cuts().stream()
                .map(CardSheet.Cut::piece)
                .filter(cut::contains)
                .forEach(piece -> cards.put(piece, card))));
        return cards;
    }

    /** The plan that cut a piece, by the name that the ledger knows it by; nothing where nothing is known of it. */
    private Optional<String> plan(String piece) {
        return now.rack()
                .flatMap(rack -> Optional.ofNullable(rack.cut().get(piece)))
                .map(cut -> cut.entry().origin().plan());
    }

    private List<CardSheet> cards(String plan, Set<String> pieces) {
        return PlanOfPiece.bookedBy(plans, plan)
                .map(kept -> new PlanGate(now, plans).verdict(kept))
                .flatMap(Verdict::passed)
                .map(passed -> {
                    PlanMark mark = new PlanMark(
                            passed.number(),
                            false,
                            List.of(),
                            CommandWord.of(now.at().named()),
                            Set.of());
                    return CutCards.of(now, loft.view(now, passed, mark), figures, pieces)
                            .cards();
                })
                .orElse(List.of());
    }
}
