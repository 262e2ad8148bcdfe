package bitterend.demand;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.CounterRule;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Rope;
import bitterend.catalogue.Termination.What;
import bitterend.demand.Assembly.Make;
import bitterend.demand.Derivation.Line;
import bitterend.measure.FeetAndInches;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.RatioText;
import bitterend.measure.Units;
import java.util.ArrayList;
import java.util.List;

/**
 * One leg of an assembly worked out on one rope.
 *
 * @param rope the rope
 * @param make the leg as ordered
 * @param ends both ends, end A first
 * @param counters how the counter measures the rope; at most one
 */
record Leg(Rope rope, Make make, List<MadeEnd> ends, List<CounterRule> counters) {
    Leg {
        ends = List.copyOf(ends);
        counters = List.copyOf(counters);
    }

    /** Rings that one piece holds the strands of; 1 for a leg that is no ring. */
    int rings() {
        return ends.get(0).termination().layout().rings();
    }

    StandingPart standingPart(Units units) {
        return new StandingPart(make.measuring(), ends, units);
    }

    /** Every line down to the cut length, the rounding last. */
    List<Line> lines(FineLength sample, Units units) {
        List<Line> lines =
                new ArrayList<>(standingPart(units).lines(make.finished().exact()));
        lines.set(0, asOrdered(lines.get(0), units));
        ends.forEach(end -> addEnd(lines, end, units));
        addOrdered(lines, "spare", make.extras().spare().exact());
        addOrdered(lines, "sample for the break test", sample);
        counters.forEach(counter -> addCounter(lines, counter));
        FineLength sum = sum(lines);
        FineLength step = rope.cutting().toNearest();
        lines.add(new Line(
                "rounding up",
                "to the next " + step(step, units),
                sum.roundedUpTo(step).fine().minus(sum),
                Provenance.ARITHMETIC));
        return lines;
    }

    /** A length that was ordered in the other system is told as it was written, beside its value. */
    private Line asOrdered(Line finished, Units units) {
        String text = make.finished().inOtherThan(units);
        return text.isEmpty()
                ? finished
                : new Line(
                        finished.label(),
                        text + " as ordered, " + finished.formula(),
                        finished.amount(),
                        finished.provenance());
    }

    /** In inches only where sixteenths say it exactly: 10 mm are no 3/8 in. */
    private static String step(FineLength step, Units units) {
        boolean sixteenths = step.units() % FeetAndInches.UNITS_PER_SIXTEENTH == 0;
        return sixteenths ? LengthText.print(step, units) : LengthText.exact(step);
    }

    static FineLength sum(List<Line> lines) {
        return lines.stream().map(Line::amount).reduce(FineLength.ZERO, FineLength::plus);
    }

    private static void addEnd(List<Line> lines, MadeEnd end, Units units) {
        if (end.hasEye()) {
            lines.add(new Line(
                    end.name() + ": round the eye",
                    "throat to throat along the centre line",
                    end.eye().round(),
                    end.eye().source()));
        }
        for (What what : What.values()) {
            Allowance allowance = end.allowance(what);
            if (what.isCut() && !allowance.isNothing()) {
                lines.add(new Line(
                        end.name() + ": " + what.word(),
                        what == What.TAIL && !end.spec().tailWritten().isEmpty()
                                ? end.spec().tailWritten() + " as ordered"
                                : allowance.words(end.yardsticks(), units),
                        end.length(what),
                        allowance.provenance()));
            }
        }
    }

    /** A long piece is cut longer by what the counter may be short. */
    private static void addCounter(List<Line> lines, CounterRule counter) {
        FineLength sum = sum(lines);
        FineLength error = sum.times(counter.error());
        if (error.isPositive() && sum.compareTo(counter.from().fine()) >= 0) {
            lines.add(new Line(
                    "tolerance of the cut",
                    RatioText.percent(counter.error()) + " that the counter may be short",
                    error,
                    counter.provenance()));
        }
    }

    /** The layouts of both ends, then the marks along the piece when the order asks for some. */
    List<SpliceLayout> layouts(Units units) {
        List<SpliceLayout> layouts = new ArrayList<>();
        LayoutMaker maker = new LayoutMaker(this, units);
        ends.stream()
                .map(maker::layout)
                .filter(layout -> !layout.marks().isEmpty() || !layout.counts().isEmpty())
                .forEach(layouts::add);
        if (!make.asked().marks().isEmpty()) {
            layouts.add(new MarksAlong(this, units).layout());
        }
        return layouts;
    }

    private static void addOrdered(List<Line> lines, String label, FineLength amount) {
        if (amount.isPositive()) {
            lines.add(new Line(label, "", amount, Provenance.ORDER));
        }
    }
}
