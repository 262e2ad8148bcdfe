package bitterend.catalogue;

import bitterend.measure.FineLength;
import bitterend.measure.Ratio;

/**
 * A thimble as a dealer's sheet measures it. A sheet does not say where the groove runs: the rope is taken to lie half-way
 * between the inside of the ring and its rim, which is an estimate until the thimble is at hand.
 *
 * @param overallWidth across the rim; above the inside width
 * @param overallLength from rim to point; above the inside length
 * @param insideWidth across the inside; positive
 * @param insideLength point to crown, inside; above the inside width
 */
public record ThimbleSheet(
        FineLength overallWidth, FineLength overallLength, FineLength insideWidth, FineLength insideLength) {
    private static final Ratio HALF = new Ratio(1, 2);

    public ThimbleSheet {
        if (!isSound(overallWidth, overallLength, insideWidth, insideLength)) {
            throw new IllegalArgumentException("a thimble " + overallWidth + " by " + overallLength + ", inside "
                    + insideWidth + " by " + insideLength);
        }
    }

    /** Whether a thimble can measure so. */
    public static boolean isSound(
            FineLength overallWidth, FineLength overallLength, FineLength insideWidth, FineLength insideLength) {
        return overallWidth.compareTo(insideWidth) > 0
                && overallLength.compareTo(insideLength) > 0
                && TeardropFormula.isOne(insideWidth, insideLength)
                && TeardropFormula.isOne(overallWidth, overallLength);
    }

    /** The inside length where the sheet leaves it out: as much rim at crown and point as at the sides. */
    public static FineLength insideLength(FineLength overallWidth, FineLength overallLength, FineLength insideWidth) {
        return overallLength.minus(overallWidth.minus(insideWidth));
    }

    /** The groove, throat to throat: a teardrop half-way between inside and rim. */
    public FineLength groove() {
        return TeardropFormula.perimeter(
                overallWidth.plus(insideWidth).times(HALF),
                overallLength.plus(insideLength).times(HALF));
    }

    /** From the inside of the crown to the groove: half of the rim beside the pin. */
    public FineLength crown() {
        return overallWidth.minus(insideWidth).times(new Ratio(1, 4));
    }
}
