package bitterend.demand;

import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;

/**
 * How the finished length of an order is measured.
 *
 * @param between which points it runs between
 * @param pin the pins it is measured on, for {@link Between#ON_PINS}; otherwise {@link Diameter#NONE}
 * @param extension how much longer the rope is under the tension it is measured at; zero when slack; not negative
 * @param shrinkage how much the rope shrinks on first wetting, when the finished length is wanted after it; from 0, below 1
 * @param bedding how much longer the rope stays after its first loads, when the finished length is wanted after them; not
 *     negative
 * @param points the named points that it runs between where hardware hangs on the ends; {@link Points#NONE} without
 */
public record Measuring(Between between, Diameter pin, Ratio extension, Ratio shrinkage, Ratio bedding, Points points) {
    /** Bearing point to bearing point, slack and dry. */
    public static final Measuring USUAL = new Measuring(Between.BEARING_POINTS, Diameter.NONE, Ratio.ZERO, Ratio.ZERO);

    public Measuring {
        if ((between == Between.ON_PINS) == pin.equals(Diameter.NONE)) {
            throw new IllegalArgumentException(between + " with pin " + pin);
        }
        if (extension.isNegative()
                || bedding.isNegative()
                || shrinkage.isNegative()
                || shrinkage.compareTo(Ratio.ONE) >= 0) {
            throw new IllegalArgumentException(
                    "extension " + extension + ", shrinkage " + shrinkage + ", bedding " + bedding);
        }
    }

    /** Measured without hardware. */
    public Measuring(Between between, Diameter pin, Ratio extension, Ratio shrinkage, Ratio bedding) {
        this(between, pin, extension, shrinkage, bedding, Points.NONE);
    }

    /** Measured before bedding in, or on rope that does not bed in. */
    public Measuring(Between between, Diameter pin, Ratio extension, Ratio shrinkage) {
        this(between, pin, extension, shrinkage, Ratio.ZERO);
    }

    /** As an order states it: {@code outside}, {@code on pin 50 mm, extension 2 %}; never empty. */
    public String words() {
        String lying =
                switch (between) {
                    case BEARING_POINTS -> "pin to pin";
                    case FLAT -> "flat";
                    case ON_PINS -> "on pin " + LengthText.exact(pin.asLength());
                    case OUTSIDE -> "outside";
                    case CIRCUMFERENCE -> "circumference";
                };
        String said = points.equals(Points.NONE)
                ? lying
                : betweenPoints() + (between == Between.BEARING_POINTS ? "" : ", " + lying);
        return said + share("extension", extension) + share("shrinkage", shrinkage) + share("bedding", bedding);
    }

    /** The named points, {@code over all} or {@code shackle to end}; empty where the order names none. */
    public String betweenPoints() {
        return points.equals(Points.NONE) ? "" : points.words();
    }

    private static String share(String name, Ratio share) {
        return share.equals(Ratio.ZERO) ? "" : ", " + name + " " + RatioText.exact(share);
    }

    /** A length as it is stated, on slack rope, dry and not yet bedded in; each step rounded up to 0.0001 mm. */
    FineLength slack(FineLength stated) {
        return stated.times(Ratio.ONE.plus(extension).inverse())
                .times(Ratio.ONE.minus(shrinkage).inverse())
                .times(Ratio.ONE.plus(bedding).inverse());
    }

    /** Inside circumference of a slack ring of this stated length: twice its working length when it is laid flat. */
    FineLength round(FineLength stated) {
        FineLength slack = slack(stated);
        return between == Between.FLAT ? slack.times(2) : slack;
    }

    /**
     * Named points, one of either end: the end itself, or the far bearing of a piece of hardware on it.
     *
     * @param a of end A: {@link #END}, {@link #OUTERMOST}, the id of hardware or the word for it; empty for none
     * @param b of end B
     */
    public record Points(String a, String b) {
        /** The order names no points. */
        public static final Points NONE = new Points("", "");

        /** The bearing point of the end itself, no hardware. */
        public static final String END = "end";

        /** The far bearing of the last piece of hardware, or the end where it has none. */
        public static final String OUTERMOST = "over all";

        /** From the outermost hardware of one end to that of the other. */
        public static final Points OVER_ALL = new Points(OUTERMOST, OUTERMOST);

        String words() {
            return equals(OVER_ALL) ? OUTERMOST : a + " to " + b;
        }
    }

    /** The points a finished length runs between. */
    public enum Between {
        /** Inside of crown to inside of crown, each eye as it will work: on its pin when the order states one, else flat. */
        BEARING_POINTS,
        /** Inside of crown to inside of crown, every eye laid flat; of a ring its working length, half its circumference. */
        FLAT,
        /** Inside of crown to inside of crown, every soft eye on the pin of this measurement. */
        ON_PINS,
        /** Over the outside of the eyes laid flat, rope and thimble included. */
        OUTSIDE,
        /** Round the inside of a ring; no other assembly has one. */
        CIRCUMFERENCE
    }
}
