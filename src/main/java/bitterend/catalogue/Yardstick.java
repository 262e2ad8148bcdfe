package bitterend.catalogue;

import bitterend.measure.Ratio;

/** What allowances are counted in. */
public enum Yardstick {
    /** The full tubular fid of the rope. */
    FID("fid", "fids"),
    /** The short section of the fid. */
    SHORT_SECTION("short section", "short sections"),
    /** The rope's diameter. */
    DIAMETER("diameter", "diameters"),
    /** The rope's circumference, pi diameters. */
    CIRCUMFERENCE("circumference", "circumferences"),
    /** A diameter for every tuck that is made. */
    DIAMETER_A_TUCK("diameter a tuck", "diameters a tuck"),
    /** One turn of a strand round the rope. */
    LAY_TURN("lay turn", "lay turns"),
    /** The rope round the eye, throat to throat. */
    ROUND_THE_EYE("round the eye", "times round the eye"),
    /** The inside diameter of the eye when it is round. */
    ACROSS_THE_EYE("across the eye", "times across the eye"),
    /** The tail of the same end. */
    TAIL("tail", "tails"),
    /** What the same end takes up. */
    TAKE_UP("take-up", "take-ups"),
    /** The base of a clip's saddle, along the rope. */
    SADDLE("saddle", "saddles"),
    /** A diameter for every gap between the clips of the end. */
    DIAMETER_A_GAP("diameter a gap", "diameters a gap"),
    /** The bore or basket of the fitting. */
    FITTING_LENGTH("fitting length", "fitting lengths");

    private final String one;
    private final String many;

    Yardstick(String one, String many) {
        this.one = one;
        this.many = many;
    }

    /** The word used in files. */
    public String word() {
        return one;
    }

    /** The word for several, as files may use it too. */
    public String words() {
        return many;
    }

    /** The word behind a count, as printed. */
    String words(Ratio count) {
        return count.equals(Ratio.ONE) ? one : many;
    }
}
