package bitterend.demand;

import bitterend.catalogue.EyeSpec;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.RatioText;

/** An end in words, in the form of the cell of an order: as it was written, where somebody wrote it. */
final class EndWords {
    private EndWords() {}

    static String of(EndSpec end) {
        if (!end.words().isEmpty()) {
            return end.words();
        }
        EndSpec.Options options = end.options();
        return end.termination()
                + eye(end.eye())
                + fitting(end.fitting())
                + (options.tail().isNothing() ? "" : " tail " + options.tail().text())
                + (options.tucks() > 0 ? " tucks " + options.tucks() : "")
                + (options.tapered() ? " tapered" : "")
                + (options.joinedTo().isEmpty() ? "" : " to " + options.joinedTo());
    }

    private static String eye(EyeSpec eye) {
        return size(eye) + (eye.pin().equals(Diameter.NONE) ? "" : " pin " + DiameterText.exact(eye.pin()));
    }

    private static String size(EyeSpec eye) {
        if (eye instanceof EyeSpec.FlatLength flat) {
            return " length " + LengthText.exact(flat.length());
        }
        if (eye instanceof EyeSpec.Perimeter perimeter) {
            return " perimeter " + LengthText.exact(perimeter.perimeter());
        }
        if (eye instanceof EyeSpec.RoundEye round) {
            return " diameter " + LengthText.exact(round.across());
        }
        if (eye instanceof EyeSpec.PinRatio ratio) {
            return " ratio " + RatioText.exact(ratio.ratio());
        }
        return eye instanceof EyeSpec.OnThimble lined ? " thimble " + lined.thimble() : "";
    }

    private static String fitting(EndSpec.FittingSpec fitting) {
        if (!fitting.id().isEmpty()) {
            return " " + fitting.id();
        }
        FineLength depth = fitting.pinToBore();
        return depth.isPositive() ? " bore " + LengthText.exact(depth) : "";
    }
}
