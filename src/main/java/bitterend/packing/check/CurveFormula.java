package bitterend.packing.check;

import bitterend.measure.Length;
import bitterend.stock.worth.CoilTerms;
import bitterend.stock.worth.PastCuts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The worth of coils by its definition, set by set: the pieces a coil waits for are taken from the one that gains most on
 * until one more would lower the mean. Written without a look at how the curve was made.
 */
final class CurveFormula {
    private final CoilTerms terms;
    private final List<Past> past = new ArrayList<>();
    private final double pieces;
    private final double metresAWeek;
    private final double meanPiece;

    /** A past length: how often, how long, and how many steps of the grid it fills. */
    private record Past(long count, double metres, long steps) {}

    private record Gain(double worth, long count) {}

    CurveFormula(PastCuts cuts, CoilTerms terms) {
        this.terms = terms;
        long mm = terms.grid().mm();
        double all = 0;
        long number = 0;
        for (var cut : cuts.counts().entrySet()) {
            long length = cut.getKey().mm();
            past.add(new Past(cut.getValue(), length / 1e3, (length + mm - 1) / mm));
            all += cut.getValue() * (length / 1e3);
            number += cut.getValue();
        }
        pieces = number;
        metresAWeek = all / cuts.weeks();
        meanPiece = all / number;
    }

    /** The worth at each step in 1/1000 minor unit, not rounded, at an own price in that by the metre. */
    double[] worth(double ownPrice, Length onRack) {
        double[] worth = new double[terms.steps() + 1];
        for (int step = 1; step < worth.length; step++) {
            boolean scrap = terms.grid().times(step).isShorterThan(terms.floor());
            worth[step] = scrap ? 0 : Math.max(worth[step - 1], bestSet(worth, step, ownPrice, onRack));
        }
        return worth;
    }

    private double bestSet(double[] worth, int step, double ownPrice, Length onRack) {
        double sum = -costOfWaiting(terms.grid().mm() / 1e3 * step, onRack.mm() / 1e3);
        double number = 0;
        for (Gain gain : gains(worth, step, ownPrice)) {
            if (number > 0 && gain.worth() <= sum / number) {
                break;
            }
            sum += gain.worth() * gain.count();
            number += gain.count();
        }
        return number == 0 ? 0 : sum / number;
    }

    private List<Gain> gains(double[] worth, int step, double ownPrice) {
        List<Gain> gains = new ArrayList<>();
        for (Past cut : past) {
            if (cut.steps() <= step) {
                double left = worth[(int) (step - cut.steps())];
                gains.add(new Gain(ownPrice * cut.metres() + left, cut.count()));
            }
        }
        gains.sort(Comparator.comparingDouble(Gain::worth).reversed());
        return gains;
    }

    private double costOfWaiting(double coil, double rack) {
        double everyCut = (rack + coil) / metresAWeek;
        double weeks = coil > meanPiece ? everyCut * meanPiece / coil : everyCut;
        double yearly = (double) terms.interest().numerator() / terms.interest().denominator();
        double money = yearly / 52 * coil * terms.price().millisPerMetre();
        return weeks * pieces * (terms.room().millis() + money);
    }
}
