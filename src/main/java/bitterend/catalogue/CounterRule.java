package bitterend.catalogue;

import bitterend.measure.Length;
import bitterend.measure.Ratio;
import java.util.List;

/**
 * How the length counter of the bench measures a rope.
 *
 * @param suits the ropes it is for
 * @param ropes ids of the ropes it is for; empty for all that suit
 * @param error how far a reading may be short, as a part of it; added to pieces from {@code from} up
 * @param from shortest piece that the error is added to
 * @param factor true length over reading: 1.002 for a counter that reads two thousandths short
 * @param provenance where it comes from
 */
public record CounterRule(
        Suits suits, List<String> ropes, Ratio error, Length from, Ratio factor, Provenance provenance) {
    public CounterRule {
        ropes = List.copyOf(ropes);
        if (error.isNegative() || from.isNegative() || !factor.isPositive()) {
            throw new IllegalArgumentException("error " + error + " from " + from + ", factor " + factor);
        }
    }

    public boolean admits(Rope rope) {
        return suits.admits(rope) && (ropes.isEmpty() || ropes.contains(rope.id()));
    }
}
