package bitterend.day;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.packing.CutPlan;
import bitterend.packing.Sketch;
import bitterend.shops.PlanWriter;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is told of a piece that a new plan moves off its reel, where another comes in its place. */
final class ChangesTest {

    /** The reel holds both pieces and one cut loss of 10 mm, to the millimetre. */
    @Test
    void pieceThatCouldHaveStayed_isSaidToCostLess() {
        assertEquals("there is room for it on reel E8, but the plan costs less so", whyItLeaves(9_010));
    }

    @Test
    void pieceOneMillimetreTooLong_isToldWhatTakesItsPlaceAndThatItsOwnIsNoReason() {
        assertEquals(
                "B/1.1 takes its place on reel E8 and it the place of others in turn: the plan costs less so",
                whyItLeaves(9_009));
    }

    /** The newcomer had no reel before: it alone is the reason, though the two old ones exchange theirs as well. */
    @Test
    void pieceThatMakesRoom_namesTheOneThatDidNotMoveForIt() {
        Sketch was = three("E8", "E10", "E12");
        Sketch is = new Sketch()
                .with(reel("E8", 9_009))
                .with(reel("E10", 9_000))
                .with(reel("E12", 9_000))
                .with(piece("A/1.1", 5_000), "E10", 1)
                .with(piece("B/1.1", 4_000), "E8", 1)
                .with(piece("C/1.1", 4_990), "E8", 1);
        List<Changes.Change> changes = new Changes(is.problem(), Set.of()).since(plan(was), plan(is));
        assertEquals("C/1.1 takes its place on reel E8", changes.get(0).why().exact());
    }

    private static Sketch three(String first, String second, String third) {
        return new Sketch()
                .with(reel("E8", 9_009))
                .with(reel("E10", 9_000))
                .with(reel("E12", 9_000))
                .with(piece("A/1.1", 5_000), first, 1)
                .with(piece("B/1.1", 4_000), second, 1)
                .with(piece("C/1.1", 4_990), third, 1);
    }

    /** Two alike on two reels: nothing has moved when they only exchange their numbers. */
    @Test
    void equalPieces_thatExchangeNumbersHaveNotMoved() {
        Sketch was = alike("E8", "E10");
        Sketch is = alike("E10", "E8");
        assertEquals(List.of(), new Changes(is.problem(), Set.of()).since(plan(was), plan(is)));
    }

    private static Sketch alike(String first, String second) {
        return new Sketch()
                .with(reel("E8", 9_000))
                .with(reel("E10", 9_000))
                .with(piece("A/1.1", 4_000).order("A"), first, 1)
                .with(piece("A/1.2", 4_000).order("A"), second, 1);
    }

    private static String whyItLeaves(long reelMm) {
        List<Changes.Change> changes = new Changes(
                        exchanged(reelMm, "E10", "E8").problem(), Set.of())
                .since(plan(exchanged(reelMm, "E8", "E10")), plan(exchanged(reelMm, "E10", "E8")));
        assertEquals(
                List.of("A/1.1", "B/1.1"),
                changes.stream().map(Changes.Change::piece).toList());
        return changes.get(0).why().exact();
    }

    private static Sketch exchanged(long reelMm, String first, String second) {
        return new Sketch()
                .with(reel("E8", reelMm))
                .with(reel("E10", 9_000))
                .with(piece("A/1.1", 4_000), first, 1)
                .with(piece("B/1.1", 5_000), second, 1);
    }

    private static CutPlan plan(Sketch sketch) {
        return PlanWriter.write(sketch.problem(), sketch.packing());
    }
}
