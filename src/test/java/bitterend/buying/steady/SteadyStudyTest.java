package bitterend.buying.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.buying.Share;
import bitterend.buying.Study;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

final class SteadyStudyTest {
    private static final Study.Size SIZE = new Study.Size(5, 48, 52);

    /** Pieces of 10 m less the loss of their cut: nothing is left over of either size, and there is no work and next to no interest. */
    @Test
    void differenceByMetre_isThatOfThePrices() {
        Keeping bare = new Keeping(0, Cost.ZERO, Cost.ZERO, new Ratio(1, 10_000), new Cost(1));
        PastWeeks past = Orders.past(2, 104, week -> 2)
                .with(order -> order.stream().map(cut -> Length.ofMetres(10)).toList());
        SteadyStudy study = SteadyStall.study(
                past,
                List.of(SteadyStall.offer("100", 100, 33_000, 3), SteadyStall.offer("200", 200, 62_000, 3)),
                SIZE,
                bare,
                SteadyStudy.Goal.USUAL);
        SteadyVerdict verdict = SteadyStall.verdict(study);
        assertEquals(List.of("200"), verdict.found().get(0).way().offers());
        Figure more = SteadyStall.of(verdict, "100").more();
        assertTrue(more.low() <= 20_000 && more.high() >= 20_000, more + " against 0.20 a metre");
        assertTrue(more.high() - more.low() < 1_000, "tight by the metre: " + more);
        assertEquals(310_000.0, (double) verdict.found().get(0).byMetre().value(), 1_000.0);
    }

    @Test
    void ownCost_doesNotDependOnItsRival() {
        PastWeeks past = Orders.past(3, 80, week -> 2);
        Figure beside = SteadyStall.of(verdict(past, 60_000), "100").byMetre();
        Figure besideOther = SteadyStall.of(verdict(past, 50_000), "100").byMetre();
        assertEquals(beside, besideOther);
    }

    private static SteadyVerdict verdict(PastWeeks past, long rival) {
        return SteadyStall.verdict(SteadyStall.study(
                past,
                List.of(SteadyStall.offer("100", 100, 33_000, 3), SteadyStall.offer("200", 200, rival, 3)),
                SIZE));
    }

    /** Rope used: about 66 m a week. */
    @Test
    void reelForYears_isNotRecommended_thoughItIsCheaper() {
        SteadyVerdict verdict = SteadyStall.verdict(SteadyStall.study(
                Orders.past(3, 104, week -> 2),
                List.of(SteadyStall.offer("200", 200, 62_000, 3), SteadyStall.offer("5000", 5_000, 1_200_000, 3)),
                SIZE));
        assertEquals(List.of("200"), verdict.found().get(0).way().offers());
        assertEquals(WayFound.Standing.TOO_MUCH, SteadyStall.of(verdict, "5000").standing());
    }

    @Test
    void sizesThatCannotBeHadAgain_orAreTooShort_areLeftOutByName() {
        SteadyStudy study = SteadyStall.study(
                Orders.past(3, 104, week -> 2),
                List.of(
                        SteadyStall.offer("10", 10, 3_000, 3),
                        SteadyStall.limited(SteadyStall.offer("150", 150, 100, 3), 1, 1),
                        SteadyStall.offer("200", 200, 62_000, 3)),
                SIZE);
        assertEquals(1, study.sizes().size());
        assertEquals(
                List.of("10 TOO_SHORT", "150 TOO_FEW"),
                study.notBought().stream()
                        .map(each -> each.offer().id() + " " + each.why())
                        .toList());
    }

    /** A long lead needs a higher point; what is chosen is in time in the futures that report, too, but for chance. */
    @Test
    void recommendedWay_isInTime_andALongerLeadTiesMoreMoney() {
        PastWeeks past = Orders.past(7, 104, Orders.seasonal(3));
        WayFound soon = alone(past, 3);
        WayFound late = alone(past, 40);
        assertTrue(soon.late().value() <= 450, soon.late().toString());
        assertTrue(late.late().value() <= 450, late.late().toString());
        assertTrue(late.way().usual().point().isLongerThan(soon.way().usual().point()));
        assertTrue(late.tied().value() > soon.tied().value());
    }

