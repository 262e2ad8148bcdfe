package bitterend.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.packing.Bound;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.Undone;
import bitterend.packing.proof.PriceList;
import bitterend.packing.proof.ProofTree;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** "Proven" is said of what is written down so that it can be worked out again, and of nothing else. */
final class ProofTest {
    private static final Cost CENT = new Cost(Cost.MILLIS_PER_MINOR);

    @Test
    void boundThatItsDualsShow_isProvenBest() {
        Proof proof = proof(cost -> bound(cost, cost));
        assertTrue(proof.sentence().startsWith("Nothing better exists, among plans that leave"), proof.sentence());
        assertEquals("proven best", proof.rows().get(0).avoidable());
    }

    @Test
    void boundThatATreeShows_isProvenBest() {
        ProofTree tree = ProofTree.of(List.of(), 1, new PriceList(List.of(), List.of(), List.of(), List.of()));
        Proof proof = proof(cost ->
                bound(cost, Cost.ZERO).with(new Bound.Cases(List.of(new Bound.CostProof(cost, tree)), List.of())));
        assertTrue(proof.sentence().startsWith("Nothing better exists, among plans that leave"), proof.sentence());
        assertEquals("proven best", proof.rows().get(0).avoidable());
    }

    @Test
    void boundThatASearchRaised_isBestBySearch() {
        Proof proof = proof(cost -> bound(cost, cost.minus(CENT)));
        assertTrue(proof.sentence().startsWith("Nothing better exists"), proof.sentence());
        assertTrue(proof.sentence().contains("A proof that can be worked out again reaches"), proof.sentence());
        assertEquals("best by search", proof.rows().get(0).avoidable());
    }

    @Test
    void gap_tellsHowFarTheProofReaches() {
        Proof shown = proof(cost -> bound(cost.minus(CENT), cost.minus(CENT)));
        assertTrue(shown.sentence().startsWith("At most 0.01 EUR could be saved, "), shown.sentence());
        assertTrue(!shown.sentence().contains("reaches"), shown.sentence());
        Proof searched = proof(cost -> bound(cost.minus(CENT), Cost.ZERO));
        assertTrue(searched.sentence().endsWith("worked out again reaches 0.00 EUR."), searched.sentence());
    }

    /** Half a coin more than a coin may be avoided: two coins at the most, and a bound is never rounded up. */
    @Test
    void avoidable_isRoundedUp_andTheBoundDown() {
        Cost braid = costOf("DB12");
        Cost bound = braid.minus(new Cost(Cost.MILLIS_PER_MINOR + 1));
        Proof proof =
                proof(List.of(new Bound(List.of("DB12"), bound, bound, 1, Undone.NONE, Bound.noPrices(), List.of())));
        Figures figures = new Figures(Units.METRIC, new MoneyText("EUR", 2));
        Proof.Row row = proof.rows().get(0);
        assertEquals("0.02", row.avoidable());
        assertEquals(figures.bare(bound.roundedDown()), row.bound());
    }

    @Test
    void gap_isOfTheRopesWhoseBoundIsKnown_andTheOtherSaysSo() {
        Cost braid = costOf("DB12");
        Bound known = new Bound(
                List.of("DB12"), braid.minus(CENT), braid.minus(CENT), 1, Undone.NONE, Bound.noPrices(), List.of());
        Bound unknown = new Bound(List.of("W14"), Cost.ZERO, Cost.ZERO, 1, Undone.NONE, Bound.noPrices(), List.of());
        Proof proof = proof(List.of(known, unknown));
        String said = proof.sentence();
        assertTrue(said.startsWith("At most 0.01 EUR could be saved on 1 rope, 0.1 % of the rope"), said);
        assertTrue(said.contains("; not known for W14"), said);
        assertEquals("", proof.forTheBench());
        assertEquals("0.01", proof.rows().get(0).avoidable());
        assertEquals("not known", proof.rows().get(1).bound());
        assertEquals("not known", proof.rows().get(1).avoidable());
        assertEquals("", proof.rows().get(1).gap());
    }

    /** The ropes are counted: for how many nothing better exists, what could be saved on how many, which are not known. */
    @Test
    void sentence_countsTheRopes() {
        Cost braid = costOf("DB12");
        Cost wire = costOf("W14");
        Proof proof = proof(List.of(
                new Bound(List.of("DB12"), braid, braid, 1, Undone.NONE, Bound.noPrices(), List.of()),
                new Bound(
                        List.of("W14"),
                        wire.minus(CENT),
                        wire.minus(CENT),
                        1,
                        Undone.NONE,
                        Bound.noPrices(),
                        List.of())));
        assertTrue(
                proof.sentence()
                        .startsWith(
                                "Nothing better exists for 1 of 2 ropes; at most 0.01 EUR could be saved on 1 more, "),
                proof.sentence());
        assertTrue(
                proof.forTheBench().startsWith("Nothing better exists for 1 of 2 ropes, among"), proof.forTheBench());
    }

