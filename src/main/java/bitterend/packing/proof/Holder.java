package bitterend.packing.proof;

/** Where rope lies together: on the whole rack, in a lot, on one reel. A reel of unknown lot is a lot by itself. */
public sealed interface Holder permits Holder.Rack, Holder.Lot, Holder.OneReel {
    /** The whole rack. */
    Holder RACK = new Rack();

    /** Every reel there is. */
    record Rack() implements Holder {}

    /**
     * The reels of one lot.
     *
     * @param rope id of the rope
     * @param number the lot; never empty
     */
    record Lot(String rope, String number) implements Holder {
        public Lot {
            if (number.isEmpty()) {
                throw new IllegalArgumentException("a lot that is not known is named by its reel");
            }
        }
    }

    /**
     * One reel; also the lot of a reel whose lot is not known.
     *
     * @param reel id of the reel
     */
    record OneReel(String reel) implements Holder {}
}
