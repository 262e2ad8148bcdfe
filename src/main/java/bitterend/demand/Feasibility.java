package bitterend.demand;

import bitterend.catalogue.ClearRope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import bitterend.catalogue.ThroatAngle;
import bitterend.measure.DiameterText;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Units;

/** Whether a leg can be made at all: its ends suit its use, its eyes open, its clear rope is long enough. */
final class Feasibility {
    /** 29 CFR 1926.251(d): at most 60 degrees in slings. */
    static final ThroatAngle WIDEST = ThroatAngle.ofDegrees(60);

    /** From here a wide eye is worth a word. Common practice, no source. */
    static final ThroatAngle WIDE = ThroatAngle.ofDegrees(30);

    private static final FineLength SOME = new FineLength(1);

    private final SpliceBook splices;
    private final Units units;

    Feasibility(SpliceBook splices, Units units) {
        this.splices = splices;
        this.units = units;
    }

    /** Tells every reason against a leg and every warning about it. */
    void check(Leg leg, Assembly assembly, Problems problems) {
        Assembly.Use use = assembly.terms().use();
        checkRing(leg, problems);
        leg.ends().forEach(end -> checkUse(end, use, problems));
        leg.ends().forEach(end -> checkAngle(end, use, problems));
        if (reachesRoundMeasuringPins(leg, problems)) {
            checkClearRope(leg, use, problems);
        }
    }

    /** A grommet has no ends: it stands in end A, and end B is left plain. */
    private static void checkRing(Leg leg, Problems problems) {
        MadeEnd other = leg.ends().get(1);
        boolean ringA = leg.ends().get(0).termination().kind() == Termination.Kind.GROMMET;
        if (other.termination().kind() == Termination.Kind.GROMMET) {
            problems.error(other.name(), other.termination().id(), "a grommet in end a, and end b left blank");
        } else if (ringA && !other.termination().allowances().isEmpty()) {
            problems.error(other.name(), other.termination().id(), "nothing: a grommet has no other end");
        }
    }

    private static void checkUse(MadeEnd end, Assembly.Use use, Problems problems) {
        String reason = end.termination().work().notForLifting();
        if (use == Assembly.Use.LIFTING && !reason.isEmpty()) {
            problems.error(end.name(), end.termination().id() + " for lifting", reason);
        }
    }

    private void checkAngle(MadeEnd end, Assembly.Use use, Problems problems) {
        if (end.termination().kind() != Termination.Kind.EYE || !end.eye().isSoftOnPin()) {
            return;
        }
        ThroatAngle angle = end.eye().throatAngle(end.yardsticks().rope());
        String found = "throat angle " + angle.words() + " on a pin of "
                + DiameterText.print(end.eye().pin(), units);
        if (angle.isWiderThan(WIDEST) && use == Assembly.Use.LIFTING) {
            problems.error(end.name(), found, "at most 60 degrees in slings (29 CFR 1926.251(d)): a longer eye");
        } else if (angle.isWiderThan(WIDEST)) {
            String accepted = end.spec().options().acceptedBy();
            problems.warning(
                    end.name(),
                    found,
                    accepted.isEmpty()
                            ? "at most 60 degrees, or the name of who accepts it, such as \"accepted Jansen\""
                            : "at most 60 degrees; accepted by " + accepted);
        } else if (angle.isWiderThan(WIDE)) {
            problems.warning(end.name(), found, "30 degrees or less is kinder to the throat");
        }
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
                        "an eye too small for a pin of " + DiameterText.print(measuring.pin(), units),
                        "an eye that closes on the pin it is measured on");
                all = false;
            }
        }
        return all;
    }

    private void checkClearRope(Leg leg, Assembly.Use use, Problems problems) {
        StandingPart standing = leg.standingPart(units);
        FineLength clear = standing.clear(leg.make().finished());
        FineLength needed = needed(leg, use);
        if (clear.compareTo(needed) < 0) {
            Length shortest = standing.shortest(needed);
            problems.error(
                    "length",
                    LengthText.print(leg.make().finished(), units) + ", which leaves " + LengthText.print(clear, units)
                            + " between the throats",
                    "room for the ends, " + LengthText.print(needed, units) + ": a finished length of at least "
                            + LengthText.print(shortest, units));
            return;
        }
        leg.ends().forEach(end -> warnOfSlipKnot(end, clear, problems));
    }

    private FineLength needed(Leg leg, Assembly.Use use) {
        FineLength room =
                leg.ends().stream().map(end -> end.length(What.ROOM)).reduce(FineLength.ZERO, FineLength::plus);
        boolean bothSpliced = leg.ends().stream()
                .allMatch(end -> !end.termination().allowance(What.ROOM).isNothing());
        if (bothSpliced) {
            room = room.plus(free(leg, use));
        }
        return room.isPositive() ? room : SOME;
    }

    /** Clear rope asked for between two splices. */
    private FineLength free(Leg leg, Assembly.Use use) {
        return splices.clearRope().stream()
                .filter(row -> row.suits().admits(leg.rope()) && (use == Assembly.Use.LIFTING || !row.lifting()))
                .findFirst()
                .map(ClearRope::length)
                .map(length -> length.length(leg.ends().get(0).yardsticks()))
                .orElse(FineLength.ZERO);
    }

    private void warnOfSlipKnot(MadeEnd end, FineLength clear, Problems problems) {
        FineLength knot = end.length(What.SLIP_KNOT);
        if (clear.compareTo(knot) < 0) {
            problems.warning(
                    end.name(),
                    LengthText.print(clear, units) + " of clear rope",
                    "a slip knot " + LengthText.print(knot, units)
                            + " from the throat; here it must sit closer: mind the core");
        }
    }
}
