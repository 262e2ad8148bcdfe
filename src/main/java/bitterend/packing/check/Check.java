package bitterend.packing.check;

import bitterend.packing.Rule;
import java.util.Optional;

/** Everything a plan is checked for: the hard rules of the bench, and that the plan says what is so. */
public enum Check {
    FITS_THE_RUN(Rule.FITS_THE_RUN),
    SAME_ROPE(Rule.SAME_ROPE),
    CLEAR_OF_FLAWS(Rule.CLEAR_OF_FLAWS),
    CERTIFICATE(Rule.CERTIFICATE),
    USE_BY(Rule.USE_BY),
    OWN_ROPE(Rule.OWN_ROPE),
    RESERVED(Rule.RESERVED),
    ON_HOLD(Rule.ON_HOLD),
    ONE_LOT(Rule.ONE_LOT),
    ONE_REEL(Rule.ONE_REEL),
    BEGUN_SET(Rule.BEGUN_SET),
    PINNED(Rule.PINNED),
    ISSUED(Rule.ISSUED),
    COMES_IN_TIME(Rule.COMES_IN_TIME),
    SET_WHOLE(Rule.SET_WHOLE),
    DAY("The plan is for the day that was asked for."),
    KNOWN("Every piece and reel of the plan is one of the day."),
    ONCE("Every piece is planned or unplanned, and only once."),
    LISTED("Reels and unplanned pieces are listed once, by id."),
    LEAD_TRIM("The worn end is cut off once, as long as the reel says."),
    RUNS("The runs are listed as they lie on the reel, down to the last one that is cut."),
    MARKS("Every piece begins a cut loss behind the one before and ends at its cut length."),
    CUTTING_ORDER(
            "Within a run a set is cut together; what has the fewest other homes goes first, then what is due first."),
    CUT_DAY(
            "A reel that is brought forward is cut on a working day, no earlier than it is there and before its pieces ask for it."),
    LEFT("What is left of a run and of the reel is what the cuts leave."),
    REST("What is left is kept if it is worth keeping, else scrapped."),
    BOOK("Every millimetre is booked once, where it went."),
    COST(
            "A draw costs the value that leaves the rack and its opening, changing and handling; the plan costs their sum."),
    REASON("The reason why a piece is unplanned is true."),
    CURVE("What coils are worth follows from the past, the settings and the rack of the morning."),
    BOUND("What is said to be proven is proven."),
    SIZE("The numbers of the plan can be added up.");

    private final String sentence;
    private final Optional<Rule> rule;

    Check(Rule rule) {
        this.sentence = rule.sentence();
        this.rule = Optional.of(rule);
    }

    Check(String sentence) {
        this.sentence = sentence;
        this.rule = Optional.empty();
    }

    /** What is checked, in one sentence. */
    public String sentence() {
        return sentence;
    }

    /** The rule of the bench behind it, if it is one. */
    public Optional<Rule> rule() {
        return rule;
    }
}
