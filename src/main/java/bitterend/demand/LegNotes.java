package bitterend.demand;

import bitterend.catalogue.CounterRule;
import bitterend.catalogue.Preparation;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination.Kind;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.Units;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** What stands below a derivation: eyes and their angles, and what to do before the cut. */
final class LegNotes {
    private final SpliceBook splices;
    private final Units units;

    LegNotes(SpliceBook splices, Units units) {
        this.splices = splices;
        this.units = units;
    }

    List<String> of(Leg leg) {
        List<String> notes = new ArrayList<>();
        leg.ends().stream()
                .filter(end ->
                        end.termination().kind() == Kind.EYE && !end.eye().firm())
                .map(this::angle)
                .forEach(notes::add);
        leg.counters().stream()
                .filter(counter -> !counter.factor().equals(Ratio.ONE))
                .map(counter -> counter(counter, leg))
                .forEach(notes::add);
        addTolerances(leg, notes);
        splices.findPreparation(leg.rope())
                .map(preparation -> "before the cut: " + preparation.words(leg.rope(), units) + source(preparation))
                .ifPresent(notes::add);
        return notes;
    }

    /** The reading at which the true length is reached, rounded up to a millimetre. */
    private String counter(CounterRule counter, Leg leg) {
        FineLength cut = Leg.sum(leg.lines(FineLength.ZERO, units));
        FineLength reading = cut.times(counter.factor().inverse()).roundedUp().fine();
        return "the counter reads " + LengthText.print(reading, units) + " at " + LengthText.print(cut, units)
                + ": true length is " + RatioText.exact(counter.factor()) + " x its reading";
    }

    private void addTolerances(Leg leg, List<String> notes) {
        Assembly.Asked asked = leg.make().asked();
        FineLength finished = leg.make().finished().exact();
        addTolerance("finished length", asked.finished(), finished, notes);
        leg.ends().stream()
                .filter(MadeEnd::hasEye)
                .forEach(end -> addTolerance(
                        end.name() + ": eye", asked.eye(), end.eye().flat(), notes));
        addTolerance("longest to shortest of the set", asked.set(), finished, notes);
    }

    private void addTolerance(String what, Tolerance tolerance, FineLength of, List<String> notes) {
        if (tolerance.isStated()) {
            notes.add(what + ": within " + tolerance.words(of, units));
        }
    }

    private String angle(MadeEnd end) {
        EyeShape eye = end.eye();
        if (!eye.isSoftOnPin()) {
            return end.name() + ": throat angle not checked, no pin or thimble stated";
        }
        return end.name() + ": throat angle "
                + eye.throatAngle(end.yardsticks().rope()).words() + " on a pin of "
                + LengthText.print(eye.pin().asLength(), units) + "; the eye is " + LengthText.tape(eye.used(), units)
                + " long in use, " + times(eye.used(), eye.pin()) + " x its pin, and "
                + LengthText.tape(eye.flat(), units) + " laid flat, " + times(eye.flat(), eye.pin()) + " x";
    }

    /** To two digits, rounded down: the eye is not praised as larger than it is. */
    private static String times(FineLength length, Diameter pin) {
        return BigDecimal.valueOf(length.units())
                .divide(BigDecimal.valueOf(pin.units()), 2, RoundingMode.DOWN)
                .toPlainString();
    }

    private static String source(Preparation preparation) {
        String source = preparation.provenance().source();
        return " (" + (source.isEmpty() ? preparation.provenance().grade().words() : source) + ")";
    }
}
