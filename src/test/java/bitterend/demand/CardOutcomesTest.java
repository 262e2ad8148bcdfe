package bitterend.demand;

import static bitterend.demand.Bench.fine;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Termination.Kind;
import bitterend.demand.SpliceCard.Eye;
import bitterend.demand.SpliceCard.How;
import bitterend.demand.SpliceCard.Outcome;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Sentence;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which length as measured passes what a splice card asks. */
final class CardOutcomesTest {
    private static final Sentence FLOOR = Sentence.of("slack and dry on the floor");

    /** 10 m within 15 mm: both limits pass, a ten-thousandth of a millimetre beyond either does not. */
    @ParameterizedTest
    @CsvSource({"99849999, false", "99850000, true", "100000000, true", "100150000, true", "100150001, false"})
    void length_passesUpToTheLimitsThemselves(long found, boolean passes) {
        Outcome outcome = new Outcome(fine(10_000), FLOOR, fine(15));
        assertEquals(passes, outcome.passes(new FineLength(found)));
        assertTrue(outcome.isJudged());
        assertEquals(fine(9_985), outcome.least());
        assertEquals(fine(10_015), outcome.most());
    }

    @Test
    void anyLength_passesWhereNothingIsAsked() {
        Outcome outcome = new Outcome(fine(10_000), FLOOR, FineLength.ZERO);
        assertFalse(outcome.isJudged());
        assertTrue(outcome.passes(fine(1)));
        assertTrue(outcome.passes(fine(20_000)));
    }

    @Test
    void ways_haveTheWordsOfTheCommandLine() {
        assertEquals(
                List.of("slack", "pins", "tension"),
                Stream.of(How.values()).map(How::word).toList());
    }

    @Test
    void card_findsTheWaysThatItNames() {
        Outcome outcome = new Outcome(fine(10_000), FLOOR, FineLength.ZERO);
        SpliceCard card = new SpliceCard(outcome, Map.of(How.SLACK, outcome), fine(9_000), List.of(), null);
        assertEquals(outcome, card.floor());
        assertEquals(Optional.empty(), card.find(How.TENSION));
        assertEquals(Optional.empty(), card.findCode());
        assertThrows(
                IllegalArgumentException.class,
                () -> new SpliceCard(outcome, Map.of(How.PINS, outcome), fine(9_000), List.of(), null));
    }

    @Test
    void end_hasAnEyeWhereRopeGoesRound() {
        Eye eye = new Eye(fine(619), fine(300), fine(300), Diameter.NONE, "", "");
        assertTrue(end(eye).hasEye());
        assertFalse(end(Eye.NONE).hasEye());
    }

    private static SpliceCard.End end(Eye eye) {
        return new SpliceCard.End("end A", "eye splice", Kind.EYE, fine(252), fine(176), eye);
    }
}
