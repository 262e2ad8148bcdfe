package bitterend.work;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.Undone;
import bitterend.packing.check.BoundVerdict;
import bitterend.packing.check.BoundVerdict.State;
import bitterend.packing.proof.PriceList;
import bitterend.packing.proof.ProofTree;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What was computed again is claimed as proven; what a search says beyond that as searched, and only of a plan of ours. */
final class PlanClaimsTest {
    private static final Cost BEST = new Cost(5_000);
    private static final Cost ROOT = new Cost(3_000);

    @Test
    void whatIsConfirmedWhole_staysAsItIs() {
        Bound bound = bound(ROOT, ROOT);
        BoundVerdict whole = new BoundVerdict(List.of("A"), State.CONFIRMED, "", List.of(), ROOT, Undone.NONE);
        assertEquals(bound, claimed(bound, whole, false));
        assertEquals(bound, claimed(bound, whole, true));
    }

    @Test
    void whatASearchRaised_isSearchedInOurPlan_andNothingInAnyFile() {
        Bound ours = claimed(bound(BEST, ROOT), open(ROOT), true);
        assertEquals(BEST, ours.best());
        assertEquals(ROOT, ours.shown());
        Bound any = claimed(bound(BEST, ROOT), open(ROOT), false);
        assertEquals(ROOT, any.best());
        assertEquals(ROOT, any.shown());
    }

    /** What is too large to compute again is no proof here; its ropes are among those that are counted. */
    @Test
    void whatWasNotComputedAgain_isNotProven() {
        BoundVerdict nothing =
                new BoundVerdict(List.of("A"), State.NOT_CHECKED, "", List.of("too large"), Cost.ZERO, Undone.NONE);
        ProofTree tree = ProofTree.of(List.of(), 1, new PriceList(List.of(), List.of(), List.of(), List.of()));
        Bound bound = bound(BEST, ROOT).with(new Bound.Cases(List.of(new Bound.CostProof(BEST, tree)), List.of()));
        Bound ours = claimed(bound, nothing, true);
        assertEquals(BEST, ours.best());
        assertEquals(Cost.ZERO, ours.shown());
        assertEquals(Cost.ZERO, claimed(bound, nothing, false).best());
    }

    /** A proof by cases that was followed is kept: it sees sets and split orders, which the root does not. */
    @Test
    void proofByCases_thatWasFollowed_isKept() {
        ProofTree tree = ProofTree.of(List.of(), 1, new PriceList(List.of(), List.of(), List.of(), List.of()));
        Cost between = new Cost(4_000);
        Bound bound = bound(BEST, ROOT).with(new Bound.Cases(List.of(new Bound.CostProof(between, tree)), List.of()));
        assertEquals(between, claimed(bound, open(between), true).shown());
        assertEquals(between, claimed(bound, open(between), false).best());
    }

    private static BoundVerdict open(Cost confirmed) {
        return new BoundVerdict(List.of("A"), State.CONFIRMED, "", List.of("not re-checked"), confirmed, Undone.NONE);
    }

    private static Bound bound(Cost best, Cost root) {
        return new Bound(List.of("A"), best, root, 1, Undone.NONE, Bound.noPrices(), List.of());
    }

    private static Bound claimed(Bound bound, BoundVerdict verdict, boolean searched) {
        CutPlan plan =
                new CutPlan(LocalDate.of(2026, 3, 2), List.of(), List.of(), LengthBook.EMPTY, BEST, List.of(bound));
        return PlanClaims.of(plan, List.of(verdict), searched).bounds().get(0);
    }
}
