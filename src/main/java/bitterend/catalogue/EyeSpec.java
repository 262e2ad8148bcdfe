package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Ratio;

/** How an order states the size of an eye. The pin is what the eye will work on, {@link Diameter#NONE} when not stated. */
public sealed interface EyeSpec {
    /** An end without an eye. */
    EyeSpec NONE = new NoEye();

    /** The pin the eye will work on. */
    Diameter pin();

    /** No eye at all. */
    record NoEye() implements EyeSpec {
        @Override
        public Diameter pin() {
            return Diameter.NONE;
        }
    }

    /**
     * An eye laid flat, measured along its inside.
     *
     * @param length throat to inside of crown, flat; positive
     * @param pin the pin it will work on
     */
    record FlatLength(FineLength length, Diameter pin) implements EyeSpec {
        public FlatLength {
            requirePositive(length);
        }
    }

    /**
     * An eye stated by the way round its inside.
     *
     * @param perimeter inside perimeter; positive
     * @param pin the pin it will work on
     */
    record Perimeter(FineLength perimeter, Diameter pin) implements EyeSpec {
        public Perimeter {
            requirePositive(perimeter);
        }
    }

    /**
     * A round eye stated by its inside diameter.
     *
     * @param across inside diameter; positive
     * @param pin the pin it will work on
     */
    record RoundEye(FineLength across, Diameter pin) implements EyeSpec {
        public RoundEye {
            requirePositive(across);
        }
    }

    /**
     * An eye stated as a multiple of the pin it works on, in use.
     *
     * @param ratio inside length in use over pin diameter; positive
     * @param pin the pin; positive
     */
    record PinRatio(Ratio ratio, Diameter pin) implements EyeSpec {
        public PinRatio {
            if (!ratio.isPositive() || pin.equals(Diameter.NONE)) {
                throw new IllegalArgumentException("ratio " + ratio + " to pin " + pin);
            }
        }
    }

    /**
     * An eye lined with a thimble.
     *
     * @param thimble id of the thimble
     * @param pin the pin that goes through it
     */
    record OnThimble(String thimble, Diameter pin) implements EyeSpec {}

    private static void requirePositive(FineLength length) {
        if (!length.isPositive()) {
            throw new IllegalArgumentException("an eye must have a length: " + length);
        }
    }
}
