package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.LongUnaryOperator;
import org.junit.jupiter.api.Test;

/** What a problem may hold, and where it is refused. */
final class PatternProblemTest {
    private static final long LARGEST = PatternProblem.LARGEST;
    private static final List<Long> ONE = List.of(10L);

    private static ReelKind kind(Run run, long opening, long loss, List<Long> lengths, LongUnaryOperator value) {
        return new ReelKind(List.of(run), 1, opening, loss, lengths, value);
    }

    private static PatternProblem of(ReelKind kind) {
        return new PatternProblem(List.of(Item.must(1)), List.of(kind));
    }

    private static void refuses(String why, ReelKind kind) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> of(kind));
        assertTrue(String.valueOf(refused.getMessage()).contains(why), String.valueOf(refused.getMessage()));
    }

    @Test
    void largestNumbers_areTaken() {
        ReelKind kind = kind(new Run(LARGEST, LARGEST), LARGEST, LARGEST, List.of(LARGEST), left -> LARGEST);
        assertEquals(1, of(kind).reels().size());
        assertDoesNotThrow(() -> new PatternProblem(List.of(new Item(2, LARGEST / 2)), List.of()));
        assertDoesNotThrow(() -> of(kind(Run.of(9), 0, 0, List.of(1L), ReelKind.WORTHLESS)));
        assertDoesNotThrow(() -> of(kind(Run.of(9), 0, 0, List.of(ReelKind.NOT_ALLOWED), ReelKind.WORTHLESS)));
    }

    @Test
    void lengthsThatDoNotNameEveryItem_areRefused() {
        refuses("every item", kind(Run.of(9), 0, 0, List.of(), ReelKind.WORTHLESS));
        refuses("every item", kind(Run.of(9), 0, 0, List.of(1L, 2L), ReelKind.WORTHLESS));
    }

    @Test
    void anOpeningThatIsTooHigh_isRefused() {
        refuses("opening", kind(Run.of(9), LARGEST + 1, 0, ONE, ReelKind.WORTHLESS));
    }

    @Test
    void aCutLossThatIsTooLong_isRefused() {
        refuses("cutLoss", kind(Run.of(9), 0, LARGEST + 1, ONE, ReelKind.WORTHLESS));
    }

    @Test
    void aRunThatIsTooLong_isRefused() {
        refuses("run length", kind(Run.of(LARGEST + 1), 0, 0, ONE, ReelKind.WORTHLESS));
    }

    @Test
    void aHandlingThatIsTooDear_isRefused() {
        refuses("handling", kind(new Run(9, LARGEST + 1), 0, 0, ONE, ReelKind.WORTHLESS));
    }

    @Test
    void aRunThatIsWorthTooMuch_isRefused() {
        refuses("value of a run", kind(Run.of(9), 0, 0, ONE, left -> left == 9 ? LARGEST + 1 : 0));
    }

    @Test
    void everyRunAndEveryKind_isLookedAt() {
        ReelKind good = kind(Run.of(9), 0, 0, ONE, ReelKind.WORTHLESS);
        ReelKind bad = new ReelKind(List.of(Run.of(9), Run.of(LARGEST + 1)), 1, 0, 0, ONE, ReelKind.WORTHLESS);
        refuses("run length", bad);
        assertThrows(
                IllegalArgumentException.class, () -> new PatternProblem(List.of(Item.must(1)), List.of(good, bad)));
    }

    @Test
    void anItemOfNoLength_orTooLong_isRefused() {
        refuses("at least 1", kind(Run.of(9), 0, 0, List.of(0L), ReelKind.WORTHLESS));
        refuses("at least 1", kind(Run.of(9), 0, 0, List.of(-2L), ReelKind.WORTHLESS));
        refuses("length of an item", kind(Run.of(9), 0, 0, List.of(LARGEST + 1), ReelKind.WORTHLESS));
    }

    @Test
    void weightsThatComeToTooMuchTogether_areRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new PatternProblem(List.of(new Item(2, LARGEST / 2), new Item(1, 1)), List.of()));
        assertThrows(
                ArithmeticException.class,
                () -> new PatternProblem(List.of(new Item(3, Long.MAX_VALUE / 2)), List.of()));
        assertThrows(
                ArithmeticException.class,
                () -> new PatternProblem(
                        List.of(new Item(1, Long.MAX_VALUE / 2 + 1), new Item(1, Long.MAX_VALUE / 2 + 1)), List.of()));
    }

    @Test
    void moreThanAQuarterOfAllPieces_areRefused() {
        int most = Integer.MAX_VALUE / 4;
        assertEquals(
                2,
                new PatternProblem(List.of(Item.must(most - 1), Item.must(1)), List.of())
                        .items()
                        .size());
        assertThrows(
                IllegalArgumentException.class,
                () -> new PatternProblem(List.of(Item.must(most), Item.must(1)), List.of()));
    }

    @Test
    void oneLength_isTheClassicalProblem() {
        PatternProblem problem = PatternProblem.oneLength(12, List.of(5L, 3L), List.of(2, 4));
        assertEquals(List.of(Item.must(2), Item.must(4)), problem.items());
        ReelKind reel = problem.reels().get(0);
        assertEquals(List.of(Run.of(12)), reel.runs());
        assertEquals(ReelKind.UNLIMITED, reel.supply());
        assertEquals(1, reel.opening());
        assertEquals(0, reel.cutLoss());
        assertEquals(List.of(5L, 3L), reel.lengths());
        assertEquals(0, reel.value().applyAsLong(12));
        assertTrue(new Normaliser(problem).instance().classical());
    }

    @Test
    void parts_refuseWhatTheyCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> new Item(0, 1));
        assertThrows(IllegalArgumentException.class, () -> new Item(1, -1));
        assertThrows(IllegalArgumentException.class, () -> new Run(-1, 0));
        assertThrows(IllegalArgumentException.class, () -> new Run(0, -1));
        assertThrows(IllegalArgumentException.class, () -> new Take(-1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new Take(0, -1, 1));
        assertThrows(IllegalArgumentException.class, () -> new Take(0, 0, 0));
        List<Take> some = List.of(new Take(0, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new Draw(-1, 1, some));
        assertThrows(IllegalArgumentException.class, () -> new Draw(0, 0, some));
        assertThrows(IllegalArgumentException.class, () -> new Draw(0, 1, List.of()));
        assertEquals(0, new Draw(0, 1, some).type() + new Run(0, 0).length());
        assertThrows(IllegalArgumentException.class, () -> reel(-1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> reel(0, -1, 0));
        assertThrows(IllegalArgumentException.class, () -> reel(0, 0, -1));
        assertEquals(0, reel(0, 0, 0).supply());
    }

    private static ReelKind reel(int supply, long opening, long loss) {
        return new ReelKind(List.of(), supply, opening, loss, ONE, ReelKind.WORTHLESS);
    }
}
