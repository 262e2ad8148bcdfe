package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Ratio;

/**
 * The yardsticks of one end on one rope.
 *
 * @param rope diameter of the rope
 * @param fid its fid
 * @param layTurn one turn of a strand
 * @param tucks tucks that are made; 0 where nothing is tucked
 * @param round rope round the eye; zero without one
 * @param across inside diameter of the eye; zero without one
 * @param tail tail of this end; zero while it is being worked out
 */
public record Yardsticks(
        Diameter rope, Fid fid, FineLength layTurn, int tucks, FineLength round, FineLength across, FineLength tail) {
    /** A little more than pi (3.1415929), exact. */
    public static final Ratio PI = new Ratio(355, 113);

    /** The same with the tail now known. */
    public Yardsticks withTail(FineLength known) {
        return new Yardsticks(rope, fid, layTurn, tucks, round, across, known);
    }

    /** One of the yardstick; rounded up to 0.0001 mm. */
    public FineLength length(Yardstick yardstick) {
        return switch (yardstick) {
            case FID -> fid.length();
            case SHORT_SECTION -> fid.shortSection();
            case DIAMETER -> rope.asLength();
            case CIRCUMFERENCE -> rope.times(PI);
            case DIAMETER_A_TUCK -> rope.asLength().times(tucks);
            case LAY_TURN -> layTurn;
            case ROUND_THE_EYE -> round;
            case ACROSS_THE_EYE -> across;
            case TAIL -> tail;
        };
    }
}
