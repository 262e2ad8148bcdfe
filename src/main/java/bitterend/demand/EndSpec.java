package bitterend.demand;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Term;
import bitterend.measure.FineLength;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One end of an assembly as the order states it; equal to another that is made alike, however that was written. In a file it is one cell: the termination, then the eye or the fitting,
 * then options, such as
 *
 * <pre>
 * double-braid-eye perimeter 600 mm
 * bury-eye length 300 mm pin 150 mm
 * bury-eye thimble T12
 * bury-eye ratio 5 pin 300 mm
 * three-strand-eye length 250 mm tucks 5 tapered
 * bury-eye length 300 mm tail 90 diameters
 * bury-eye thimble T12 with SB12 + TB8 half open
 * swaged fork-12
 * swaged bore 45 mm
 * short-splice to M24
 * sealed
 * </pre>
 *
 * @param termination id of the termination
 * @param eye the eye, {@link EyeSpec#NONE} for an end without one
 * @param fitting the metal end, {@link FittingSpec#NONE} for an end without one
 * @param options what the order asks beyond the usual
 * @param words the end as the order wrote it, in the order of the form, without who accepted what; empty for an end that
 *     nobody wrote
 */
public record EndSpec(String termination, EyeSpec eye, FittingSpec fitting, Options options, String words) {
    private static final Pattern TAIL = Pattern.compile(" tail (.+?)(?= tucks | tapered| to | with |$)");

    /** An end that nobody wrote. */
    public EndSpec(String termination, EyeSpec eye, FittingSpec fitting, Options options) {
        this(termination, eye, fitting, options, "");
    }

    /** The length of its tail as the order wrote it; empty where it asks for none, or for so many of something. */
    String tailWritten() {
        Matcher tail = TAIL.matcher(words);
        boolean fixed = options.tail().terms().stream().anyMatch(Term.Fixed.class::isInstance);
        return fixed && tail.find() ? tail.group(1) : "";
    }

    /**
     * The metal end of an order: one of the catalogue, or its depth stated outright.
     *
     * @param id id of the fitting; empty when there is none or its depth is stated
     * @param pinToBore centre of the pin to the bottom of the bore; zero when the id says it
     */
    public record FittingSpec(String id, FineLength pinToBore) {
        public static final FittingSpec NONE = new FittingSpec("", FineLength.ZERO);
    }

    /**
     * What the order asks of an end beyond the usual.
     *
     * @param tucks tucks wanted; 0 for as many as the termination asks for
     * @param tapered whether the tucks are tapered away instead of left projecting
     * @param acceptedBy who accepted a throat angle that is too wide; empty when nobody did
     * @param joinedTo id of the rope a join takes this end to; empty for the same rope
     * @param tail a tail longer than usual; nothing for the usual one
     * @param hardware what hangs on it, from the rope outwards
     */
    public record Options(
            int tucks,
            boolean tapered,
            String acceptedBy,
            String joinedTo,
            Allowance tail,
            List<HardwareSpec> hardware) {
        public static final Options NONE = new Options(0, false, "", "");

        /** Without hardware. */
        public Options(int tucks, boolean tapered, String acceptedBy, String joinedTo, Allowance tail) {
            this(tucks, tapered, acceptedBy, joinedTo, tail, List.of());
        }

        /** With the usual tail. */
        public Options(int tucks, boolean tapered, String acceptedBy, String joinedTo) {
            this(tucks, tapered, acceptedBy, joinedTo, Allowance.NOTHING);
        }

        public Options {
            hardware = List.copyOf(hardware);
            if (tucks < 0) {
                throw new IllegalArgumentException("tucks cannot be negative: " + tucks);
            }
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof EndSpec end
                && end.termination.equals(termination)
                && end.eye.equals(eye)
                && end.fitting.equals(fitting)
                && end.options.equals(options);
    }

    @Override
    public int hashCode() {
        return Objects.hash(termination, eye, fitting, options);
    }

    /** An end with neither eye nor fitting nor options. */
    public static EndSpec of(String termination) {
        return new EndSpec(termination, EyeSpec.NONE, FittingSpec.NONE, Options.NONE);
    }

    /** An end with an eye. */
    public static EndSpec of(String termination, EyeSpec eye) {
        return new EndSpec(termination, eye, FittingSpec.NONE, Options.NONE);
    }
}
