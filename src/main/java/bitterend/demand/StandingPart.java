package bitterend.demand;

import bitterend.catalogue.Provenance;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import bitterend.demand.Derivation.Line;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.List;

/** The clear rope between the throats: the finished length brought to bearing points, slack, less both bearings. */
final class StandingPart {
    private final Measuring measuring;
    private final List<MadeEnd> ends;

    StandingPart(Measuring measuring, List<MadeEnd> ends) {
        this.measuring = measuring;
        this.ends = List.copyOf(ends);
    }

    /** Clear rope for a finished length; negative when the ends alone are longer. */
    FineLength clear(FineLength finished) {
        return lines(finished).stream().map(Line::amount).reduce(FineLength.ZERO, FineLength::plus);
    }

    /** The shortest finished length, in whole millimetres, with at least so much clear rope. */
    Length shortest(FineLength clear) {
        long low = 0;
        long high = 1;
        while (clear(FineLength.ofMillimetres(high)).compareTo(clear) < 0) {
            high = Math.multiplyExact(high, 2L);
        }
        while (high - low > 1) {
            long middle = (low + high) / 2;
            if (clear(FineLength.ofMillimetres(middle)).compareTo(clear) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new Length(high);
    }

    /** From the finished length as stated to the clear rope, line by line. */
    List<Line> lines(FineLength finished) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("finished length", asMeasured(), finished, Provenance.ORDER));
        FineLength bare = finished.minus(hardware());
        ends.forEach(end -> end.measured()
                .forEach(each -> subtract(
                        lines,
                        end.name() + ": " + each.hardware().name(),
                        each.length(),
                        each.inside(),
                        each.provenance())));
        FineLength slack = unstretched(bare, lines);
        FineLength dry = beforeWetting(slack, lines);
        FineLength once = beforeBedding(dry, lines);
        if (isRing() && measuring.between() == Measuring.Between.FLAT) {
            lines.add(new Line(
                    "the other half of the ring",
                    "twice the working length goes round it",
                    once,
                    Provenance.ARITHMETIC));
        }
        if (measuring.between() == Measuring.Between.OUTSIDE) {
            ends.forEach(end -> subtract(
                    lines,
                    end.name() + ": outside of the eye",
                    Sentence.of("rope and thimble beyond the bearing"),
                    end.beyondBearing(),
                    end.eye().source()));
        }
        ends.forEach(end -> subtract(
                lines,
                end.name() + ": throat to bearing point",
                bearing(end),
                end.throatToBearing(measuring),
                end.eye().source()));
        return lines;
    }

    /** What of the finished length is hardware. */
    FineLength hardware() {
        return ends.stream()
                .flatMap(end -> end.measured().stream())
                .map(HungHardware::inside)
                .reduce(FineLength.ZERO, FineLength::plus);
    }

    private FineLength unstretched(FineLength finished, List<Line> lines) {
        Ratio extension = measuring.extension();
        FineLength slack = finished.times(Ratio.ONE.plus(extension).inverse());
        if (extension.isPositive()) {
            lines.add(new Line(
                    "slack again",
                    "divided by 1 + " + RatioText.percent(extension) + ", the extension at its measuring tension",
                    slack.minus(finished),
                    Provenance.ORDER));
        }
        return slack;
    }

    private boolean isRing() {
        return ends.get(0).termination().kind() == Termination.Kind.GROMMET;
    }

    private FineLength beforeBedding(FineLength dry, List<Line> lines) {
        Ratio bedding = measuring.bedding();
        FineLength raw = dry.times(Ratio.ONE.plus(bedding).inverse());
        if (bedding.isPositive()) {
            lines.add(new Line(
                    "before bedding in",
                    "divided by 1 + " + RatioText.percent(bedding) + ", what its first loads stretch it for good",
                    raw.minus(dry),
                    Provenance.ORDER));
        }
        return raw;
    }

    private FineLength beforeWetting(FineLength slack, List<Line> lines) {
        Ratio shrinkage = measuring.shrinkage();
        FineLength dry = slack.times(Ratio.ONE.minus(shrinkage).inverse());
        if (shrinkage.isPositive()) {
            lines.add(new Line(
                    "before wetting",
                    "divided by 1 - " + RatioText.percent(shrinkage) + ", the shrinkage on first wetting",
                    dry.minus(slack),
                    Provenance.ORDER));
        }
        return dry;
    }

    private Sentence asMeasured() {
        if (isRing()) {
            return Sentence.of(
                    measuring.between() == Measuring.Between.FLAT
                            ? "working length of the ring, laid flat"
                            : "inside circumference of the ring");
        }
        return measuring.points().equals(Measuring.Points.NONE) ? betweenEnds() : betweenPoints();
    }

    /** From one named point to the other, eyes as they are measured. */
    private Sentence betweenPoints() {
        Sentence points = ends.get(0).point().and(" to ").and(ends.get(1).point());
        return switch (measuring.between()) {
            case FLAT -> points.and(", eyes laid flat");
            case ON_PINS -> points.and(", eyes on pins of ").and(measuring.pin().asLength());
            default -> points;
        };
    }

    /** As it is measured without hardware. */
    Sentence betweenEnds() {
        return switch (measuring.between()) {
            case CIRCUMFERENCE -> Sentence.of("inside circumference");
            case BEARING_POINTS -> Sentence.of("bearing point to bearing point");
            case FLAT -> Sentence.of("inside of the eyes, laid flat");
            case ON_PINS -> Sentence.of("on pins of ").and(measuring.pin().asLength());
            case OUTSIDE -> Sentence.of("over the outside of the eyes, laid flat");
        };
    }

    private Sentence bearing(MadeEnd end) {
        if (!end.hasEye()) {
            return Sentence.of(
                    end.allowance(What.RETURN).isNothing()
                            ? "centre of the pin to the bottom of the bore"
                            : "centre of the pin to where the rope turns round the wedge");
        }
        if (end.eye().firm()) {
            return Sentence.of("of the thimble");
        }
        return switch (measuring.between()) {
            case BEARING_POINTS, CIRCUMFERENCE -> end.eye().isSoftOnPin()
                    ? Sentence.of("eye on its pin of ").and(end.eye().pin().asLength())
                    : Sentence.of("inside length of the eye");
            case FLAT, OUTSIDE -> Sentence.of("inside length of the eye, flat");
            case ON_PINS -> Sentence.of("eye on the pin of the measurement");
        };
    }

    private static void subtract(
            List<Line> lines, String label, Sentence formula, FineLength amount, Provenance provenance) {
        if (amount.isPositive()) {
            lines.add(new Line(label, formula, FineLength.ZERO.minus(amount), provenance));
        }
    }
}
