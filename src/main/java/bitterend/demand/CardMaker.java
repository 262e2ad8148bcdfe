package bitterend.demand;

import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Termination.Kind;
import bitterend.catalogue.Termination.What;
import bitterend.demand.Measuring.Between;
import bitterend.demand.SpliceCard.How;
import bitterend.demand.SpliceCard.Outcome;
import bitterend.measure.FineLength;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes the splice card of a leg. */
final class CardMaker {
    private final Leg leg;
    private final Measuring measuring;
    private final StandingPart standing;

    CardMaker(Leg leg) {
        this.leg = leg;
        this.measuring = leg.make().measuring();
        this.standing = leg.standingPart();
    }

    SpliceCard card(Optional<CodeInForce> code) {
        return new SpliceCard(
                ordered(),
                fresh(),
                standing.clear(leg.make().finished().exact()),
                leg.ends().stream()
                        .filter(end -> !isRing() || end.termination().kind() == Kind.GROMMET)
                        .map(this::end)
                        .toList(),
                code.orElse(null));
    }

    private Outcome ordered() {
        FineLength length = leg.make().finished().exact();
        FineLength stated = leg.make().asked().finished().of(length);
        return new Outcome(
                length,
                (overHardware() ? asStated() : between()).and(conditions()),
                stated.isPositive() ? stated.plus(leg.hardwareTolerance()) : stated);
    }

    /** The points of the rope itself that it is measured between, without hardware. */
    private Sentence between() {
        boolean eyes = isRing() || leg.ends().stream().anyMatch(MadeEnd::hasEye);
        if (!eyes && measuring.between() == Between.BEARING_POINTS) {
            return Sentence.of(ends());
        }
        return overHardware() ? standing.betweenEnds() : asStated();
    }

    private boolean overHardware() {
        return !measuring.betweenPoints().isEmpty();
    }

    /** The points that the order measures between. */
    private Sentence asStated() {
        return standing.lines(leg.make().finished().exact()).get(0).formula();
    }

    /** Tension, water and first loads, as far as the order speaks of them. */
    private String conditions() {
        List<String> words = new ArrayList<>();
        if (measuring.extension().isPositive()) {
            words.add("under the tension that stretches it by " + RatioText.percent(measuring.extension()));
        }
        if (measuring.shrinkage().isPositive()) {
            words.add("after a first wetting that shrinks it by " + RatioText.percent(measuring.shrinkage()));
        }
        if (measuring.bedding().isPositive()) {
            words.add("after first loads that lengthen it by " + RatioText.percent(measuring.bedding()));
        }
        return words.isEmpty() ? ", slack and dry" : ", " + String.join(", ", words);
    }

    /** The ways in which it can be measured when it is made. */
    private Map<How, Outcome> fresh() {
        Map<How, Outcome> fresh = new EnumMap<>(How.class);
        fresh.put(How.SLACK, floor());
        FineLength slack = measuring.slack(leg.betweenEnds());
        Sentence points = between();
        if (measuring.between() == Between.BEARING_POINTS || measuring.between() == Between.ON_PINS) {
            fresh.put(How.PINS, new Outcome(slack, points.and(", slack and dry"), tolerance()));
        }
        if (measuring.extension().isPositive()) {
            Ratio stretched = Ratio.ONE.plus(measuring.extension());
            fresh.put(
                    How.TENSION,
                    new Outcome(
                            slack.times(stretched),
                            points.and(", dry, under the tension that stretches it by "
                                    + RatioText.percent(measuring.extension())),
                            tolerance().times(stretched)));
        }
        return fresh;
    }

    /** The tolerance on slack, dry rope. */
    private FineLength tolerance() {
        FineLength stated = leg.make().finished().exact();
        return measuring.slack(leg.make().asked().finished().of(stated));
    }

    /**
     * On the floor the eyes lie flat: clear rope and what lies between throat and bearing at either end, each laid flat;
     * over the outside where the order is measured so. The tolerance shrinks as the length does.
     */
    private Outcome floor() {
        boolean outside = measuring.between() == Between.OUTSIDE;
        FineLength length = standing.clear(leg.make().finished().exact());
        for (MadeEnd end : leg.ends()) {
            length = length.plus(end.eye().flat()).plus(end.pinToBore());
            length = outside ? length.plus(end.beyondBearing()) : length;
        }
        return new Outcome(length, Sentence.of("slack and dry on the floor, " + points(outside)), tolerance());
    }

    private String points(boolean outside) {
        if (isRing()) {
            return "round the inside of the ring";
        }
        if (leg.ends().stream().noneMatch(MadeEnd::hasEye)) {
            return ends();
        }
        String side = outside ? "over the outside of the " : "inside of the ";
        return leg.ends().stream().allMatch(MadeEnd::hasEye)
                ? side + "eyes, laid flat"
                : side + "eye, laid flat, to the "
                        + (leg.ends().stream().anyMatch(end -> end.pinToBore().isPositive()) ? "pin" : "other end");
    }

    /** Without eyes a leg is measured from pin to pin, or from one end to the other. */
    private String ends() {
        return leg.ends().stream().anyMatch(end -> end.pinToBore().isPositive()) ? "pin to pin" : "end to end";
    }

    private boolean isRing() {
        return leg.ends().get(0).termination().kind() == Kind.GROMMET;
    }

    private SpliceCard.End end(MadeEnd end) {
        return new SpliceCard.End(
                end.name(),
                end.termination().name(),
                end.termination().kind(),
                end.length(What.TRIM).plus(end.length(What.TAIL)),
                end.length(What.TAKE_UP),
                eye(end));
    }

    private static SpliceCard.Eye eye(MadeEnd end) {
        EyeShape eye = end.eye();
        String lining = end.spec().eye() instanceof EyeSpec.OnThimble lined
                ? lined.thimble()
                : end.spec().fitting().id();
        return new SpliceCard.Eye(
                eye.round(), eye.flat().plus(end.pinToBore()), eye.used(), eye.pin(), throatAngle(end), lining);
    }

    private static String throatAngle(MadeEnd end) {
        if (end.termination().kind() != Kind.EYE || end.eye().firm()) {
            return "";
        }
        return end.eye().isSoftOnPin()
                ? "throat angle "
                        + end.eye().throatAngle(end.yardsticks().rope()).words()
                : "throat angle not checked, no pin or thimble stated";
    }
}
