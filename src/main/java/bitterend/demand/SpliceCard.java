package bitterend.demand;

import bitterend.catalogue.Termination.Kind;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Sentence;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a splicer must know of one leg besides its marks: how long it is to come out, in which way it is measured, and what
 * either end looks like.
 *
 * @param ordered the finished length as the order states it
 * @param fresh the same leg as it is found fresh off the bench, dry and not yet loaded, by the way of measuring it; slack on
 *     the floor always, the others where the order names a pin or a tension
 * @param clear rope between the throats of the finished leg, slack
 * @param ends both ends, end A first; one for a ring
 * @param code the code it is made under; nothing where nothing is lifted
 */
public record SpliceCard(
        Outcome ordered, Map<How, Outcome> fresh, FineLength clear, List<End> ends, @Nullable CodeInForce code) {
    public SpliceCard {
        fresh = Collections.unmodifiableMap(new EnumMap<>(fresh));
        ends = List.copyOf(ends);
        if (!fresh.containsKey(How.SLACK)) {
            throw new IllegalArgumentException("every leg can be measured on the floor");
        }
    }

    /** The code it is made under; nothing where nothing is lifted. */
    public Optional<CodeInForce> findCode() {
        return Optional.ofNullable(code);
    }

    /** How a fresh leg is measured. */
    public enum How {
        /** On the floor, the eyes laid flat. */
        SLACK("slack"),
        /** Slack, every eye on its pin. */
        PINS("pins"),
        /** Under the tension that the order names. */
        TENSION("tension");

        private final String word;

        How(String word) {
            this.word = word;
        }

        /** The word used on the command line and on paper. */
        public String word() {
            return word;
        }
    }

    /** As a tape finds it on the floor: slack, dry, the eyes laid flat. */
    public Outcome floor() {
        return find(How.SLACK).orElseThrow();
    }

    /** As it is found in one of these ways; nothing where the order names no pin or no tension. */
    public Optional<Outcome> find(How how) {
        return Optional.ofNullable(fresh.get(how));
    }

    /**
     * A finished length, how it is measured, and how near it must come.
     *
     * @param length the length
     * @param measured between which points, under which conditions
     * @param tolerance either way; zero when the order states none
     */
    public record Outcome(FineLength length, Sentence measured, FineLength tolerance) {
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