    /** What is proven and what is the best that a search found are counted apart, on every page by the same words. */
    @Test
    void sentence_countsWhatIsProvenAndWhatIsSearchedApart() {
        Cost braid = costOf("DB12");
        Cost wire = costOf("W14");
        Bound proven = bound(List.of("DB12"), braid, braid);
        Bound searched = bound(List.of("W14"), wire, Cost.ZERO);
        String both = "Nothing better exists (1 proven best, 1 best by search), among plans that leave no more undone.";
        Proof mixed = proof(List.of(proven, searched));
        assertTrue(mixed.sentence().startsWith(both), mixed.sentence());
        assertEquals(both, mixed.forTheBench());
        Proof one = proof(List.of(bound(List.of("DB12"), braid.minus(CENT), Cost.ZERO), searched));
        String said = "Nothing better exists for 1 of 2 ropes (best by search)";
        assertTrue(one.sentence().startsWith(said + "; at most 0.01 EUR"), one.sentence());
        assertTrue(one.forTheBench().startsWith(said + ", among plans"), one.forTheBench());
    }

    /** Its only reel is on hold: all its work is undone and it costs nothing, which is no proof that anybody did well. */
    @Test
    void ropeOfWhichNothingIsPlanned_isNotCounted() {
        Cost braid = costOf("DB12");
        Cost wire = costOf("W14");
        Bound idle = bound(List.of("ES32"), Cost.ZERO, Cost.ZERO);
        Proof proof = proof(List.of(
                bound(List.of("DB12"), braid, braid), bound(List.of("W14"), wire.minus(CENT), wire.minus(CENT)), idle));
        String said = "Nothing better exists for 1 of 2 ropes";
        assertTrue(
                proof.sentence().startsWith(said + "; at most 0.01 EUR could be saved on 1 more, "), proof.sentence());
        assertTrue(proof.forTheBench().startsWith(said + ", among"), proof.forTheBench());
        assertEquals(
                List.of("DB12", "W14"),
                proof.rows().stream().map(Proof.Row::ropes).toList());
        Bound beside = bound(List.of("DB12", "DB12-G"), braid, braid);
        String group = proof(List.of(beside, bound(List.of("W14"), wire.minus(CENT), Cost.ZERO)))
                .sentence();
        assertTrue(group.startsWith(said + "; "), group);
    }

    @Test
    void planOfNothing_provesNothing() {
        PlanView day = DayOnTheBench.view();
        CutPlan none = new CutPlan(
                day.plan().day(),
                List.of(),
                day.plan().unplanned(),
                LengthBook.EMPTY,
                Cost.ZERO,
                List.of(bound(Cost.ZERO, Cost.ZERO)));
        PlanView view = new PlanView(day.shop(), day.problem(), none, Map.of(), List.of());
        Proof proof = new Proof(view, new Figures(Units.METRIC, new MoneyText("EUR", 2)));
        assertEquals("Nothing is planned.", proof.sentence());
        assertEquals("", proof.forTheBench());
        assertEquals(List.of(), proof.rows());
    }

    /** A pair that must be of one lot adds to the cost of what the duals prove, and to nothing that cases prove. */
    @Test
    void setsAndSplitOrders_areNamedWhereTheProofLeavesThemOut() {
        PlanView pair = DayOnTheBench.withSet();
        Cost below = pair.plan().cost().minus(CENT);
        Bound open = braid(below);
        String said = proof(pair, List.of(open)).sentence();
        assertTrue(said.endsWith(" The matched sets of DB12 may be why: the proof leaves them out."), said);
        ProofTree tree = ProofTree.of(List.of(), 1, new PriceList(List.of(), List.of(), List.of(), List.of()));
        Bound seen = open.with(new Bound.Cases(List.of(new Bound.CostProof(below, tree)), List.of()));
        assertTrue(!proof(pair, List.of(seen)).sentence().contains("may be why"), "sets are seen by cases");
        assertTrue(!proof(List.of(open)).sentence().contains("may be why"), "a day without sets");
        PlanView split = DayOnTheBench.withSplitOrder();
        Bound under = braid(split.plan().cost().minus(CENT));
        String orders = proof(split, List.of(under)).sentence();
        assertTrue(orders.endsWith(" The split orders of DB12 may be why: the proof leaves them out."), orders);
        assertEquals("", proof(split, List.of(under)).forTheBench(), "nothing alarming on the bench");
    }

    private static Bound braid(Cost cost) {
        return new Bound(List.of("DB12"), cost, cost, 1, Undone.NONE, Bound.noPrices(), List.of());
    }

    private static Cost costOf(String rope) {
        PlanView day = DayOnTheBench.view();
        return day.plan().draws().stream()
                .filter(draw -> day.rope(draw).id().equals(rope))
                .map(draw -> draw.cost())
                .reduce(Cost.ZERO, Cost::plus);
    }

    /** A bound from what the draws of all ropes cost. */
    private interface Claim {
        Bound of(Cost cost);
    }

    private static Proof proof(Claim claim) {
        return proof(List.of(claim.of(DayOnTheBench.view().plan().cost())));
    }

    private static Proof proof(List<Bound> bounds) {
        return proof(DayOnTheBench.view(), bounds);
    }

    private static Proof proof(PlanView day, List<Bound> bounds) {
        CutPlan plan = day.plan();
        CutPlan claiming = new CutPlan(plan.day(), plan.draws(), plan.unplanned(), plan.book(), plan.cost(), bounds);
        PlanView view = new PlanView(day.shop(), day.problem(), claiming, Map.of(), List.of());
        return new Proof(view, new Figures(Units.METRIC, new MoneyText("EUR", 2)));
    }

    private static Bound bound(Cost best, Cost root) {
        return bound(List.of("DB12", "W14"), best, root);
    }

    private static Bound bound(List<String> ropes, Cost best, Cost root) {
        return new Bound(ropes, best, root, 1, Undone.NONE, Bound.noPrices(), List.of());
    }
}