    /** What a year counts after the warm-up is what ten years count: nothing is left of how the rack began. */
    @Test
    void warmUp_outlastsALongLead() {
        Figure year = thereWithLead(400, 52);
        Figure tenYears = thereWithLead(400, 520);
        assertTrue(year.value() < tenYears.value() * 5 / 4, year + " against " + tenYears);
        assertTrue(year.value() > tenYears.value() * 4 / 5, year + " against " + tenYears);
    }

    /** A rack that lasts for a year has nothing late and orders nothing; an empty one with a long lead has pieces late; in the long run both are alike. */
    @Test
    void rackThereIs_isWhatTheFuturesStartFrom() {
        Lived full = livedFrom(new StartingRack(true, List.of(Length.ofMetres(9_000)), List.of(), List.of()));
        assertEquals(0, full.late());
        assertEquals(0, full.reels());
        assertTrue(full.stock().isLongerThan(Length.ofMetres(5_000)));
        Lived empty = livedFrom(new StartingRack(true, List.of(), List.of(), List.of()));
        assertTrue(empty.late() > 0 && empty.reels() > 0, empty.toString());
        StartingRack.Coming soon = new StartingRack.Coming(1, Length.ofMetres(9_000));
        Lived coming = livedFrom(new StartingRack(true, List.of(), List.of(soon), List.of()));
        assertEquals(0, coming.reels(), "what is on order counts");
        assertTrue(coming.late() < empty.late(), coming + " against " + empty);
        List<Length> orders = List.of(Length.ofMetres(20), Length.ofMetres(20));
        Lived waiting = livedFrom(new StartingRack(true, List.of(Length.ofMetres(9_000)), List.of(), orders));
        assertEquals(full.pieces(), waiting.pieces(), "what waited before is none of the pieces");
        assertEquals(full.used().plus(Length.ofMetres(40)), waiting.used());
    }

    private static Lived livedFrom(StartingRack rack) {
        SteadyStudy study = SteadyStall.study(
                        Orders.past(3, 104, week -> 2),
                        List.of(SteadyStall.offer("200", 200, 62_000, 40)),
                        new Study.Size(5, 4, 52))
                .from(rack);
        List<Way> ways = List.of(new Way(List.of(new Way.Rule(study.sizes().get(0), Length.ofMetres(400), 1))));
        return SteadyStall.simulation(study)
                .scenarios(ways, Share.ALL)
                .get(0)
                .lived()
                .get(0);
    }

    private static Figure thereWithLead(int days, int weeks) {
        SteadyStudy study = SteadyStall.study(
                Orders.past(3, 104, week -> 2),
                List.of(SteadyStall.offer("200", 200, 62_000, days)),
                new Study.Size(5, 64, weeks));
        SizeOnOffer size = study.sizes().get(0);
        Length use = study.weekly().times(size.lead().mostWeeks() + 1);
        List<Way> ways = List.of(new Way(List.of(new Way.Rule(size, use, 1))));
        return SteadyVerdict.of(study, ways, SteadyStall.simulation(study).scenarios(ways, Share.ALL))
                .found()
                .get(0)
                .stock();
    }

    private static WayFound alone(PastWeeks past, int days) {
        return SteadyStall.verdict(SteadyStall.study(past, List.of(SteadyStall.offer("200", 200, 62_000, days)), SIZE))
                .found()
                .get(0);
    }

