package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.FineLength;

/**
 * The geometry of an eye: two straight legs from the throat, tangent to the circle of rope round a fitting.
 *
 * <p>With h the inside length (throat to inside of crown), d the fitting, D the rope, r = (d + D)/2 the radius of the
 * rope's centre line and s = h - d/2 the distance from throat to fitting centre:
 *
 * <pre>
 * C = 2 sqrt(s^2 - r^2) + r (pi + 2 asin(r/s))      throat angle = 2 asin(r/s)
 * </pre>
 *
 * A 12 mm rope in a flat eye of 300 mm takes 618.970 mm. Lengths round up once, to 0.0001 mm, except where stated.
 */
public final class EyeFormula {
    private static final double SLACK = 1e-7;

    private EyeFormula() {}

    /** Whether an eye of this inside length closes round the fitting: the legs must meet beyond it (s > r). */
    public static boolean closes(FineLength inside, Diameter fitting, Diameter rope) {
        return 2 * inside.units() > 2 * fitting.units() + rope.units();
    }

    /** C: rope from throat to throat along its centre line. The eye must close. */
    public static FineLength round(FineLength inside, Diameter fitting, Diameter rope) {
        requireClosing(inside, fitting, rope);
        return roundedUp(round((double) inside.units(), fitting.units(), rope.units()));
    }

    /** Throat angle of an eye of this inside length on the fitting, to the nearest 0.001 degree. The eye must close. */
    public static ThroatAngle throatAngle(FineLength inside, Diameter fitting, Diameter rope) {
        requireClosing(inside, fitting, rope);
        double r = (fitting.units() + rope.units()) / 2.0;
        double s = inside.units() - fitting.units() / 2.0;
        return new ThroatAngle(Math.round(Math.toDegrees(2 * Math.asin(r / s)) * 1000));
    }

    /** Whether so much rope, held from throat to throat, reaches round the fitting. */
    public static boolean reachesRound(FineLength round, Diameter fitting, Diameter rope) {
        return round.compareTo(choked(fitting, rope)) > 0;
    }

    /**
     * The inside length of an eye that was made with C of rope and now works on a fitting: C is held and h is solved for.
     * Rounded down to 0.0001 mm, so that a piece measured there errs long. A 300 mm flat eye of 12 mm rope is 236.5 mm
     * on a pin of 150 mm.
     */
    public static FineLength insideLength(FineLength round, Diameter fitting, Diameter rope) {
        if (!reachesRound(round, fitting, rope)) {
            throw new IllegalArgumentException(round + " does not reach round " + fitting);
        }
        double low = fitting.units() + rope.units() / 2.0;
        double high = low + round.units();
        for (int i = 0; i < 200 && high - low > SLACK / 100; i++) {
            double middle = (low + high) / 2;
            if (round(middle, fitting.units(), rope.units()) < round.units()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new FineLength((long) Math.floor(high + SLACK));
    }

    /** Rope lying in the groove of a thimble: its centre line is half a diameter outside the groove's inside line. */
    public static FineLength roundThimble(FineLength groove, ThroatAngle angle, Diameter rope) {
        double turned = Math.PI + Math.toRadians(angle.millidegrees() / 1000.0);
        return roundedUp(groove.units() + turned * rope.units() / 2.0);
    }

    /** The least that closes round a fitting, its legs crossing at once: pi (d + D). Also the rope of a round eye. */
    public static FineLength choked(Diameter fitting, Diameter rope) {
        return roundedUp(Math.PI * (fitting.units() + rope.units()));
    }

    /** Inside length laid flat that an eye must exceed to close round a fitting. */
    public static FineLength leastFlat(Diameter fitting, Diameter rope) {
        return insideLength(choked(fitting, rope), Diameter.NONE, rope);
    }

    private static double round(double inside, long fitting, long rope) {
        double r = (fitting + rope) / 2.0;
        double s = Math.max(r, inside - fitting / 2.0);
        double straight = Math.sqrt((s - r) * (s + r));
        return 2 * straight + r * (Math.PI + 2 * Math.asin(r / s));
    }

    /** Up to the next unit, leaving a computer's last digit out of account. */
    private static FineLength roundedUp(double units) {
        return new FineLength((long) Math.ceil(units - SLACK));
    }

    private static void requireClosing(FineLength inside, Diameter fitting, Diameter rope) {
        if (!closes(inside, fitting, rope)) {
            throw new IllegalArgumentException(
                    "an eye of " + inside + " does not close round " + fitting + " with rope of " + rope);
        }
    }
}
