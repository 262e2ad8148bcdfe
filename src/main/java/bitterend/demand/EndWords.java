package bitterend.demand;

import bitterend.catalogue.EyeSpec;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.RatioText;
import bitterend.measure.Units;

/** An end in words, in the form of the cell of an order: as it was written, where somebody wrote it. */
final class EndWords {
    private EndWords() {}

    static String of(EndSpec end, Units units) {
        if (!end.words().isEmpty()) {
            return end.words();
        }
        EndSpec.Options options = end.options();
        return end.termination()
                + eye(end.eye(), units)
                + fitting(end.fitting(), units)
                + (options.tail().isNothing() ? "" : " tail " + options.tail().text())
                + (options.tucks() > 0 ? " tucks " + options.tucks() : "")
                + (options.tapered() ? " tapered" : "")
                + (options.joinedTo().isEmpty() ? "" : " to " + options.joinedTo());
    }

    private static String eye(EyeSpec eye, Units units) {
        return size(eye, units)
                + (eye.pin().equals(Diameter.NONE) ? "" : " pin " + DiameterText.print(eye.pin(), units));
    }

    private static String size(EyeSpec eye, Units units) {
        if (eye instanceof EyeSpec.FlatLength flat) {
            return " length " + LengthText.print(flat.length(), units);
        }
        if (eye instanceof EyeSpec.Perimeter perimeter) {
            return " perimeter " + LengthText.print(perimeter.perimeter(), units);
        }
        if (eye instanceof EyeSpec.RoundEye round) {
            return " diameter " + LengthText.print(round.across(), units);
        }
        if (eye instanceof EyeSpec.PinRatio ratio) {
            return " ratio " + RatioText.exact(ratio.ratio());
        }
        return eye instanceof EyeSpec.OnThimble lined ? " thimble " + lined.thimble() : "";
    }

    private static String fitting(EndSpec.FittingSpec fitting, Units units) {
        if (!fitting.id().isEmpty()) {
            return " " + fitting.id();
        }
        FineLength depth = fitting.pinToBore();
        return depth.isPositive() ? " bore " + LengthText.print(depth, units) : "";
    }
}
