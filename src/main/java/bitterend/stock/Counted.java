package bitterend.stock;

import bitterend.measure.Length;
import bitterend.measure.Written;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;

/**
 * What a count found of one reel.
 *
 * @param reel its id
 * @param found whether it was there, and rope on it
 * @param length how much rope is on it; nothing where there is none
 * @param uncertainty how much shorter it may really be
 * @param known how that is known
 * @param movements how many movements the reel had when it was counted; 0 where nobody kept that
 */
public record Counted(String reel, Found found, Written length, Length uncertainty, Reel.Known known, long movements) {
    /** What was found. */
    public enum Found {
        THERE("there"),
        /** The drum is there, with no rope on it. */
        EMPTY("empty"),
        MISSING("not found");

        private final String word;

        Found(String word) {
            this.word = word;
        }

        /** The word used in lists and files. */
        public String word() {
            return word;
        }
    }

    /** So much rope is on it. */
    public static Counted of(String reel, Written length, Length uncertainty, Reel.Known known) {
        return new Counted(reel, Found.THERE, length, uncertainty, known, 0);
    }

    /** Nobody knows how long it is: it is empty, or was not found. */
    public static Counted without(String reel, Found found) {
        return new Counted(reel, found, Written.NOTHING, Length.ZERO, Reel.Known.COUNTED, 0);
    }

    /** The same, of a reel that had so many movements then. */
    public Counted after(long seen) {
        return new Counted(reel, found, length, uncertainty, known, seen);
    }

    /** Whether the reel was cut, moved or counted since. */
    public boolean isBefore(Holding now) {
        return movements > 0 && movements != now.movements();
    }

    void refuseUnlessCertain() {
        if (found == Found.THERE && !length.roundedDown().minus(uncertainty).isPositive()) {
            throw new LedgerException.Refused("nothing is certain of a length that may be wrong by all of it");
        }
    }

    /** What is booked of it: a new figure, no rope, or a hold until it is found. */
    Entry entry(Holding now, String note) {
        if (isBefore(now)) {
            throw new LedgerException.StockChanged(
                    "something was booked of reel " + reel + " since it was counted: count it again");
        }
        Reel old = now.reel();
        return switch (found) {
            case THERE -> new Entry(
                    Kind.COUNTED,
                    RopeWork.counted(old, length, uncertainty, known),
                    RopeWork.countedNote(note, old, length.roundedDown()));
            case EMPTY -> new Entry(Kind.COUNTED, old, true, note, Origin.NONE);
            case MISSING -> new Entry(
                    Kind.ON_HOLD,
                    old.withCustody(old.custody().onHold()),
                    "not found in the count" + (note.isEmpty() ? "" : ": " + note));
        };
    }
}
