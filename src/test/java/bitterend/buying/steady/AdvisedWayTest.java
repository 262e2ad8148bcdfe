package bitterend.buying.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.buying.Share;
import bitterend.buying.Study;
import bitterend.buying.steady.WayFound.Standing;
import bitterend.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which of several ways between which no difference is seen is advised. */
final class AdvisedWayTest {
    private static final int FEW = 2;
    private static final int MANY = 8;
    private static final Figure NOT_SEEN = new Figure(600_000, -500_000, 1_700_000, true);
    private static final SteadyStudy STUDY = SteadyStall.study(
            Orders.past(3, 104, week -> 2),
            List.of(SteadyStall.offer("50", 50, 20_000, 3), SteadyStall.offer("200", 200, 62_000, 3)),
            new Study.Size(5, 64, 52));

    @Test
    void fewPasts_theCheapestIsAdvised_howeverWideTheIntervals() {
        SteadyVerdict few = verdict(FEW, found(1, Standing.CHOSEN, 40, 900), found(0, Standing.TIE, 200, 100));
        assertFalse(few.tellsTies());
        assertEquals(List.of("200"), few.advised().way().offers());
    }

    @Test
    void manyPasts_thatWhichTiesLessMoneyIsAdvised() {
        SteadyVerdict many = verdict(MANY, found(1, Standing.CHOSEN, 40, 900), found(0, Standing.TIE, 200, 100));
        assertTrue(many.tellsTies());
        assertEquals(List.of("50"), many.advised().way().offers());
    }

    /** 97 of 100 are to be in time. */
    @Test
    void tieWithMoreLatePiecesThanAllowed_isNotAdvisedOverOneWithout() {
        assertEquals(
                List.of("200"),
                verdict(MANY, found(1, Standing.CHOSEN, 300, 900), found(0, Standing.TIE, 301, 100))
                        .advised()
                        .way()
                        .offers());
        for (int pasts : new int[] {FEW, MANY}) {
            assertEquals(
                    List.of("50"),
                    verdict(pasts, found(1, Standing.CHOSEN, 301, 900), found(0, Standing.TIE, 300, 1_000))
                            .advised()
                            .way()
                            .offers(),
                    "nor the cheapest, from " + pasts);
            assertEquals(
                    List.of("200"),
                    verdict(pasts, found(1, Standing.CHOSEN, 301, 900), found(0, Standing.TIE, 302, 1_000))
                            .advised()
                            .way()
                            .offers(),
                    "none is in time, from " + pasts);
        }
    }

    /** Eight futures of one past: four choose, four report. */
    @Test
    void pastsThatReport_areCounted() {
        List<Way> ways = List.of(way(1));
        List<SteadyScenario> all = SteadyStall.simulation(STUDY).scenarios(ways, Share.ALL);
        assertEquals(MANY, SteadyVerdict.of(STUDY, ways, all).pasts());
        assertEquals(FEW, SteadyVerdict.of(STUDY, ways, all.subList(0, 16)).pasts());
        assertEquals(FEW + 1, SteadyVerdict.of(STUDY, ways, all.subList(0, 18)).pasts());
    }

    private static SteadyVerdict verdict(int pasts, WayFound... found) {
        return new SteadyVerdict(STUDY, pasts * 8, pasts * 4, pasts, List.of(found));
    }

    private static Way way(int size) {
        return new Way(List.of(new Way.Rule(STUDY.sizes().get(size), Length.ofMetres(150), 1)));
    }

    private static WayFound found(int size, Standing standing, long late, long tied) {
        Figure more = standing == Standing.CHOSEN ? new Figure(0, 0, 0, true) : NOT_SEEN;
        return new WayFound(
                way(size),
                List.of(known(150_000)),
                standing,
                known(1_766_000 + more.value()),
                more,
                known(late),
                known(300_000),
                known(tied),
                new WayFound.Year(Length.ofMetres(4_000), Length.ZERO, 100, 50));
    }

    private static Figure known(long value) {
        return new Figure(value, value, value, true);
    }
}
