package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;

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

    private static List<List<Length>> mixedWeeks() {
        return List.of(week(30, 30, 12), week(40, 25), week(), week(17, 17, 17, 9), week(55), week(8, 8, 31, 22));
    }

    private static List<Length> week(int... metres) {
        return IntStream.of(metres).mapToObj(Length::ofMetres).toList();
    }

    private static Simulation simulation(int threads) {
        return new Simulation(new StudyStrategy(), threads, () -> false, (done, all) -> {});
    }

    private static Study study(long seed, int scenarios, int length, List<List<Length>> weeks, List<Offer> offers) {
        return Study.ofOneCurve(
                Stall.rope(), StockValue.NOTHING, Prices.NONE, offers, weeks, new Study.Size(seed, scenarios, length));
    }
}
