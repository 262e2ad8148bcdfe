package bitterend.packing.check;

import bitterend.measure.Length;
import bitterend.stock.worth.CoilTerms;
import bitterend.stock.worth.PastCuts;
import java.util.ArrayList;
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

    /** The past lengths that a coil holds, the one that gains most first. The order hardly changes from step to step. */
    private final class ByGain {
        private final Past[] order = new Past[past.size()];
        private final double[] gains = new double[past.size()];
        private int size;

        int size() {
            return size;
        }

        double at(int rank) {
            return gains[rank];
        }

        long count(int rank) {
            return order[rank].count();
        }

        void rank(double[] worth, int step, double ownPrice) {
            while (size < order.length && past.get(size).steps() <= step) {
                order[size] = past.get(size);
                size++;
            }
            for (int next = 0; next < size; next++) {
                Past cut = order[next];
                insert(cut, ownPrice * cut.metres() + worth[(int) (step - cut.steps())], next);
            }
        }

        /** Moves those before it that gain less up by one. */
        private void insert(Past cut, double gain, int last) {
            int rank = last;
            while (rank > 0 && gains[rank - 1] < gain) {
                order[rank] = order[rank - 1];
                gains[rank] = gains[rank - 1];
                rank--;
            }
            order[rank] = cut;
            gains[rank] = gain;
        }
    }

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
        ByGain gains = new ByGain();
        double grid = terms.grid().mm() / 1e3;
        double rack = onRack.mm() / 1e3;
        for (int step = 1; step < worth.length; step++) {
            gains.rank(worth, step, ownPrice);
            boolean scrap = terms.grid().times(step).isShorterThan(terms.floor());
            worth[step] = scrap ? 0 : Math.max(worth[step - 1], bestSet(gains, costOfWaiting(grid * step, rack)));
        }
        return worth;
    }

    private double bestSet(ByGain gains, double costOfWaiting) {
        double sum = -costOfWaiting;
        double number = 0;
        for (int rank = 0; rank < gains.size(); rank++) {
            double gain = gains.at(rank);
            if (number > 0 && gain <= sum / number) {
                break;
            }
            long count = gains.count(rank);
            sum += gain * count;
            number += count;
        }
        return number == 0 ? 0 : sum / number;
    }

    private double costOfWaiting(double coil, double rack) {
        double everyCut = (rack + coil) / metresAWeek;
        double weeks = coil > meanPiece ? everyCut * meanPiece / coil : everyCut;
        double yearly = (double) terms.interest().numerator() / terms.interest().denominator();
        double money = yearly / 52 * coil * terms.price().millisPerMetre();
        return weeks * pieces * (terms.room().millis() + money);
    }
}
