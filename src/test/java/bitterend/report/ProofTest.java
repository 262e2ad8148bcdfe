package bitterend.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.packing.Bound;
import bitterend.packing.CutPlan;
import bitterend.packing.Undone;
import bitterend.packing.proof.PriceList;
import bitterend.packing.proof.ProofTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** "Proven" is said of what is written down so that it can be worked out again, and of nothing else. */
final class ProofTest {
    private static final Cost CENT = new Cost(Cost.MILLIS_PER_MINOR);

    @Test
    void boundThatItsDualsShow_isProvenBest() {
        Proof proof = proof(cost -> bound(cost, cost));
        assertTrue(proof.sentence().startsWith("Proven best: no plan"), proof.sentence());
        assertEquals("proven best", proof.rows().get(0).avoidable());
    }

    @Test
    void boundThatATreeShows_isProvenBest() {
        ProofTree tree = ProofTree.of(List.of(), 1, new PriceList(List.of(), List.of(), List.of(), List.of()));
        Proof proof = proof(cost ->
                bound(cost, Cost.ZERO).with(new Bound.Cases(List.of(new Bound.CostProof(cost, tree)), List.of())));
        assertTrue(proof.sentence().startsWith("Proven best: no plan"), proof.sentence());
        assertEquals("proven best", proof.rows().get(0).avoidable());
    }

    @Test
    void boundThatASearchRaised_isBestBySearch() {
        Proof proof = proof(cost -> bound(cost, cost.minus(CENT)));
        assertTrue(proof.sentence().startsWith("Best by search: no plan"), proof.sentence());
        assertTrue(proof.sentence().contains("A proof that can be worked out again reaches"), proof.sentence());
        assertEquals("best by search", proof.rows().get(0).avoidable());
    }

    @Test
    void gap_tellsHowFarTheProofReaches() {
        Proof shown = proof(cost -> bound(cost.minus(CENT), cost.minus(CENT)));
        assertTrue(shown.sentence().contains("could be avoided"), shown.sentence());
        assertTrue(!shown.sentence().contains("reaches"), shown.sentence());
        Proof searched = proof(cost -> bound(cost.minus(CENT), Cost.ZERO));
        assertTrue(searched.sentence().endsWith("worked out again reaches 0.00 EUR."), searched.sentence());
    }

    /** A bound from what the draws of all ropes cost. */
    private interface Claim {
        Bound of(Cost cost);
    }

    private static Proof proof(Claim claim) {
        PlanView day = DayOnTheBench.view();
        CutPlan plan = day.plan();
        Bound bound = claim.of(plan.cost());
        CutPlan claiming = new CutPlan(
                plan.day(), plan.draws(), plan.unplanned(), plan.book(), plan.cost(), new ArrayList<>(List.of(bound)));
        PlanView view = new PlanView(day.shop(), day.problem(), claiming, Map.of(), List.of());
        return new Proof(view, new Figures(Units.METRIC, new MoneyText("EUR", 2)));
    }

    private static Bound bound(Cost best, Cost root) {
        return new Bound(List.of("DB12", "W14"), best, root, 1, Undone.NONE, Bound.noPrices(), List.of());
    }
}
