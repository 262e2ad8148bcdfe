package bitterend.measure;

/** Whole steps of the tape: millimetres, or sixteenths of an inch. */
final class TapeStep {
    private static final FineLength MILLIMETRE = FineLength.ofMillimetres(1);
    private static final FineLength SIXTEENTH = new FineLength(15_875);

    private TapeStep() {}

    /** The largest whole step that is not longer. */
    static FineLength down(FineLength length, Units units) {
        return new FineLength(length.units() - Math.floorMod(length.units(), step(units)));
    }

    /** The smallest whole step that is not shorter. */
    static FineLength up(FineLength length, Units units) {
        return new FineLength(length.units() + Math.floorMod(-length.units(), step(units)));
    }

    private static long step(Units units) {
        return (units == Units.METRIC ? MILLIMETRE : SIXTEENTH).units();
    }
}
