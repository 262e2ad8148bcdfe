package bitterend.packing.rules;

import bitterend.measure.Length;
import bitterend.packing.Words;
import bitterend.packing.model.PieceToCut;
import bitterend.packing.model.RunOfReel;

/** What the rules say, as a foreman would. */
final class Sentences {
    private Sentences() {}

    static String tooLong(RunOfReel run, Load load) {
        return counted(load.pieces().size(), "piece") + " off " + run + " take "
                + Words.of(run.length().plus(new Length(run.over(load.mm()))))
                + ", cut losses between them included; it has "
                + Words.of(run.length());
    }

    static String drawn(RunOfReel run, Load load) {
        Length left = Length.max(Length.ZERO, run.length().minus(new Length(load.mm())));
        return counted(load.pieces().size(), "piece") + " off " + run + " leave " + Words.of(left) + " of "
                + Words.of(run.length());
    }

    static String notPlanned(PieceToCut piece) {
        return piece.getId() + ", " + Words.of(piece.piece().cut()) + " of "
                + piece.piece().orderedRope() + ", is not planned";
    }

    /** {@code 1 run}, {@code 2 runs}. */
    static String counted(int count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }
}
