package bitterend.stock;

import bitterend.measure.Length;
import java.time.Instant;

/**
 * One reel's part in an {@link Event}. Movements are added and never changed; stock is their sum.
 *
 * @param number its number in the ledger, from 1 on
 * @param event number of the event it belongs to
 * @param at when it was written
 * @param who who wrote it
 * @param entry what happened
 * @param count its number among the movements of its reel, from 1 on
 * @param by how much rope it added to the reel, negative when it took rope away
 */
public record Movement(long number, long event, Instant at, String who, Entry entry, long count, Length by) {

    /** What happened to a reel. */
    public enum Kind {
        RECEIVED("received"),
        CUT("cut"),
        /** A piece that came out shorter than it must be: it is open again. */
        CUT_SHORT("cut short"),
        /** A piece that was cut although nothing that is ordered may be made of it: it is a spare piece at once. */
        CUT_SPARE("cut as a spare piece"),
        KEPT("kept"),
        SCRAPPED("scrapped"),
        SPOILED("spoiled"),
        COUNTED("counted"),
        MOVED("moved"),
        REWOUND("rewound"),
        SPLIT("split"),
        ON_HOLD("on hold"),
        RELEASED("released"),
        RESERVED("reserved"),
        FLAW_FOUND("flaw found"),
        RETURNED("returned"),
        SOLD("sold"),
        SENT("sent to another loft"),
        CONDEMNED("condemned"),
        CORRECTED("corrected"),
        /** A good piece that no order wants any more. */
        MADE_SPARE("made spare"),
        /** A spare piece that another line takes. */
        GIVEN("given"),
        /** What was cut off a spare piece that was longer than the line it was given to: scrap, or a coil of the same event. */
        TRIMMED("trimmed"),
        /** A spare piece that is rope on the rack again. */
        BACK_ON_RACK("back on the rack"),
        UNDONE("undone");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word used in lists. */
        public String word() {
            return word;
        }

        /** Whether the rope and what may be cut from it stay as they were. */
        public boolean leavesTheRope() {
            return this == MOVED || isOfPieceAlone();
        }

        /** Whether all the rope is on one reel afterwards as before, whatever is known of it. */
        boolean leavesOneReel() {
            return switch (this) {
                case RECEIVED, COUNTED, MOVED, REWOUND, ON_HOLD, RELEASED, RESERVED, FLAW_FOUND, CORRECTED -> true;
                default -> false;
            };
        }

        /** Whether it happened to a piece that is cut, and to no reel. */
        public boolean isOfPieceAlone() {
            return switch (this) {
                case SPOILED, MADE_SPARE, GIVEN, TRIMMED, BACK_ON_RACK -> true;
                default -> false;
            };
        }
    }

    /**
     * What is written down of a movement.
     *
     * @param kind what happened
     * @param after the reel as it stands afterwards, or stood last when it is gone
     * @param gone whether no rope of it is left here
     * @param note why, in words; may be empty
     * @param origin what it came of
     * @param piece the piece it cut or is about
     */
    public record Entry(Kind kind, Reel after, boolean gone, String note, Origin origin, PieceCut piece) {
        public Entry(Kind kind, Reel after, String note) {
            this(kind, after, false, note, Origin.NONE);
        }

        /** About no piece. */
        public Entry(Kind kind, Reel after, boolean gone, String note, Origin origin) {
            this(kind, after, gone, note, origin, PieceCut.NONE);
        }

        public String reel() {
            return after.id();
        }

        /** Rope on the reel afterwards. */
        public Length left() {
            return gone ? Length.ZERO : after.length();
        }
    }

    /**
     * What a movement came of; texts are empty where nothing applies.
     *
     * @param parent the reel this one was cut off
     * @param plan the plan that was posted
     * @param step the step of the plan on this reel
     * @param piece the piece that was cut, spoiled or given
     * @param was the spare piece that was given to another line and is {@code piece} now
     * @param undoes number of the movement it takes back; 0 when none
     */
    public record Origin(String parent, String plan, String step, String piece, String was, long undoes) {
        public static final Origin NONE = new Origin("", "", "", "", "", 0);

        public static Origin ofStep(String plan, String step) {
            return new Origin("", plan, step, "", "", 0);
        }

        public static Origin ofCut(String plan, String piece) {
            return new Origin("", plan, "piece " + piece, piece, "", 0);
        }

        /** Of a piece, outside the steps of a plan. */
        public static Origin ofPiece(String plan, String piece) {
            return new Origin("", plan, "", piece, "", 0);
        }

        /** Of a reel that this one came off. */
        public static Origin off(String parent, String plan) {
            return new Origin(parent, plan, "", "", "", 0);
        }

        /** Against a movement that had this origin. */
        Origin against(long movement) {
            return new Origin("", plan, "", piece, was, movement);
        }
    }
}
