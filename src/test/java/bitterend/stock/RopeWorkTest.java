package bitterend.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Length;
import bitterend.packing.PackingProblem;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is left of a reel after work at the bench. */
final class RopeWorkTest {
    private static final Flaw JOIN = new Flaw(mm(20_000), mm(20_300), mm(100), "maker's join");

    @Test
    void takenOff_movesFlawsAndEndsTheLeadTrim() {
        Reel left = RopeWork.takenOff(reel(List.of(JOIN)), mm(6_500)).orElseThrow();
        assertEquals(mm(43_500), left.length());
        assertEquals(mm(13_500), left.flaws().get(0).from());
        assertEquals(new Reel.Contents(mm(43_500), mm(400), mm(0), mm(800), Reel.Known.METERED), left.contents());
        assertFalse(left.full());
    }

    @Test
    void takenOffWithinTheLeadTrim_leavesTheRestOfIt() {
        Reel left = RopeWork.takenOff(reel(List.of()), mm(200)).orElseThrow();
        assertEquals(mm(300), left.contents().leadTrim());
    }

    @Test
    void takenOffPastAFlaw_forgetsIt() {
        assertEquals(1, flawsAfter(20_399));
        assertEquals(0, flawsAfter(20_400));
    }

    private static int flawsAfter(long taken) {
        return RopeWork.takenOff(reel(List.of(JOIN)), mm(taken))
                .orElseThrow()
                .flaws()
                .size();
    }

    @Test
    void takenOffWhole_leavesNothing() {
        assertEquals(Optional.empty(), RopeWork.takenOff(reel(List.of()), mm(50_000)));
    }

    @Test
    void rewound_countsFlawsFromTheOtherEndAndAllowsForAnUncertainLength() {
        Reel rewound = RopeWork.rewound(reel(List.of(JOIN)));
        Flaw flaw = rewound.flaws().get(0);
        assertEquals(mm(29_300), flaw.from());
        assertEquals(mm(30_000), flaw.to());
        assertEquals(mm(800), rewound.contents().leadTrim());
        assertEquals(mm(500), rewound.contents().innerWraps());
    }

    /** Wherever the true end lies within the uncertainty, a rewound flaw covers where it really is. */
    @Test
    void rewoundFlaws_coverTheTrueOnes() {
        int flaws = 0;
        for (long seed = 0; seed < 300; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            for (Reel reel : shop.reels()) {
                for (Flaw flaw : reel.flaws()) {
                    assertCovered(reel, flaw, 0);
                    assertCovered(reel, flaw, reel.contents().uncertainty().mm());
                    flaws++;
                }
            }
        }
        assertTrue(flaws > 100, "hardly any flaws");
    }

    private static void assertCovered(Reel reel, Flaw flaw, long shorter) {
        long length = reel.length().mm() - shorter;
        long from = Math.max(0, length - flaw.avoidTo().mm());
        long to = length - flaw.avoidFrom().mm();
        assertTrue(
                RopeWork.rewound(reel).flaws().stream()
                        .anyMatch(other -> other.avoidFrom().mm() <= from
                                && other.avoidTo().mm() >= to),
                reel.toString());
    }

    @Test
    void front_takesItsFlawsAndItsLeadTrim() {
        Reel front = RopeWork.front(reel(List.of(JOIN)), "K1-1", bitterend.measure.Written.worked(mm(20_100)));
        assertEquals(mm(500), front.contents().leadTrim());
        assertEquals(mm(20_100), front.flaws().get(0).to());
        assertEquals(mm(20_100), front.length());
    }

    private static Reel reel(List<Flaw> flaws) {
        Reel.Contents contents = new Reel.Contents(mm(50_000), mm(400), mm(500), mm(800), Reel.Known.METERED);
        return new Reel(
                "K1", "braid", "L1", contents, flaws, Reel.Papers.NONE, Reel.Custody.FREE, true, Reel.Where.UNKNOWN);
    }

    private static Length mm(long mm) {
        return new Length(mm);
    }
}
