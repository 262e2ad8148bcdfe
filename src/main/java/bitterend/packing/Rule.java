package bitterend.packing;

import java.util.EnumSet;
import java.util.Set;

/** Every rule of the bench that a plan is weighed by. docs/rules.md is printed from this list. */
public enum Rule {
    FITS_THE_RUN(Level.HARD, "The pieces of a run, with a cut loss between neighbours, are no longer than the run."),
    SAME_ROPE(Level.HARD, "A piece comes off the rope that was ordered, or off a substitute the order allows."),
    CLEAR_OF_FLAWS(
            Level.HARD,
            "No piece crosses a flaw, the lead trim, the uncertain end, the inner wraps or rope that is held for another."),
    CERTIFICATE(Level.HARD, "A piece that needs a certificate comes off a reel that carries it."),
    USE_BY(Level.HARD, "No rope is cut after its use-by date."),
    OWN_ROPE(
            Level.HARD,
            "A customer's own rope serves that customer's order alone, and an order for own rope gets no other."),
    RESERVED(
            Level.HARD,
            "A reserved reel serves the order it is kept for, and rope that is held the order or customer it is held for."),
    ON_HOLD(Level.HARD, "A reel on hold is not cut."),
    ONE_LOT(Level.HARD, "A matched set comes off one lot of one rope."),
    ONE_REEL(Level.HARD, "A set that must match to the reel comes off one reel."),
    BEGUN_SET(
            Level.HARD,
            "What is left of a begun set comes off the lot of its cut pieces, or off their reel if it must match to the reel."),
    PINNED(Level.HARD, "A pinned piece comes off the reel it is pinned to."),
    ISSUED(
            Level.HARD,
            "A reel whose sheet is issued takes nothing but what is pinned to it, until it is posted or called back."),
    COMES_IN_TIME(
            Level.HARD,
            "A piece comes off a reel that is on order only if it need not be cut before the first day on which that reel is counted on."),
    PLANNED(Level.MEDIUM, "Every piece is planned, the urgent before the rest, class by class."),
    SET_WHOLE(Level.MEDIUM, "A matched set is planned whole or not at all, in the class of its most urgent piece."),
    STOCK_VALUE(Level.SOFT, "Cutting costs the value that leaves the rack."),
    OPENING(Level.SOFT, "A full reel costs its opening once."),
    CHANGING(Level.SOFT, "Every reel that is fetched costs its changing once."),
    HANDLING(Level.SOFT, "A run cut off whole and put aside costs its handling."),
    SPLIT_ORDER(Level.SOFT, "An order split over lots of one rope costs for every lot after the first."),
    MOVED_PIECE(Level.SOFT, "A piece moved off the reel of the earlier plan costs its moving.");

    /** What a broken rule does to a plan. */
    public enum Level {
        /** The plan cannot be cut. */
        HARD,
        /** Work is left undone. */
        MEDIUM,
        /** It costs money. */
        SOFT
    }

    private final Level level;
    private final String sentence;

    Rule(Level level, String sentence) {
        this.level = level;
        this.sentence = sentence;
    }

    public Level level() {
        return level;
    }

    /**
     * The rules that somebody in the shop can settle about a reel: by ending a hold, a reservation, an issued sheet or a pin,
     * by a paper that is still to come or by a look at old rope. Where one of them is all that keeps a piece off a reel, that
     * is worth naming. Nobody can make another rope, another customer's rope or a longer run of it.
     */
    public static Set<Rule> toSettle() {
        return EnumSet.of(ON_HOLD, RESERVED, ISSUED, PINNED, CERTIFICATE, USE_BY);
    }

    /** Those of {@link #toSettle} that are ended by giving the reel free, whatever is ordered. */
    public static Set<Rule> toGiveFree() {
        return EnumSet.of(ON_HOLD, RESERVED, ISSUED);
    }

    /** The rule in one sentence. */
    public String sentence() {
        return sentence;
    }
}
