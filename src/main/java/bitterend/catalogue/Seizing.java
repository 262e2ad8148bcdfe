package bitterend.catalogue;

import bitterend.measure.Ratio;

/**
 * A seizing of two ropes lying side by side.
 *
 * @param stuff diameter of what it is made with, as a part of the rope's; positive
 * @param turns turns of the lower layer
 * @param riders turns of the upper layer; one fewer in a round seizing, none in a flat one
 * @param crossing crossing turns
 * @param racked whether the lower turns run in a figure of eight between the two ropes
 */
public record Seizing(Ratio stuff, int turns, int riders, int crossing, boolean racked) {
    public Seizing {
        if (!stuff.isPositive() || turns < 1 || riders < 0 || crossing < 0) {
            throw new IllegalArgumentException(
                    "seizing of " + stuff + " diameters, " + turns + " turns, " + riders + " riders, " + crossing);
        }
    }
}
