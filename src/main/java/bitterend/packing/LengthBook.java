package bitterend.packing;

import bitterend.measure.Length;

/**
 * Where the rope of the reels that are cut went. The parts add up to {@code before}.
 *
 * @param before on the reels before the first cut
 * @param pieces in pieces
 * @param cutLoss lost at the cuts
 * @param leadTrim worn ends cut off
 * @param flaws cut out, up to the last run that is touched
 * @param scrap offcuts not worth keeping, the uncertain end of a finished reel included
 * @param kept remnants that come off as coils of their own
 * @param left left on the reels, flaws behind the last cut and the uncertain end included
 * @param innerWraps innermost rope that cannot be used
 */
public record LengthBook(
        Length before,
        Length pieces,
        Length cutLoss,
        Length leadTrim,
        Length flaws,
        Length scrap,
        Length kept,
        Length left,
        Length innerWraps) {

    public static final LengthBook EMPTY = new LengthBook(
            Length.ZERO,
            Length.ZERO,
            Length.ZERO,
            Length.ZERO,
            Length.ZERO,
            Length.ZERO,
            Length.ZERO,
            Length.ZERO,
            Length.ZERO);

    /** Rope that went into pieces or was lost; what is kept or left was not drawn. */
    public Length drawn() {
        return pieces.plus(waste());
    }

    /** Rope lost: cut loss, lead trim, flaws and scrap. */
    public Length waste() {
        return cutLoss.plus(leadTrim).plus(flaws).plus(scrap);
    }

    /** The same, but so much of the scrap stays on its reel. */
    public LengthBook leaving(Length rope) {
        return new LengthBook(
                before, pieces, cutLoss, leadTrim, flaws, scrap.minus(rope), kept, left.plus(rope), innerWraps);
    }

    public LengthBook plus(LengthBook other) {
        return new LengthBook(
                before.plus(other.before),
                pieces.plus(other.pieces),
                cutLoss.plus(other.cutLoss),
                leadTrim.plus(other.leadTrim),
                flaws.plus(other.flaws),
                scrap.plus(other.scrap),
                kept.plus(other.kept),
                left.plus(other.left),
                innerWraps.plus(other.innerWraps));
    }
}
