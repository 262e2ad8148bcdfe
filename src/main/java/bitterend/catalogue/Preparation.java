package bitterend.catalogue;

import bitterend.measure.Ratio;
import bitterend.measure.Sentence;

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
    public Sentence words(Rope rope) {
        int number = count.of(rope.diameter());
        Sentence words = Sentence.of(what + (number > 0 ? ": " + number : ""));
        if (widthTo.isPositive()) {
            words = words.and(", each ").upToMillimetres(rope.diameter().times(widthFrom));
            if (!widthTo.equals(widthFrom)) {
                words = words.and(" to ").upToMillimetres(rope.diameter().times(widthTo));
            }
            words = words.and(" wide");
        }
        if (spacing.isPositive()) {
            words = words.and(", ")
                    .upToMillimetres(rope.diameter().times(spacing))
                    .and(" apart");
        }
        return words;
    }

    /** The same for a row of a table: {@code seizings: 3}, {@code tape}. */
    public String brief(Rope rope) {
        int number = count.of(rope.diameter());
        return number > 0 ? brief + ": " + number : brief;
    }
}
