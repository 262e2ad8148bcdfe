package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.market.Offer;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.packing.Prices;
import bitterend.packing.strategy.StudyStrategy;
import bitterend.stock.RisingValue;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What one packing inside a study costs and loses: weeks of 40 pieces in 12 lengths, six sizes, carried coils. */
final class StudyPackingTest {
    private static final int WEEKS = 10;

    @Test
    void packingOfFortyPieces_isQuickAndNearItsBound() {
        Study study = study();
        Simulation simulation = new Simulation(new StudyStrategy(), 1, () -> false, (done, all) -> {});
        Option mix = study.options().get(study.options().size() - 1);
        List<Long> micros = new ArrayList<>();
        long avoidable = 0;
        long useful = 0;
        for (int scenario = 0; scenario < 16; scenario++) {
            long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            Outcome outcome =
                    simulation.outcome(study, mix, List.of(), scenario).orElseThrow();
            long spent = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
            if (scenario >= 6) {
                micros.add(spent / 1000 / WEEKS);
                avoidable += outcome.avoidable().millis();
                for (int week : study.weeksOf(scenario)) {
                    useful += study.weeks().get(week).stream()
                            .mapToLong(Length::mm)
                            .sum();
                }
            }
        }
        Collections.sort(micros);
        long median = micros.get(micros.size() / 2);
        long gap = avoidable
                * 1_000_000
                / study.rope().price().of(new Length(useful)).millis();
        System.out.println("one packing in a study: median " + median + " us of processor time, worst scenario's mean "
                + micros.get(micros.size() - 1) + " us; gap " + gap + " millionths of the rope in the pieces");
        assertTrue(median < 150_000, "ten times what is aimed at: " + median + " us");
        assertTrue(gap < 20_000, "two per cent: " + gap);
    }

    private static Study study() {
        Random dice = new Random(12);
        List<Length> lengths = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            lengths.add(new Length(2_500 + dice.nextInt(3_000) * 10L));
        }
        List<List<Length>> weeks = new ArrayList<>();
        for (int week = 0; week < 26; week++) {
            List<Length> pieces = new ArrayList<>(lengths);
            while (pieces.size() < 40) {
                pieces.add(lengths.get(dice.nextInt(12)));
            }
            pieces.sort(Collections.reverseOrder());
            weeks.add(pieces);
        }
        List<Offer> offers = List.of(
                Stall.offer("50", 50, 53),
                Stall.offer("80", 80, 84),
                Stall.offer("100", 100, 104),
                Stall.offer("150", 150, 154),
                Stall.offer("200", 200, 204),
                Stall.offer("500", 500, 500));
        RisingValue value = new RisingValue(
                new UnitPrice(1_000), Stall.rope().worth(), Ratio.percent(15), new bitterend.measure.Cost(500));
        Prices prices = new Prices(
                new bitterend.measure.Cost(1_000),
                new bitterend.measure.Cost(500),
                bitterend.measure.Cost.ZERO,
                bitterend.measure.Cost.ZERO,
                bitterend.measure.Cost.ZERO,
                bitterend.measure.Cost.ZERO);
        return Study.ofOneCurve(Stall.rope(), value, prices, offers, weeks, new Study.Size(5, 16, WEEKS));
    }
}
