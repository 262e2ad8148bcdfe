package bitterend.report;

import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Sentence;

/**
 * One mark on the tape of a reel, and the row beside it. Readings are of a counter that stands at zero at the clean end.
 *
 * @param kind what is done there
 * @param at the reading
 * @param length the rope it concerns: the piece, the trim, the coil, the flaw
 * @param left rope left on the reel behind it, inner wraps not counted
 * @param piece id of the piece; empty for anything but a cut
 * @param words the ends of a piece, or what is done
 * @param before what to do at the mark before the cut; may be empty
 * @param over how much of the reading is only what the cuts up to here were brought up to whole millimetres by
 */
public record Mark(
        Kind kind,
        Length at,
        Length length,
        Length left,
        String piece,
        Sentence words,
        String before,
        FineLength over) {
    /** A mark that no cut brought up. */
    Mark(Kind kind, Length at, Length length, Length left, String words) {
        this(kind, at, length, left, Sentence.of(words));
    }

    /** A mark that no cut brought up. */
    Mark(Kind kind, Length at, Length length, Length left, Sentence words) {
        this(kind, at, length, left, "", words, "", FineLength.ZERO);
    }

    /** The reading when every cut is exact: multiples of half an inch, say. */
    FineLength exactlyAt() {
        return at.fine().minus(over);
    }

    /** The piece, or the word for what is done. */
    public String name() {
        return kind == Kind.CUT ? piece : kind.word();
    }

    /** What happens at a mark. */
    public enum Kind {
        LEAD_TRIM("lead trim"),
        /** The counter is set to zero here. */
        CLEAN_END("clean end"),
        CUT("cut"),
        /** A stretch with a flaw comes off, and the scrap before it with it. */
        FLAW("flaw"),
        /** A coil comes off and goes back to the rack. */
        REMNANT("remnant"),
        /** An offcut not worth keeping comes off. */
        SCRAP("scrap"),
        /** Cutting stops here; the rest is kept or scrapped by what is measured. */
        MEASURE("measure"),
        /** Cutting stops here; the rest stays on the reel. */
        STAYS("rest"),
        /** The rope that can be counted on ends here. */
        COUNT_FIRST("count first"),
        INNER_WRAPS("inner wraps");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word printed for it. */
        public String word() {
            return word;
        }
    }
}
