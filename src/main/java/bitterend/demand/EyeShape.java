package bitterend.demand;

import bitterend.catalogue.EyeFormula;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.ThroatAngle;
import bitterend.catalogue.Yardsticks;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;

/**
 * An eye as it will be made: the rope round it is fixed, its length follows from what it lies on.
 *
 * @param round C: rope from throat to throat
 * @param flat inside length when it lies flat; of a thimble its throat to bearing
 * @param used inside length as it will work
 * @param across inside diameter when it is opened to a circle; zero for a thimble
 * @param pin what it works on, {@link Diameter#NONE} when not stated
 * @param firm whether no pin changes its length: lined with a thimble, or no eye at all
 * @param crown thickness of that thimble at its crown; zero without one
 * @param source where the rope round it and its length come from
 */
record EyeShape(
        FineLength round,
        FineLength flat,
        FineLength used,
        FineLength across,
        Diameter pin,
        boolean firm,
        FineLength crown,
        Provenance source) {
    /** No eye: nothing goes round, and the end bears where it ends. */
    static final EyeShape NONE = new EyeShape(
            FineLength.ZERO,
            FineLength.ZERO,
            FineLength.ZERO,
            FineLength.ZERO,
            Diameter.NONE,
            true,
            FineLength.ZERO,
            Provenance.ARITHMETIC);

    /** A ring of this inside circumference; it bears on no throat. */
    static EyeShape ring(FineLength circumference) {
        return new EyeShape(
                circumference,
                FineLength.ZERO,
                FineLength.ZERO,
                circumference.times(Yardsticks.PI.inverse()),
                Diameter.NONE,
                true,
                FineLength.ZERO,
                Provenance.ARITHMETIC);
    }

    /** Inside length on a pin of a measurement; the eye must reach round it. */
    FineLength on(Diameter measured, Diameter rope) {
        return firm ? used : EyeFormula.insideLength(round, measured, rope);
    }

    boolean reachesRound(Diameter measured, Diameter rope) {
        return firm || EyeFormula.reachesRound(round, measured, rope);
    }

    /** Whether it works on a pin without a thimble, so that its throat angle is known. */
    boolean isSoftOnPin() {
        return !firm && !pin.equals(Diameter.NONE);
    }

    ThroatAngle throatAngle(Diameter rope) {
        return EyeFormula.throatAngle(used, pin, rope);
    }
}