    /** Both sizes can be in time with a high enough point, also the one that is dropped early for its price. */
    @Test
    void dearerSize_isNotCalledLateForAPointThatIsTooLow() {
        for (int seed = 0; seed < 4; seed++) {
            SteadyVerdict verdict = SteadyStall.verdict(SteadyStall.study(
                    Orders.past(seed, 104, week -> 2),
                    List.of(SteadyStall.offer("100", 100, 39_000, 3), SteadyStall.offer("200", 200, 62_000, 3)),
                    SIZE));
            assertEquals(
                    WayFound.Standing.DEARER,
                    SteadyStall.of(verdict, "100").standing(),
                    seed + ": " + SteadyStall.of(verdict, "100").late());
        }
    }

    @Test
    void cheapButSlowSize_isTriedWithAQuickOneAsAStopgap() {
        SteadyVerdict verdict = SteadyStall.verdict(SteadyStall.study(
                Orders.past(3, 104, week -> 2),
                List.of(SteadyStall.offer("100", 100, 36_000, 2), SteadyStall.offer("200", 200, 62_000, 40)),
                SIZE));
        assertEquals(3, verdict.found().size());
        WayFound both = SteadyStall.of(verdict, "200", "100");
        assertTrue(both.byMetre().value()
                < SteadyStall.of(verdict, "100").byMetre().value());
        assertTrue(both.late().value() <= 300, both.late().toString());
    }

    @Test
    void sameFutures_onOneThreadOrTwo_wholeOrMerged() {
        SteadyStudy study = SteadyStall.study(
                Orders.past(3, 60, week -> 1),
                List.of(SteadyStall.offer("100", 100, 33_000, 3), SteadyStall.offer("200", 200, 60_000, 12)),
                new Study.Size(3, 11, 20));
        SteadySimulation one = new SteadySimulation(study, 1, () -> false, (done, all) -> {});
        List<Way> ways = one.ways();
        assertEquals(
                ways.stream().map(Way::note).toList(),
                SteadyStall.simulation(study).ways().stream().map(Way::note).toList());
        List<SteadyScenario> whole = one.scenarios(ways, Share.ALL);
        assertEquals(whole, SteadyStall.simulation(study).scenarios(ways, Share.ALL));
        List<SteadyScenario> merged = new ArrayList<>();
        for (int part = 3; part >= 1; part--) {
            merged.addAll(SteadyStall.simulation(study).scenarios(ways, new Share(part, 3)));
        }
        merged.sort(Comparator.comparingInt(SteadyScenario::number));
        assertEquals(whole, merged);
    }

    @Test
    void cancelled_givesTheFuturesSoFar() {
        SteadyStudy study = SteadyStall.study(
                Orders.past(3, 60, week -> 1), List.of(SteadyStall.offer("100", 100, 33_000, 3)), SIZE);
        List<Way> ways = SteadyStall.simulation(study).ways();
        AtomicBoolean stop = new AtomicBoolean();
        List<SteadyScenario> some = new SteadySimulation(
                        study, 1, stop::get, (done, all) -> stop.compareAndSet(false, done >= 9))
                .scenarios(ways, Share.ALL);
        assertEquals(9, some.size());
        assertTrue(SteadyVerdict.isEnough(some));
        stop.set(true);
        assertEquals(List.of(), new SteadySimulation(study, 1, stop::get, (done, all) -> {}).ways());
    }

    /** What came, less what was used and what more is there, is scrap; nothing is lost or made on the way. */
    @Test
    void ropeAddsUp() {
        SteadyStudy study = SteadyStall.study(
                Orders.past(3, 60, week -> 1), List.of(SteadyStall.offer("100", 100, 33_000, 3)), SIZE);
        List<Way> ways = SteadyStall.simulation(study).ways();
        for (SteadyScenario scenario : SteadyStall.simulation(study).scenarios(ways, new Share(1, 4))) {
            for (Lived lived : scenario.lived()) {
                assertTrue(
                        !lived.scrap().isNegative()
                                && lived.scrap().mm() < lived.used().mm() / 5,
                        lived.toString());
                assertTrue(lived.late() <= lived.pieces());
            }
        }
    }
}
