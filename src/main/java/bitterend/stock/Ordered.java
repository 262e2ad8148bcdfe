package bitterend.stock;

import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.LengthsInWords;

/**
 * What was ordered when a piece was cut, so that a later change of the order can be seen.
 *
 * @param piece which piece of which line
 * @param make what it is
 * @param bond which set it belongs to
 * @param wish who wants it, and when
 * @param terms what its rope must be, and how its length is measured
 */
public record Ordered(Piece piece, Make make, Bond bond, Wish wish, Terms terms) {
    /** Of a piece that no order line asked for, or that was cut before the ledger kept this. */
    public static final Ordered NONE = new Ordered(
            new Piece("", "", 0, 0, ""),
            new Make("", "", "", Length.ZERO),
            new Bond("", ""),
            new Wish("", ""),
            Terms.NOT_KEPT);

    /**
     * Which piece of which line.
     *
     * @param order order number; empty when no order asked for it
     * @param line line within the order
     * @param number which of the line's assemblies, from 1 on
     * @param leg which of its legs, from 1 on; 0 when it has one
     * @param part part of a product; empty when it is no such part
     */
    public record Piece(String order, String line, int number, int leg, String part) {}

    /**
     * What it is.
     *
     * @param rope id of the rope ordered
     * @param finished finished length as written
     * @param ends both ends in words
     * @param needed cut length needed on the rope it was cut from
     */
    public record Make(String rope, String finished, String ends, Length needed) {
        /** The same with every length in millimetres: equal however the lengths were written, and as older ledgers have it. */
        public Make exactly() {
            String millimetres =
                    LengthText.parse(finished).value().map(LengthText::exact).orElse(finished);
            return new Make(rope, millimetres, LengthsInWords.exact(ends), needed);
        }
    }

    /**
     * The set it belongs to.
     *
     * @param set name of the set; empty when it stands alone
     * @param match {@code lot}, {@code reel}, or empty
     */
    public record Bond(String set, String match) {}

    /**
     * Who wants it, and when.
     *
     * @param customer name; empty when not stated
     * @param due day such as 2026-03-02; empty when not stated
     */
    public record Wish(String customer, String due) {}

    /**
     * What its rope must be, and how its length is measured.
     *
     * @param certificate the kind of certificate asked for; empty when none is
     * @param ownRope whether it must come off the customer's own rope
     * @param measured how the finished length is measured, in words; empty in ledgers that did not keep these terms
     */
    public record Terms(String certificate, boolean ownRope, String measured) {
        /** Of a piece that was cut before the ledger kept them: nothing is known, which is not the same as nothing asked. */
        public static final Terms NOT_KEPT = new Terms("", false, "");

        public boolean isKept() {
            return !measured.isEmpty();
        }
    }

    /** Whether anything is known of it. */
    public boolean isKnown() {
        return !piece.order().isEmpty();
    }
}
