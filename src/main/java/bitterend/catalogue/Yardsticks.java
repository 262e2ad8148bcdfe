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
 * @param counted tucks and clips that are made
 * @param eye the eye, {@link Eye#NONE} without one
 * @param own what the end itself asks for; {@link Own#UNKNOWN} while it is being worked out
 */
public record Yardsticks(Diameter rope, Fid fid, FineLength layTurn, Counted counted, Eye eye, Own own) {
    /** A little more than pi (3.1415929), exact. */
    public static final Ratio PI = new Ratio(355, 113);

    /** The yardsticks of an end that has not been worked out yet. */
    public Yardsticks(Diameter rope, Fid fid, FineLength layTurn, Counted counted, Eye eye) {
        this(rope, fid, layTurn, counted, eye, Own.UNKNOWN);
    }

    /**
     * What is counted instead of measured.
     *
     * @param tucks tucks that are made; 0 where nothing is tucked
     * @param clips clips that are set; 0 for none
     * @param saddle length of the saddle of such a clip; zero for none
     */
    public record Counted(int tucks, int clips, FineLength saddle) {
        public static final Counted NOTHING = new Counted(0, 0, FineLength.ZERO);

        /** So many tucks, and no clips. */
        public static Counted tucks(int tucks) {
            return new Counted(tucks, 0, FineLength.ZERO);
        }
    }

    /**
     * The eye of the end.
     *
     * @param round rope from throat to throat; of a ring its inside circumference
     * @param across inside diameter when it is round
     */
    public record Eye(FineLength round, FineLength across) {
        public static final Eye NONE = new Eye(FineLength.ZERO, FineLength.ZERO);
    }

    /**
     * What the end asks for.
     *
     * @param tail its tail
     * @param takeUp its take-up
     * @param fitting bore or basket of its fitting; zero without one
     */
    public record Own(FineLength tail, FineLength takeUp, FineLength fitting) {
        public static final Own UNKNOWN = new Own(FineLength.ZERO, FineLength.ZERO, FineLength.ZERO);
    }

    /** The same with the tail now known. */
    public Yardsticks withTail(FineLength tail) {
        return with(new Own(tail, own.takeUp(), own.fitting()));
    }

    /** The same with the take-up now known. */
    public Yardsticks withTakeUp(FineLength takeUp) {
        return with(new Own(own.tail(), takeUp, own.fitting()));
    }

    /** The same with the length of the fitting now known. */
    public Yardsticks withFitting(FineLength fitting) {
        return with(new Own(own.tail(), own.takeUp(), fitting));
    }

    private Yardsticks with(Own known) {
        return new Yardsticks(rope, fid, layTurn, counted, eye, known);
    }

    public int tucks() {
        return counted.tucks();
    }

    /** One of the yardstick; rounded up to 0.0001 mm. */
    public FineLength length(Yardstick yardstick) {
        return switch (yardstick) {
            case FID -> fid.length();
            case SHORT_SECTION -> fid.shortSection();
            case DIAMETER -> rope.asLength();
            case CIRCUMFERENCE -> rope.times(PI);
            case DIAMETER_A_TUCK -> rope.asLength().times(counted.tucks());
            case LAY_TURN -> layTurn;
            case ROUND_THE_EYE -> eye.round();
            case ACROSS_THE_EYE -> eye.across();
            case TAIL -> own.tail();
            case TAKE_UP -> own.takeUp();
            case SADDLE -> counted.saddle();
            case FITTING_LENGTH -> own.fitting();
            case DIAMETER_A_GAP -> rope.asLength().times(Math.max(0, counted.clips() - 1));
        };
    }
}
