package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.FineLength;

/**
 * The stuff that a seizing takes round two ropes side by side: a lower turn 2 D + pi (D + d), a rider on top of it
 * 2 D + pi (D + 3 d), with D the rope and d the stuff (geometry). Ten turns of 3 mm stuff round 12 mm rope and nine riders
 * take 1,521 mm. A racking turn lies between the ropes, which then stand its thickness apart: a figure of eight of two whole
 * circles, 2 pi (D + d). Crossing turns are counted as riders, and the ends as one rider each, which errs long.
 */
public final class SeizingFormula {
    private static final double SLACK = 1e-7;
    private static final int ENDS = 2;

    private SeizingFormula() {}

    /** One turn of the lower layer, rounded up to 0.0001 mm. */
    public static FineLength turn(Diameter rope, Diameter stuff) {
        return round(rope, rope.units() + stuff.units());
    }

    /** One turn of the upper layer, rounded up to 0.0001 mm. */
    public static FineLength rider(Diameter rope, Diameter stuff) {
        return round(rope, rope.units() + 3 * stuff.units());
    }

    /** One racking turn, rounded up to 0.0001 mm. */
    public static FineLength racking(Diameter rope, Diameter stuff) {
        return new FineLength((long) Math.ceil(2 * Math.PI * (rope.units() + stuff.units()) - SLACK));
    }

    /** All turns, riders, crossing turns and both ends of one seizing. */
    public static FineLength whole(Diameter rope, Diameter stuff, Seizing seizing) {
        FineLength lower = seizing.racked() ? racking(rope, stuff) : turn(rope, stuff);
        return lower.times(seizing.turns())
                .plus(rider(rope, stuff).times(seizing.riders() + seizing.crossing() + ENDS));
    }

    private static FineLength round(Diameter rope, long across) {
        return new FineLength((long) Math.ceil(2.0 * rope.units() + Math.PI * across - SLACK));
    }
}
