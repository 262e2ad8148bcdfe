package bitterend.demand;

import bitterend.catalogue.Termination.Kind;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import java.util.List;

/**
 * What a splicer must know of one leg besides its marks: how long it is to come out, in which way it is measured, and what
 * either end looks like.
 *
 * @param ordered the finished length as the order states it
 * @param floor the same leg as a tape finds it when it is fresh off the bench: slack, dry, not yet loaded
 * @param clear rope between the throats of the finished leg, slack
 * @param ends both ends, end A first; one for a ring
 */
public record SpliceCard(Outcome ordered, Outcome floor, FineLength clear, List<End> ends) {
    public SpliceCard {
        ends = List.copyOf(ends);
    }

    /**
     * A finished length, how it is measured, and how near it must come.
     *
     * @param length the length
     * @param measured between which points, under which conditions
     * @param tolerance either way; zero when the order states none
     */
    public record Outcome(FineLength length, String measured, FineLength tolerance) {
        /** Whether the order says how near it must come. */
        public boolean isJudged() {
            return tolerance.isPositive();
        }

        /** The shortest that passes. */
        public FineLength least() {
            return length.minus(tolerance);
        }

        /** The longest that passes. */
        public FineLength most() {
            return length.plus(tolerance);
        }

        /** Whether a length as measured passes; any does when nothing is asked. */
        public boolean passes(FineLength found) {
            return !isJudged() || (found.compareTo(least()) >= 0 && found.compareTo(most()) <= 0);
        }
    }

    /**
     * One end as it is made.
     *
     * @param name {@code end A} or {@code end B}
     * @param made name of the termination
     * @param kind what is made there
     * @param tail from the cut end to the tail mark, what is trimmed off included; zero without a tail
     * @param takeUp what the standing part shortens by, on the average
     * @param eye the eye; {@link Eye#NONE} without one
     */
    public record End(String name, String made, Kind kind, FineLength tail, FineLength takeUp, Eye eye) {
        /** Whether rope goes round here. */
        public boolean hasEye() {
            return eye.round().isPositive();
        }
    }

    /**
     * An eye, or the fitting in its place.
     *
     * @param round rope from throat to throat
     * @param flat inside length laid flat; of a fitting the centre of its pin to the bottom of its bore
     * @param used inside length as it works
     * @param pin what it works on; {@link Diameter#NONE} when not stated
     * @param throatAngle what is known of the angle at its throat; empty where none counts
     * @param lining the thimble it is lined with or the fitting, by id; empty for none
     */
    public record Eye(
            FineLength round, FineLength flat, FineLength used, Diameter pin, String throatAngle, String lining) {
        public static final Eye NONE =
                new Eye(FineLength.ZERO, FineLength.ZERO, FineLength.ZERO, Diameter.NONE, "", "");
    }
}
