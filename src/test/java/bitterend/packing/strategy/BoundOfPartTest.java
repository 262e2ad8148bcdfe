package bitterend.packing.strategy;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece.Bond;
import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.PackingProblem;
import bitterend.packing.Sketch;
import bitterend.packing.Undone;
import bitterend.packing.Urgency;
import bitterend.packing.patterns.Effort;
import bitterend.packing.patterns.PatternPacker;
import org.junit.jupiter.api.Test;

/** How strong the bound is that is told of a plan. A millimetre is worth 1, a cut loses 10 mm. */
final class BoundOfPartTest {
    /** Both pieces of the set fit, on two reels; it must lie on one, so it stays undone, and the third piece is paid for. */
    @Test
    void planThatLeavesMoreThanThePatternsDo_isStillBoundedByWhatItCuts() {
        PackingProblem day = new Sketch()
                .with(reel("K1", 5_000))
                .with(reel("K2", 5_000))
                .with(reel("K3", 5_000))
                .with(reel("K4", 3_500))
                .with(reel("K5", 3_500))
                .with(piece("S.1", 4_000).set("S", Bond.ONE_REEL))
                .with(piece("S.2", 4_000).set("S", Bond.ONE_REEL))
                .with(piece("single", 3_000))
                .problem();
        Urgency urgency = new Urgency(day);
        Undone set =
                urgency.of(day.pieces().get(0)).plus(urgency.of(day.pieces().get(1)));
        Bound bound = bounds(day).forUndone(set);
        assertEquals(new Cost(3_010), bound.root());
        assertTrue(bound.undonePrices().stream().anyMatch(price -> price > 0));
    }

    @Test
    void planThatLeavesNothing_isBoundedByTheWholeDay() {
        PackingProblem day = new Sketch()
                .with(reel("K1", 5_000))
                .with(reel("K2", 5_000))
                .with(piece("a", 4_000))
                .with(piece("b", 4_000))
                .problem();
        assertEquals(new Cost(8_020), bounds(day).forUndone(Undone.NONE).root());
        assertTrue(bounds(day).isLeast(Undone.NONE));
    }

    @Test
    void whatMightBeCutYet_isNotCalledTheLeast() {
        PackingProblem day = new Sketch()
                .with(reel("K1", 5_000))
                .with(piece("a", 2_000))
                .with(piece("b", 2_000))
                .problem();
        assertFalse(bounds(day).isLeast(new Urgency(day).of(day.pieces().get(0))));
    }

    private static BoundOfPart bounds(PackingProblem day) {
        PatternBridge bridge = new PatternBridge(day);
        return new BoundOfPart(day, bridge, PatternPacker.pack(bridge.patterns(), Effort.ofWork(1_000_000)));
    }
}
