package bitterend.stock.worth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The curve against the definition, taken set by set, and what must hold of it for the bounds of a plan. */
final class CoilValueTest {
    private static final UnitPrice PRICE = new UnitPrice(310_000);
    private static final Length REEL = Length.ofMetres(200);

    @Test
    void curve_isTheBestOverEverySetOfPieces() {
        Random random = new Random(24);
        for (int rope = 0; rope < 60; rope++) {
            PastCuts past = cuts(random, 1 + random.nextInt(6), 30_000);
            CoilTerms terms = terms(new Length(40_000), random.nextInt(3) * 4L, random.nextInt(3) * 15_000L, 0);
            Length rack = new Length(random.nextInt(200_000));
            CoilValue value = CoilValue.of(past, terms, rack);
            double[] byHand = EverySet.values(past, terms, value.own(), rack);
            long[] steps = value.steps();
            for (int step = 0; step < steps.length; step++) {
                assertEquals(byHand[step], (double) steps[step], 1.001, "rope " + rope + ", step " + step);
            }
        }
    }

    @Test
    void curve_neverFalls_andNeverRisesWithTheRack() {
        Random random = new Random(7);
        for (int rope = 0; rope < 40; rope++) {
            CoilValue none = CoilValue.of(cuts(random, 12, 90_000), terms(REEL, 12, 10_000, 0), Length.ZERO);
            CoilValue some = none.on(Length.ofMetres(random.nextInt(300)));
            CoilValue more = some.on(some.rack().plus(Length.ofMetres(random.nextInt(300))));
            for (long mm = 0; mm < 250_000; mm += 50) {
                Length length = new Length(mm);
                assertTrue(some.of(length).compareTo(none.of(length)) <= 0);
                assertTrue(more.of(length).compareTo(some.of(length)) <= 0);
                assertTrue(none.of(length).compareTo(none.of(new Length(mm + 50))) <= 0);
                assertTrue(none.unopened(length).compareTo(none.of(length)) >= 0);
            }
        }
    }

    @Test
    void ownPrice_valuesTheUsualReelAtItsPriceOnAnEmptyRack() {
        Random random = new Random(3);
        for (int rope = 0; rope < 40; rope++) {
            CoilValue value = CoilValue.of(cuts(random, 20, 60_000), terms(REEL, 12, 10_000, 0), Length.ZERO);
            double share = (double) value.of(REEL).millis() / PRICE.of(REEL).millis();
            assertTrue(share <= 1, () -> "more than it costs: " + share);
            boolean dearest = value.own().millisPerMetre() == PRICE.millisPerMetre() * 3 / 2;
            assertTrue(share > 0.999 || dearest, () -> "less than it costs: " + share);
        }
    }

    @Test
    void shortCoils_areScrapBelowTheShortestPieceAndBelowTheFloor() {
        PastCuts past = PastCuts.of(
                List.of(Length.ofMetres(3), Length.ofMetres(7)), new Length(10), 1, PastCuts.Source.HISTORY);
        assertEquals(
                Optional.of(new Length(3_100)),
                CoilValue.of(past, terms(REEL, 12, 10_000, 0), Length.ZERO).keepFrom());
        assertEquals(
                Optional.of(Length.ofMetres(5)),
                CoilValue.of(past, terms(REEL, 12, 10_000, 5_000), Length.ZERO).keepFrom());
    }

    @Test
    void limit_saysWhyCoilsAreKeptFromThere() {
        PastCuts past = PastCuts.of(
                List.of(Length.ofMetres(3), Length.ofMetres(7)), new Length(10), 1, PastCuts.Source.HISTORY);
        CoilValue value = CoilValue.of(past, terms(REEL, 12, 10_000, 0), Length.ZERO);
        assertEquals(KeepLimit.SHORTEST_PIECE, KeepLimit.of(value));
        assertEquals(KeepLimit.COST, KeepLimit.of(value.on(Length.ofMetres(2_000))));
        assertEquals(KeepLimit.RACK, KeepLimit.of(value.on(Length.ofMetres(500_000))));
        assertEquals(KeepLimit.FLOOR, KeepLimit.of(CoilValue.of(past, terms(REEL, 12, 10_000, 5_050), Length.ZERO)));
        assertEquals(
                KeepLimit.FLOOR_ABOVE_ALL,
                KeepLimit.of(CoilValue.of(past, terms(REEL, 12, 10_000, 20_000_000), Length.ZERO)));
        assertEquals(
                KeepLimit.HOLDING,
                KeepLimit.of(CoilValue.of(past, terms(REEL, 12, 1_000_000_000_000L, 0), Length.ZERO)));
    }

    @Test
    void fullRack_makesShortCoilsScrap() {
        PastCuts past = cuts(new Random(1), 30, 40_000);
        CoilValue empty = CoilValue.of(past, terms(REEL, 12, 10_000, 0), Length.ZERO);
        CoilValue full = empty.on(Length.ofMetres(40_000));
        assertTrue(full.keepFrom().orElse(REEL).isLongerThan(empty.keepFrom().orElseThrow()));
    }

    @Test
    void ropeThatNobodyOrdered_hasAFormFromItsReel() {
        CoilValue value = CoilValue.of(PastCuts.ofReel(REEL), terms(REEL, 12, 10_000, 0), Length.ZERO);
        assertTrue(value.keepFrom().orElseThrow().isShorterThan(Length.ofMetres(25)));
        assertTrue(value.of(REEL).compareTo(value.of(Length.ofMetres(50))) > 0);
    }

    @Test
    void lengthBeyondTheCurve_isWorthWhatItsEndIs() {
        CoilValue value = CoilValue.of(PastCuts.ofReel(REEL), terms(REEL, 12, 10_000, 0), Length.ZERO);
        assertEquals(value.of(REEL), value.of(Length.ofMetres(900)));
        assertEquals(PRICE.of(Length.ofMetres(900)), value.unopened(Length.ofMetres(900)));
    }

    private static CoilTerms terms(Length reel, long interest, long room, long floorMm) {
        return CoilTerms.of(
                PRICE, reel, reel, new CoilTerms.Holding(Ratio.percent(interest), new Cost(room), new Length(floorMm)));
    }

    private static PastCuts cuts(Random random, int lengths, int longestMm) {
        List<Length> cuts = new ArrayList<>();
        for (int i = 0; i < lengths; i++) {
            Length length = new Length(1_000 + random.nextInt(longestMm));
            int count = 1 + random.nextInt(9);
            for (int n = 0; n < count; n++) {
                cuts.add(length);
            }
        }
        return PastCuts.of(cuts, new Length(10), 1 + random.nextInt(30), PastCuts.Source.HISTORY);
    }
}
