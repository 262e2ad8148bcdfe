package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.market.Offer;
import bitterend.measure.Length;
import bitterend.packing.Prices;
import bitterend.packing.strategy.StudyStrategy;
import bitterend.stock.StockValue;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class StudyTest {
    /** Every week two or three pieces of 30: reels of 90 hold three, those of 80 two and a remnant that holds none. */
    @Test
    void bestSize_isTheOneThatArithmeticSays() {
        List<List<Length>> weeks =
                IntStream.range(0, 30).mapToObj(week -> week(30, 30, 30)).toList();
        Verdict verdict = verdict(
                7,
                40,
                4,
                weeks,
                List.of(Stall.offer("80", 80, 80), Stall.offer("90", 90, 90), Stall.offer("100", 100, 100)));
        assertEquals("90", verdict.chosen().option().offers().get(0).id());
        assertEquals(1, verdict.chosen().option().offers().size());
        assertEquals(1_000, verdict.chosen().byMetre().millisPerMetre());
        assertEquals(Length.ZERO, verdict.chosen().perScenario().waste());
        Result eighty = single(verdict, "80");
        assertEquals(Standing.DEARER, eighty.standing());
        assertEquals(1_777, eighty.byMetre().millisPerMetre(), "2 reels of 80 for 90 of pieces: 160/90");
        assertEquals(40, eighty.perScenario().reelTenths() * 5 / 10, "2 reels in each of 4 weeks");
    }

    /**
     * Two weeks in three ask for 2 x 30, one in three for 2 x 40. Reels of 60 cost 60 and 120, reels of 80 cost 80 and
     * 80: 80 a week on the average, either way. What is left over, 20, is below the shortest piece.
     */
    @Test
    void tie_isCalledATie() {
        int ties = 0;
        int seeds = 100;
        for (int seed = 0; seed < seeds; seed++) {
            Study study =
                    study(seed, 40, 2, tiedWeeks(), List.of(Stall.offer("60", 60, 60), Stall.offer("80", 80, 80)));
            Study singles = new Study(
                    study.rope(),
                    study.worth(),
                    study.prices(),
                    study.options().subList(0, 2),
                    study.tooShort(),
                    study.weeks(),
                    study.unheld(),
                    study.size());
            Verdict verdict = HoldOutComparison.of(singles, simulation(2).scenarios(singles, Share.ALL));
            ties += verdict.ties().size() == 1 ? 1 : 0;
        }
        assertTrue(ties >= 95, "called a tie with " + ties + " of " + seeds + " seeds");
    }

    @Test
    void sameScenarios_onOneThreadOrTwo_wholeOrMerged() {
        Study study = study(
                3,
                11,
                3,
                mixedWeeks(),
                List.of(Stall.offer("60", 60, 58), Stall.offer("80", 80, 80), Stall.offer("100", 100, 96)));
        List<Scenario> whole = simulation(1).scenarios(study, Share.ALL);
        assertEquals(11, whole.size());
        assertEquals(whole, simulation(2).scenarios(study, Share.ALL));
        List<Scenario> merged = new ArrayList<>();
        for (int part = 3; part >= 1; part--) {
            merged.addAll(simulation(2).scenarios(study, new Share(part, 3)));
        }
        merged.sort(java.util.Comparator.comparingInt(Scenario::number));
        assertEquals(whole, merged);
    }

    @Test
    void cancelled_givesTheScenariosSoFar() {
        Study study = study(3, 40, 3, mixedWeeks(), List.of(Stall.offer("60", 60, 60), Stall.offer("80", 80, 80)));
        java.util.concurrent.atomic.AtomicBoolean stop = new java.util.concurrent.atomic.AtomicBoolean();
        List<Scenario> some = new Simulation(
                        new StudyStrategy(), 1, stop::get, (done, all) -> stop.compareAndSet(false, done >= 9))
                .scenarios(study, Share.ALL);
        assertEquals(9, some.size());
        assertTrue(HoldOutComparison.isEnough(some));
        assertEquals(9, HoldOutComparison.of(study, some).scenarios());
        assertEquals(simulation(1).scenarios(study, Share.ALL).subList(0, 9), some);
    }

    @Test
    void sizesThatHoldNotEveryPiece_areNamedAndNotRanked() {
        Study study = study(
                1,
                4,
                1,
                List.of(week(70, 20), week(500)),
                List.of(Stall.offer("60", 60, 60), Stall.offer("80", 80, 80)));
        assertEquals(List.of(Length.ofMetres(500)), study.unheld());
        assertEquals(1, study.tooShort().size());
        assertEquals("60", study.tooShort().get(0).offers().get(0).id());
        assertEquals(2, study.options().size());
    }

    @Test
    void wasteAndCoils_addUpToWhatWasBought() {
        StockValue byMetre = length -> length.isShorterThan(Length.ofMetres(10))
                ? bitterend.measure.Cost.ZERO
                : new bitterend.measure.UnitPrice(1000).of(length);
        Study study = Study.ofOneCurve(
                Stall.rope(),
                byMetre,
                Prices.NONE,
                List.of(Stall.offer("100", 100, 100)),
                List.of(week(30, 30)),
                new Study.Size(1, 4, 1));
        Scenario scenario = simulation(1).scenarios(study, Share.ALL).get(0);
        Outcome outcome = scenario.outcomes().get(0);
        assertEquals(Length.ofMetres(60), scenario.useful());
        assertEquals(1, outcome.reels());
        assertEquals(1, outcome.coils());
        assertEquals(Length.ZERO, outcome.waste());
        assertEquals(60_000, outcome.cost().millis(), "100 paid, 40 on the rack");
        assertEquals(0, outcome.avoidable().millis());
    }

    @Test
    void thinHistory_saysHowManyWeeksWouldSettleIt() {
        List<List<Length>> weeks = List.of(week(30, 30), week(30, 30), week(40, 40), week(30, 30), week(40, 40, 30));
        Verdict verdict = verdict(5, 400, 2, weeks, List.of(Stall.offer("60", 60, 60), Stall.offer("80", 80, 80)));
        assertTrue(verdict.isThin());
        Result rival = verdict.results().get(1);
        assertTrue(rival.history().compareTo(rival.chance()) > 0, "five weeks say less than 200 scenarios: " + rival);
        assertEquals(verdict.ties().stream().anyMatch(each -> each.more().millis() > 0), verdict.weeksToSettle() > 5);
    }

    @Test
    void errorOfHistory_nearsTheOneOfPlainWeeks() {
        // One scenario is one week of ten, values 0, 10, ..., 90 thousand: s^2/n of the weeks is known by arithmetic.
        int scenarios = 4_000;
        long[] values = new long[scenarios];
        List<int[]> weeks = new ArrayList<>();
        java.util.SplittableRandom dice = new java.util.SplittableRandom(11);
        for (int i = 0; i < scenarios; i++) {
            int week = dice.nextInt(10);
            values[i] = week * 10_000L;
            weeks.add(new int[] {week});
        }
        double known = Math.sqrt(8.25 * 10_000 * 10_000 / 9);
        long estimated = StandardErrors.ofHistory(values, weeks, 10).getAsLong();
        assertEquals(known, (double) estimated, known / 20);
        assertTrue(StandardErrors.ofHistory(values, List.copyOf(weeks), 1).isEmpty());
        assertFalse(StandardErrors.ofHistory(values, weeks, 10).isEmpty());
    }

    private static List<List<Length>> tiedWeeks() {
        List<List<Length>> weeks = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            weeks.addAll(List.of(week(30, 30), week(30, 30), week(40, 40)));
        }
        return weeks;
    }

    private static List<List<Length>> mixedWeeks() {
        return List.of(week(30, 30, 12), week(40, 25), week(), week(17, 17, 17, 9), week(55), week(8, 8, 31, 22));
    }

    private static List<Length> week(int... metres) {
        return IntStream.of(metres).mapToObj(Length::ofMetres).toList();
    }

    private static Result single(Verdict verdict, String offer) {
        return verdict.results().stream()
                .filter(each -> each.option().offers().size() == 1)
                .filter(each -> each.option().offers().get(0).id().equals(offer))
                .findFirst()
                .orElseThrow();
    }

    private static Simulation simulation(int threads) {
        return new Simulation(new StudyStrategy(), threads, () -> false, (done, all) -> {});
    }

    private static Verdict verdict(long seed, int scenarios, int length, List<List<Length>> weeks, List<Offer> offers) {
        Study study = study(seed, scenarios, length, weeks, offers);
        return HoldOutComparison.of(study, simulation(2).scenarios(study, Share.ALL));
    }

    private static Study study(long seed, int scenarios, int length, List<List<Length>> weeks, List<Offer> offers) {
        return Study.ofOneCurve(
                Stall.rope(), StockValue.NOTHING, Prices.NONE, offers, weeks, new Study.Size(seed, scenarios, length));
    }
}
