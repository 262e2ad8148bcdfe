package bitterend.catalogue;

import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Ratio;
import bitterend.measure.Units;

/**
 * What is done to a rope before it is cut.
 *
 * @param suits the ropes it is for
 * @param brief for a row of a table, without its number: {@code seizings}, {@code tape}
 * @param what tape, whipping, wire seizing, in full
 * @param count how many at each end of the cut
 * @param widthFrom narrowest, in diameters; zero when not stated
 * @param widthTo widest, in diameters
 * @param spacing how far apart, in diameters; zero when not stated
 * @param provenance where it comes from
 */
public record Preparation(
        Suits suits,
        String brief,
        String what,
        PartCount count,
        Ratio widthFrom,
        Ratio widthTo,
        Ratio spacing,
        Provenance provenance) {

    /** The instruction for a rope: {@code wire seizings: 3, each 20 mm to 29 mm wide, 39 mm apart}, whole millimetres rounded up. */
    public String words(Rope rope, Units units) {
        StringBuilder words = new StringBuilder(what);
        int number = count.of(rope.diameter());
        if (number > 0) {
            words.append(": ").append(number);
        }
        if (widthTo.isPositive()) {
            words.append(", each ").append(length(rope, widthFrom, units));
            if (!widthTo.equals(widthFrom)) {
                words.append(" to ").append(length(rope, widthTo, units));
            }
            words.append(" wide");
        }
        if (spacing.isPositive()) {
            words.append(", ").append(length(rope, spacing, units)).append(" apart");
        }
        return words.toString();
    }

    /** The same for a row of a table: {@code 3 seizings}, {@code tape}. */
    public String brief(Rope rope) {
        int number = count.of(rope.diameter());
        return number > 0 ? number + " " + brief : brief;
    }

    private static String length(Rope rope, Ratio diameters, Units units) {
        FineLength length = rope.diameter().times(diameters);
        return units == Units.METRIC ? LengthText.exact(length.roundedUp()) : LengthText.print(length, units);
    }
}
