package bitterend.demand;

import bitterend.measure.FineLength;
import bitterend.measure.Length;

/**
 * The triangle of one leg of a sling: its length l, the height h it spans, how far out o its lower point lies from below its
 * upper one, and its angle t from the vertical.
 *
 * <pre>
 * l^2 = h^2 + o^2      h = l cos t      o = l sin t      o = h tan t
 * </pre>
 *
 * A leg of 5 m that spans 4 m reaches 3 m out, 36.9 degrees from the vertical. Lengths and angles round up once: a finished
 * length to a millimetre, height and reach to 0.0001 mm, an angle to 0.001 degree. A computer's last digits are left out of
 * account.
 */
public final class HangFormula {
    private static final double SLACK = 1e-4;
    private static final double ANGLE_SLACK = 1e-6;

    private HangFormula() {}

    /** l from height and reach, in whole millimetres. */
    public static Length length(FineLength height, FineLength out) {
        return fine(Math.hypot((double) height.units(), (double) out.units())).roundedUp();
    }

    /** l from height and angle, in whole millimetres. */
    public static Length lengthByHeight(FineLength height, LegAngle angle) {
        return fine(height.units() / Math.cos(radians(angle))).roundedUp();
    }

    /** l from reach and angle, in whole millimetres; the angle is not 0. */
    public static Length lengthByReach(FineLength out, LegAngle angle) {
        return fine(out.units() / Math.sin(radians(angle))).roundedUp();
    }

    /** The other side of a leg: reach from its height, or height from its reach, which is not above its length. */
    public static FineLength otherSide(FineLength length, FineLength side) {
        double left = ((double) length.units() - side.units()) * ((double) length.units() + side.units());
        return fine(Math.sqrt(left));
    }

    /** The height that a leg of this angle spans. */
    public static FineLength height(FineLength length, LegAngle angle) {
        return fine(length.units() * Math.cos(radians(angle)));
    }

    /** How far out a leg of this angle reaches. */
    public static FineLength reach(FineLength length, LegAngle angle) {
        return fine(length.units() * Math.sin(radians(angle)));
    }

    /** The angle of a leg that spans this height and reaches so far out, in thousandths of a degree; 90,000 for no height. */
    public static long millidegrees(FineLength height, FineLength out) {
        return millidegrees(Math.atan2((double) out.units(), (double) height.units()));
    }

    /** The angle of a leg of this length that spans this height, not above it, in thousandths of a degree. */
    public static long millidegreesByHeight(FineLength length, FineLength height) {
        return millidegrees(Math.acos((double) height.units() / length.units()));
    }

    /** The angle of a leg of this length that reaches so far out, not above it, in thousandths of a degree. */
    public static long millidegreesByReach(FineLength length, FineLength out) {
        return millidegrees(Math.asin((double) out.units() / length.units()));
    }

    private static long millidegrees(double radians) {
        return (long) Math.ceil(Math.toDegrees(radians) * 1000 - ANGLE_SLACK);
    }

    /** Half of the diagonal of a rectangle of four points: how far out each of them lies. */
    public static FineLength halfDiagonal(FineLength one, FineLength other) {
        return fine(Math.hypot((double) one.units(), (double) other.units()) / 2);
    }

    private static double radians(LegAngle angle) {
        return Math.toRadians(angle.millidegrees() / 1000.0);
    }

    private static FineLength fine(double units) {
        return new FineLength((long) Math.ceil(units - SLACK));
    }
}
