package bitterend.day;

import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Length;
import bitterend.packing.ReelSketch;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Reel;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which movements of a reel leave a plan as good as it was, and which do not. */
final class ReelSinceTest {
    private static final Instant AT = Instant.parse("2026-03-02T08:15:00Z");
    private static final LocalDate UNTIL = LocalDate.of(2026, 3, 20);
    private static final ReelSketch PLAIN = reel("R1", 50_000);

    private final List<Movement> history = new ArrayList<>();

    ReelSinceTest() {
        add(Kind.RECEIVED, PLAIN.reel(), false, Movement.Origin.NONE, 50_000);
    }

    private Movement add(Kind kind, Reel after, boolean gone, Movement.Origin origin, long by) {
        long number = history.size() + 1L;
        Movement movement = new Movement(
                number,
                number,
                AT,
                "Nan",
                new Movement.Entry(kind, after, gone, "why", origin),
                number,
                new Length(by));
        history.add(movement);
        return movement;
    }

    private Movement by(Kind kind, Reel after) {
        return add(kind, after, false, Movement.Origin.NONE, 0);
    }

    private ReelSince since(long seen) {
        return new ReelSince(history, seen, "7-aa", SameSteps.NONE);
    }

    private boolean changes(Kind kind, Reel after) {
        return changes(by(kind, after));
    }

    private boolean changes(Movement movement) {
        return since(1).changesTheRope(movement);
    }

    private static Reel with(long uncertainty, long leadTrim, long innerWraps) {
        Reel plain = PLAIN.reel();
        return plain.withContents(new Reel.Contents(
                plain.contents().written().roundedDown(),
                new Length(uncertainty),
                new Length(leadTrim),
                new Length(innerWraps),
                Reel.Known.METERED));
    }

    @Test
    void ropeThatOnlyLiesElsewhere_isAsItWas() {
        assertFalse(changes(Kind.MOVED, with(0, 900, 0)), "moved, whatever else is written");
        assertFalse(changes(Kind.COUNTED, with(0, 900, 0)), "counted, as it was");
        assertFalse(changes(Kind.ON_HOLD, with(0, 900, 0)), "on hold");
    }

    @Test
    void ropeOfWhichMoreIsKnown_isAsItWas() {
        by(Kind.CORRECTED, with(800, 0, 0));
        assertFalse(changes(Kind.COUNTED, with(300, 0, 0)), "known better");
        assertTrue(changes(Kind.COUNTED, with(301, 0, 0)), "known less well");
    }

    @Test
    void whatIsCutOffOrLeftOnTheReel_changesIt() {
        assertTrue(changes(Kind.CORRECTED, with(0, 100, 0)), "lead trim");
        assertTrue(changes(Kind.CORRECTED, with(0, 100, 200)), "inner wraps");
        assertTrue(changes(Kind.CORRECTED, with(0, 0, 200)), "lead trim taken back");
    }

    @Test
    void turnedRoundShorterGoneOrAnotherRope_changesIt() {
        assertTrue(changes(Kind.REWOUND, PLAIN.reel()), "rewound");
        assertTrue(changes(add(Kind.COUNTED, PLAIN.reel(), false, Movement.Origin.NONE, -1)), "1 mm less");
        assertTrue(changes(add(Kind.SOLD, PLAIN.reel(), true, Movement.Origin.NONE, 0)), "gone");
        by(Kind.COUNTED, PLAIN.reel());
        assertTrue(changes(Kind.CORRECTED, reel("R1", 50_000).of("ANOTHER").reel()), "another rope");
        assertTrue(changes(history.get(0)), "what nothing came before");
    }

    @Test
    void flawAndRopeSpokenFor_changeIt() {
        assertTrue(
                changes(Kind.FLAW_FOUND, reel("R1", 50_000).flaw(9_000, 9_500).reel()), "a flaw");
        by(Kind.CORRECTED, PLAIN.reel());
        Reel held = reel("R1", 50_000).held(10, "G-1", UNTIL).reel();
        assertTrue(changes(Kind.RESERVED, held), "held for an order");
        assertFalse(changes(Kind.RESERVED, held), "held as before");
        assertFalse(changes(Kind.RELEASED, PLAIN.reel()), "free again");
    }

    @Test
    void changes_areThoseOfOthersThatTouchTheRope() {
        by(Kind.MOVED, PLAIN.reel());
        Movement flaw =
                by(Kind.FLAW_FOUND, reel("R1", 50_000).flaw(9_000, 9_500).reel());
        add(Kind.CUT, PLAIN.reel(), false, Movement.Origin.ofCut("7-aa", "A1/1.1"), -4_000);
        assertEquals(List.of(flaw), since(1).changes());
        assertEquals(List.of(history.get(1), flaw), since(1).others());
        assertEquals(List.of(), since(3).changes(), "the plan saw the flaw");
        assertEquals(Set.of(Step.ofPiece("A1/1.1")), since(1).steps());
        assertEquals(Set.of(), new ReelSince(history, 1, "8-bb", SameSteps.NONE).steps(), "of another plan");
    }

    @Test
    void takenBackSince_isNothing_andTakenBackOfBefore_isSomething() {
        by(Kind.MOVED, PLAIN.reel());
        Movement booked = add(Kind.CUT, PLAIN.reel(), false, Movement.Origin.NONE, -4_000);
        Movement undone =
                add(Kind.UNDONE, PLAIN.reel(), false, new Movement.Origin("", "", "", "", "", booked.number()), 4_000);
        assertEquals(List.of(history.get(1)), since(1).others());
        assertEquals(List.of(undone), since(3).others(), "the plan had seen the cut");
    }

    @Test
    void hold_isTheLastWhileItLasts() {
        Reel held = reel("R1", 50_000).onHold().reel();
        by(Kind.ON_HOLD, held);
        Movement again = by(Kind.ON_HOLD, held);
        assertEquals(Optional.of(again), since(1).hold());
        assertEquals(Optional.empty(), since(3).hold(), "the plan saw it");
        by(Kind.COUNTED, held);
        assertEquals(Optional.of(again), since(1).hold(), "counted while on hold");
        by(Kind.RELEASED, PLAIN.reel());
        assertEquals(Optional.empty(), since(1).hold());
    }

    @Test
    void told_namesTheChangeOfLengthWhereThereIsOne() {
        Movement moved = by(Kind.MOVED, PLAIN.reel());
        assertEquals(
                "reel R1: moved on 2026-03-02 08:15 by Nan (event 2): why",
                ReelSince.told(moved).toString());
        Movement shorter = add(Kind.COUNTED, PLAIN.reel(), false, Movement.Origin.NONE, -40);
        assertTrue(
                ReelSince.told(shorter).toString().contains(", which changed its length by -0.040 m: why"),
                "" + ReelSince.told(shorter));
    }
}
