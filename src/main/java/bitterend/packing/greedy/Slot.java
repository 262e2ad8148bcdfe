package bitterend.packing.greedy;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.measure.Length;
import bitterend.packing.DrawPrice;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import bitterend.stock.Reel;
import java.util.Comparator;

/** A run with room for pieces. It is the same run as itself alone. */
final class Slot {
    static final Comparator<Slot> BY_ID = Comparator.comparing(Slot::id);

    private final Reel reel;
    private final int reelNumber;
    private final int run;
    private final DrawPrice draw;
    private final Length length;
    private final RunId id;
    private final String lot;
    private final String lotOfRope;
    private int number;
    private int twins;
    private int ropeNumber;
    private int lotNumber;

    /**
     * @param reelNumber counts the reels from zero
     * @param run its index from zero
     */
    Slot(Reel reel, int reelNumber, int run, DrawPrice draw) {
        this.reel = reel;
        this.reelNumber = reelNumber;
        this.run = run;
        this.draw = draw;
        length = draw.runs().get(run).length();
        id = new RunId(reel.id(), run + 1);
        lot = PlanPrice.lotOf(reel);
        lotOfRope = PlanPrice.holderOf(Bond.ONE_LOT, reel);
    }

    /** Says where it stands among all slots, and which slots it is alike while nothing is cut from their reels. */
    void number(int ofSlot, int ofTwins) {
        number = ofSlot;
        twins = ofTwins;
    }

    /** Counts its rope among the ropes and its lot among the lots of all ropes. */
    void numberLot(int ofRope, int ofLot) {
        ropeNumber = ofRope;
        lotNumber = ofLot;
    }

    int ropeNumber() {
        return ropeNumber;
    }

    /** Counts the lots from zero; a lot is of one rope. */
    int lotNumber() {
        return lotNumber;
    }

    Reel reel() {
        return reel;
    }

    int reelNumber() {
        return reelNumber;
    }

    int run() {
        return run;
    }

    DrawPrice draw() {
        return draw;
    }

    /** Sound rope in it. */
    Length length() {
        return length;
    }

    RunId id() {
        return id;
    }

    String lot() {
        return lot;
    }

    /** Counts all slots from zero. */
    int number() {
        return number;
    }

    /** Slots of one number cost the same while nothing is cut from their reels. */
    int twins() {
        return twins;
    }

    String holderOf(Bond bond) {
        return bond == Bond.ONE_REEL ? reel.id() : lotOfRope;
    }

    /** What a load leaves for one more piece, in mm. */
    long room(RunLoad load) {
        return length.mm() - load.sum().mm() - load.pieces() * draw.loss().mm();
    }

    /** Cut length of a piece that may be cut from this rope. */
    Length cut(Piece piece) {
        for (Piece.RopeChoice choice : piece.choices()) {
            if (choice.rope().equals(reel.rope())) {
                return choice.cut();
            }
        }
        throw new IllegalArgumentException(piece.id() + " may not be cut from " + reel.rope());
    }
}
