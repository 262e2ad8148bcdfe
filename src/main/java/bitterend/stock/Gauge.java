package bitterend.stock;

import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Mass;
import bitterend.measure.Ratio;
import java.math.BigInteger;
import java.util.List;

/**
 * How much rope is on a reel, from its size or its weight. Every figure is of rope that is there, so it is rounded down to
 * whole millimetres.
 *
 * <p>By size, with barrel B, depth of rope h, traverse W and rope diameter d: {@code pi W h (B + h) / d^2} (Handbook of
 * Oceanographic Winch, Wire and Cable Technology, chapter 12: 0.2618 W h (B + h) / d^2 in feet from inches). Counting whole
 * turns in whole layers, {@code n} layers of {@code m} turns hold {@code pi m (n B + n^2 d)}. Loose winding holds less
 * still: a fill of 0.85 is common practice, no source, until a reel of the type was gauged against a known length.
 */
public final class Gauge {
    public static final Ratio USUAL_FILL = Ratio.percent(85);

    /** What a reel wound too slack does to the figures. */
    public static final String SLACK =
            "Wound under less than about 5 % of its breaking strength rope lies slack, and the"
                    + " turns do not all go on (TB 55-1900-232-10 B-6.3, B-10): the fill allows for that.";

    /** What a fill that was taught by a reel of the type holds. */
    public static final String TAUGHT =
            "The fill was found on a reel of this type: rope thicker than its name and slack"
                    + " winding are in it, and are not taken off twice.";

    private Gauge() {}

    /**
     * The space that rope fills.
     *
     * @param barrel diameter of the barrel
     * @param depth from the barrel to the outside of the rope
     * @param traverse width between the flanges
     * @param rope diameter of the rope; above nothing
     */
    public record Wound(Length barrel, Length depth, Length traverse, Diameter rope) {
        public Wound {
            if (!barrel.isPositive() || !depth.isPositive() || !traverse.isPositive() || rope.units() == 0) {
                throw new IllegalArgumentException(
                        "barrel " + barrel + ", depth " + depth + ", traverse " + traverse + ", rope " + rope);
            }
        }

        /** The depth of a full reel is half of what the flange stands out. */
        public static Length depthOf(Length flange, Length barrel) {
            return new Length(flange.minus(barrel).mm() / 2);
        }
    }

    /**
     * Three figures by size.
     *
     * @param formula as if the rope filled the space without loss
     * @param turns whole turns in whole layers
     * @param safe the turns times the fill: what may be counted on
     */
    public record BySize(Length formula, Length turns, Length safe) {}

    /** By size, with the share of the whole turns that is really there. */
    public static BySize bySize(Wound wound, Ratio fill) {
        double d = millimetres(wound.rope());
        double formula = Math.PI
                * wound.traverse().mm()
                * wound.depth().mm()
                * (wound.barrel().mm() + wound.depth().mm())
                / (d * d);
        long layers = wound.depth().fine().units() / wound.rope().units();
        long side = wound.traverse().fine().units() / wound.rope().units();
        double turns = Math.PI * side * (layers * (double) wound.barrel().mm() + layers * layers * d);
        Length whole = new Length((long) Math.floor(turns));
        return new BySize(new Length((long) Math.floor(formula)), whole, new Length(fill.timesRoundedDown(whole.mm())));
    }

    /**
     * By the factor that the rope's maker prints for its size, {@code (h + B) x h x W x factor} in feet from inches (a winch
     * hirer's page; a maker's general note: the factor has rope thicker than its name in it already).
     *
     * @param factor above nothing; 0.2618 / d^2 in inches where nothing is allowed for
     */
    public static Length byFactor(Wound wound, Ratio factor) {
        double cubicMillimetres = (double) wound.depth().mm()
                * (wound.depth().mm() + wound.barrel().mm())
                * wound.traverse().mm();
        double feet = cubicMillimetres / (25.4 * 25.4 * 25.4) * factor.numerator() / factor.denominator();
        return new Length((long) Math.floor(feet * 304.8));
    }

    private static double millimetres(Diameter diameter) {
        return diameter.units() / (double) bitterend.measure.FineLength.UNITS_PER_MM;
    }

    /** The fill of a reel type: the least that was found on any of its reels, the usual one when none was gauged. */
    public static Ratio fill(List<Ratio> gauged) {
        return gauged.stream().min(Ratio::compareTo).orElse(USUAL_FILL);
    }

    /**
     * Three figures by weight.
     *
     * @param least if the rope is as heavy as its tolerance allows
     * @param expected by its stated mass
     * @param most if it is as light as its tolerance allows
     */
    public record ByWeight(Length least, Length expected, Length most) {}

    /**
     * By weight: what the reel weighs less what it weighs empty, over the mass of a metre.
     *
     * @param tolerance how far the mass of a metre may be off either way, below 1
     */
    public static ByWeight byWeight(Mass gross, Mass tare, LinearMass mass, Ratio tolerance) {
        if (gross.compareTo(tare) < 0 || mass.milligramsPerMetre() == 0 || tolerance.compareTo(Ratio.ONE) >= 0) {
            throw new IllegalArgumentException(gross + " less " + tare + " at " + mass + " +/- " + tolerance);
        }
        long grams = gross.grams() - tare.grams();
        return new ByWeight(
                length(grams, mass, Ratio.ONE.plus(tolerance)),
                length(grams, mass, Ratio.ONE),
                length(grams, mass, Ratio.ONE.minus(tolerance)));
    }

    private static Length length(long grams, LinearMass mass, Ratio heavier) {
        BigInteger millimetreMilligrams = BigInteger.valueOf(grams).multiply(BigInteger.valueOf(1_000_000));
        return new Length(millimetreMilligrams
                .multiply(BigInteger.valueOf(heavier.denominator()))
                .divide(BigInteger.valueOf(mass.milligramsPerMetre()).multiply(BigInteger.valueOf(heavier.numerator())))
                .longValueExact());
    }
}
