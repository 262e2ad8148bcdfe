package bitterend.demand;

import bitterend.catalogue.EyeFormula;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.catalogue.ThroatAngle;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Ratio;
import bitterend.measure.Sentence;

/** Whether a leg can be made at all: its ends suit its use, its eyes open, its clear rope is long enough. */
final class Feasibility {
    /** 29 CFR 1926.251(d): at most 60 degrees in slings. */
    static final ThroatAngle WIDEST = ThroatAngle.ofDegrees(60);

    /** From here a wide eye is worth a word. Common practice, no source. */
    static final ThroatAngle WIDE = ThroatAngle.ofDegrees(30);

    private final SpliceBook splices;

    Feasibility(SpliceBook splices) {
        this.splices = splices;
    }

    /** Tells every reason against a leg and every warning about it. */
    void check(Leg leg, Assembly assembly, Problems problems) {
        Assembly.Use use = assembly.terms().use();
        checkRing(leg, problems);
        new MeasuredPoints(leg.make().measuring().points()).check(leg, problems);
        new HangNotes(leg, assembly).check(problems);
        new CodeCheck(splices.codes()).check(leg, assembly.terms(), problems);
        new EndSafety().check(leg, assembly.terms(), problems);
        leg.ends().forEach(end -> checkAngle(leg, end, use, problems));
        if (reachesRoundMeasuringPins(leg, problems)) {
            new ClearRopeCheck(splices, leg).check(assembly.terms(), problems);
        }
    }

    /** A grommet has no ends: it stands in end A, and end B is left plain. */
    private static void checkRing(Leg leg, Problems problems) {
        checkRingMeasure(leg, problems);
        MadeEnd other = leg.ends().get(1);
        boolean ringA = leg.ends().get(0).termination().kind() == Termination.Kind.GROMMET;
        if (other.termination().kind() == Termination.Kind.GROMMET) {
            problems.error(other.name(), other.termination().id(), "a grommet in end a, and end b left blank");
        } else if (ringA && !other.termination().allowances().isEmpty()) {
            problems.error(other.name(), other.termination().id(), "nothing: a grommet has no other end");
        }
    }

    private static void checkRingMeasure(Leg leg, Problems problems) {
        Measuring.Between between = leg.make().measuring().between();
        boolean ring = leg.ends().get(0).termination().kind() == Termination.Kind.GROMMET;
        if (ring && (between == Measuring.Between.OUTSIDE || between == Measuring.Between.ON_PINS)) {
            problems.error(
                    "measured",
                    "a ring so measured",
                    "circumference, or flat for the working length of a ring laid flat");
        } else if (!ring && between == Measuring.Between.CIRCUMFERENCE) {
            problems.error(
                    "measured", "circumference", "a ring: other assemblies are measured pin to pin, flat or outside");
        }
    }

    private static void checkAngle(Leg leg, MadeEnd end, Assembly.Use use, Problems problems) {
        if (end.termination().kind() != Termination.Kind.EYE || !end.eye().isSoftOnPin()) {
            return;
        }
        ThroatAngle angle = end.eye().throatAngle(end.yardsticks().rope());
        Sentence found = Sentence.of("throat angle " + angle.words() + " on a pin of ")
                .and(end.eye().pin());
        if (angle.isWiderThan(WIDEST) && leg.rope().isWire()) {
            problems.warning(
                    end.name(),
                    found,
                    Sentence.of(
                                    "at most 60 degrees, printed for wire slings too (use rules beside the Crane Ordinance art. 219, Japan): ")
                            .and(longEnough(end)));
        } else if (angle.isWiderThan(WIDEST) && use.isLifting()) {
            problems.error(
                    end.name(),
                    found,
                    Sentence.of("at most 60 degrees in slings (29 CFR 1926.251(d)): ")
                            .and(longEnough(end)));
        } else if (angle.isWiderThan(WIDEST)) {
            String ofEnd = end.spec().options().acceptedBy();
            String accepted = ofEnd.isEmpty() ? leg.make().asked().acceptedBy(Accepted.THROAT_ANGLE) : ofEnd;
            problems.warning(
                    end.name(),
                    found,
                    Sentence.of(
                            accepted.isEmpty()
                                    ? "at most 60 degrees, or the name of who accepts it, such as \"accepted NAME\""
                                    : "at most 60 degrees; accepted by " + accepted));
        } else if (angle.isWiderThan(WIDE)) {
            problems.warning(end.name(), found, Sentence.of("30 degrees or less is kinder to the throat"));
        }
    }

    /** At 60 degrees the eye in use is 1 1/2 times its pin and a rope long: the same rope round it laid flat. */
    private static Sentence longEnough(MadeEnd end) {
        Diameter rope = end.yardsticks().rope();
        Diameter pin = end.eye().pin();
        FineLength inUse = pin.times(new Ratio(3, 2)).plus(rope.asLength());
        FineLength flat = EyeFormula.insideLength(EyeFormula.round(inUse, pin, rope), Diameter.NONE, rope)
                .roundedUp()
                .fine();
        return Sentence.of("an eye of at least ").and(flat).and(" laid flat");
    }

    /** Whether an assembly that was measured over hardware has the points that it was measured between. */
    boolean knowsItsPoints(Leg leg, Problems problems) {
        Measuring.Points points = leg.make().measuring().points();
        return points.equals(Measuring.Points.NONE) || new MeasuredPoints(points).check(leg, problems);
    }

    /** Whether every soft eye reaches round the pins the order measures on. */
    boolean reachesRoundMeasuringPins(Leg leg, Problems problems) {
        Measuring measuring = leg.make().measuring();
        boolean all = true;
        for (MadeEnd end : leg.ends()) {
            boolean measured = measuring.between() == Measuring.Between.ON_PINS && end.hasEye();
            if (measured
                    && !end.eye().reachesRound(measuring.pin(), end.yardsticks().rope())) {
                problems.error(
                        end.name(),
                        Sentence.of("an eye too small for a pin of ").and(measuring.pin()),
                        Sentence.of("an eye that closes on the pin it is measured on: above ")
                                .and(EyeFormula.leastFlat(
                                        measuring.pin(), end.yardsticks().rope()))
                                .and(" laid flat"));
                all = false;
            }
        }
        return all;
    }
}
