package bitterend.bench;

import bitterend.catalogue.Rope;
import bitterend.measure.Length;

/**
 * What kind of work a day brings.
 *
 * @param pieces how many
 * @param lengths how many different lengths they have, every one of them asked for, or {@link #ANY}
 * @param plain no matched sets, and an order may be split over lots for nothing: bounds know of neither
 * @param longPieces pieces of 20 m and more, remnants kept only when such a piece may be cut from them: hard to prove
 * @param sets of eight lines of several pieces so many are matched sets
 * @param coilCurve coils are worth what the coil curve says, not what the older one did
 * @param coils so many part reels of each rope lie on the rack, or {@link #ANY}: as many as go with the work
 */
record DayKind(int pieces, int lengths, boolean plain, boolean longPieces, int sets, boolean coilCurve, int coils) {
    /** Of eight lines of several pieces one is a matched set. */
    static final int USUAL_SETS = 1;

    /** Every line of an order has a length of its own; the rack is as full as it comes. */
    static final int ANY = 0;

    private static final int LINES_OF_THEIR_OWN = 1_000;
    private static final int USUAL_LENGTHS = 200;

    DayKind {
        if (pieces < 1 || lengths < 0 || lengths > pieces) {
            throw new IllegalArgumentException(lengths + " lengths of " + pieces + " pieces");
        }
    }

    /** Beyond a thousand pieces they have some 200 standard lengths. */
    static DayKind usual(int pieces) {
        return of(pieces, pieces > LINES_OF_THEIR_OWN ? USUAL_LENGTHS : ANY);
    }

    static DayKind of(int pieces, int lengths) {
        return new DayKind(pieces, lengths, false, false, USUAL_SETS, false, ANY);
    }

    /** Plain, too. */
    static DayKind ofLongPieces(int pieces) {
        return new DayKind(pieces, ANY, true, true, USUAL_SETS, false, ANY);
    }

    /** The same, made plain. */
    DayKind madePlain() {
        return new DayKind(pieces, lengths, true, longPieces, sets, coilCurve, coils);
    }

    /** The same with another share of matched sets, in eighths of the lines of several pieces. */
    DayKind withSets(int eighths) {
        return new DayKind(pieces, lengths, plain, longPieces, eighths, coilCurve, coils);
    }

    /** The same with coils worth what the coil curve says. */
    DayKind byCoilCurve() {
        return new DayKind(pieces, lengths, plain, longPieces, sets, true, coils);
    }

    /** The same with so many part reels of each rope on the rack. */
    DayKind withCoils(int ofEach) {
        return new DayKind(pieces, lengths, plain, longPieces, sets, coilCurve, ofEach);
    }

    Length shortest() {
        return longPieces ? Length.ofMetres(20) : new Length(1_500);
    }

    /** Give or take nine centimetres. */
    Length longest() {
        return Length.ofMetres(45);
    }

    /** From where a remnant is kept, and from where it is as good as new. */
    Rope.Worth worth() {
        return longPieces
                ? new Rope.Worth(Length.ofMetres(21), Length.ofMetres(45))
                : new Rope.Worth(Length.ofMetres(2), Length.ofMetres(15));
    }

    /** The most pieces that a line may ask for, so that there are lines enough for all lengths. */
    int mostOfALine() {
        return lengths == ANY ? Integer.MAX_VALUE : pieces / lengths;
    }
}
