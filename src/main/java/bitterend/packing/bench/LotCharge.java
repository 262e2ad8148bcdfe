package bitterend.packing.bench;

/**
 * For how many lots more an order pays when pieces of it are divided between two runs.
 *
 * @param all when all of them come off the first
 * @param some when some of them do
 * @param none when all of them come off the second
 */
record LotCharge(int all, int some, int none) {
    static final LotCharge NOTHING = new LotCharge(0, 0, 0);

    int least() {
        return Math.min(all, none);
    }

    int most() {
        return some;
    }

    /** Whether it makes a difference how they are divided. */
    boolean differs() {
        return some > least();
    }

    /** The same less what is paid in any case. */
    LotCharge aboveLeast() {
        return new LotCharge(all - least(), some - least(), none - least());
    }
}
