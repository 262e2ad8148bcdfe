package bitterend.demand;

import bitterend.catalogue.CounterRule;
import bitterend.catalogue.Preparation;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination.Kind;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.Sentence;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** What stands below a derivation: eyes and their angles, and what to do before the cut. */
final class LegNotes {
    private final SpliceBook splices;

    LegNotes(SpliceBook splices) {
        this.splices = splices;
    }

    List<Sentence> of(Leg leg) {
        List<Sentence> notes = new ArrayList<>();
        leg.ends().stream()
                .filter(end ->
                        end.termination().kind() == Kind.EYE && !end.eye().firm())
                .map(LegNotes::angle)
                .forEach(notes::add);
        leg.counters().stream()
                .filter(counter -> !counter.factor().equals(Ratio.ONE))
                .map(counter -> counter(counter, leg))
                .forEach(notes::add);
        addTolerances(leg, notes);
        splices.findPreparation(leg.rope())
                .map(preparation -> Sentence.of("before the cut: ")
                        .and(preparation.words(leg.rope()))
                        .and(source(preparation)))
                .ifPresent(notes::add);
        return notes;
    }

    /** The reading at which the true length is reached, rounded up to a millimetre. */
    private static Sentence counter(CounterRule counter, Leg leg) {
        FineLength cut = Leg.sum(leg.lines(FineLength.ZERO));
        FineLength reading = cut.times(counter.factor().inverse()).roundedUp().fine();
        return Sentence.of("the counter reads ")
                .and(reading)
                .and(" at ")
                .and(cut)
                .and(": true length is " + RatioText.exact(counter.factor()) + " x its reading");
    }

    private static void addTolerances(Leg leg, List<Sentence> notes) {
        Assembly.Asked asked = leg.make().asked();
        FineLength finished = leg.make().finished().exact();
        addTolerance("finished length", asked.finished(), finished, notes);
        leg.ends().stream()
                .filter(MadeEnd::hasEye)
                .forEach(end -> addTolerance(
                        end.name() + ": eye", asked.eye(), end.eye().flat(), notes));
        String set = leg.make().hang().isStated()
                ? "legs of the sling, each less its ordered length"
                : "longest to shortest of the set";
        addTolerance(set, asked.set(), finished, notes);
    }

    private static void addTolerance(String what, Tolerance tolerance, FineLength of, List<Sentence> notes) {
        if (tolerance.isStated()) {
            notes.add(Sentence.of(what + ": within ").and(tolerance.words(of)));
        }
    }

    private static Sentence angle(MadeEnd end) {
        EyeShape eye = end.eye();
        if (!eye.isSoftOnPin()) {
            return Sentence.of(end.name() + ": throat angle not checked, no pin or thimble stated");
        }
        return Sentence.of(end.name() + ": throat angle "
                        + eye.throatAngle(end.yardsticks().rope()).words() + " on a pin of ")
                .and(eye.pin().asLength())
                .and("; the eye is ")
                .tape(eye.used())
                .and(" long in use, " + times(eye.used(), eye.pin()) + " x its pin, and ")
                .tape(eye.flat())
                .and(" laid flat, " + times(eye.flat(), eye.pin()) + " x");
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
