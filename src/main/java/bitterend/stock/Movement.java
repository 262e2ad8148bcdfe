package bitterend.stock;

import bitterend.measure.Length;
import java.time.Instant;

/**
 * One line of the ledger. Lines are added and never changed; stock is their sum.
 *
 * @param number its number in the ledger, from 1 on
 * @param at when it was written
 * @param who who wrote it
 * @param entry what happened
 * @param count its number among the movements of its reel, from 1 on
 * @param by how much rope it added to the reel, negative when it took rope away
 */
public record Movement(long number, Instant at, String who, Entry entry, long count, Length by) {

    /** What happened to a reel. */
    public enum Kind {
        RECEIVED("received"),
        CUT("cut"),
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
        CONDEMNED("condemned"),
        CORRECTED("corrected"),
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
            return this == MOVED || this == SPOILED;
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
     */
    public record Entry(Kind kind, Reel after, boolean gone, String note, Origin origin) {
        public Entry(Kind kind, Reel after, String note) {
            this(kind, after, false, note, Origin.NONE);
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
     * @param piece the piece that was cut or spoiled
     * @param undoes number of the movement it takes back; 0 when none
     */
    public record Origin(String parent, String plan, String step, String piece, long undoes) {
        public static final Origin NONE = new Origin("", "", "", "", 0);

        public static Origin ofStep(String plan, String step) {
            return new Origin("", plan, step, "", 0);
        }

        public static Origin ofCut(String plan, String piece) {
            return new Origin("", plan, "piece " + piece, piece, 0);
        }
    }
}
