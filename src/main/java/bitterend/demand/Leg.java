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
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.List;

/**
 * One leg of an assembly worked out on one rope.
 *
 * @param rope the rope
 * @param make the leg as ordered
 * @param ends both ends, end A first
 * @param along knots and loops along it
 * @param counters how the counter measures the rope; at most one
 */
record Leg(Rope rope, Make make, List<MadeEnd> ends, List<KnotsAlong> along, List<CounterRule> counters) {
    Leg {
        along = List.copyOf(along);
        ends = List.copyOf(ends);
        counters = List.copyOf(counters);
    }

    /** Rings that one piece holds the strands of; 1 for a leg that is no ring. */
    int rings() {
        return ends.get(0).termination().layout().rings();
    }

    StandingPart standingPart() {
        return new StandingPart(make.measuring(), ends);
    }

    /** The finished length without the hardware that is measured in it: from bearing point to bearing point of the ends. */
    FineLength betweenEnds() {
        return make.finished().exact().minus(standingPart().hardware());
    }

    /** How far the hardware in the finished length may be off, all of it together. */
    FineLength hardwareTolerance() {
        return ends.stream()
                .flatMap(end -> end.measured().stream())
                .map(each -> each.hardware().tolerance())
                .reduce(FineLength.ZERO, FineLength::plus);
    }

    /** Every line down to the cut length, the rounding last. */
    List<Line> lines(FineLength sample) {
        List<Line> lines = new ArrayList<>(standingPart().lines(make.finished().exact()));
        lines.set(0, asOrdered(lines.get(0)));
        ends.forEach(end -> addEnd(lines, end));
        along.forEach(knots -> lines.addAll(knots.lines()));
        addOrdered(lines, "spare", make.extras().spare().exact());
        addOrdered(lines, "sample for the break test", sample);
        counters.forEach(counter -> addCounter(lines, counter));
        FineLength sum = sum(lines);
        FineLength step = rope.cutting().toNearest();
        lines.add(
                new Line("rounding up", step(step), sum.roundedUpTo(step).fine().minus(sum), Provenance.ARITHMETIC));
        return lines;
    }

    /** A length that was ordered in the other system is told as it was written, beside its value. */
    private Line asOrdered(Line finished) {
        return new Line(
                finished.label(),
                Sentence.NONE.inOther(make.finished(), " as ordered, ").and(finished.formula()),
                finished.amount(),
                finished.provenance());
    }

    /** In inches only where sixteenths say it exactly: 10 mm are no 3/8 in. */
    private static Sentence step(FineLength step) {
        boolean sixteenths = step.units() % FeetAndInches.UNITS_PER_SIXTEENTH == 0;
        Sentence words = Sentence.of("to the next ");
        return sixteenths ? words.and(step) : words.and(LengthText.exact(step));
    }

    static FineLength sum(List<Line> lines) {
        return lines.stream().map(Line::amount).reduce(FineLength.ZERO, FineLength::plus);
    }

    private static void addEnd(List<Line> lines, MadeEnd end) {
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
                                ? Sentence.of(end.spec().tailWritten() + " as ordered")
                                : allowance.words(end.yardsticks()),
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
    List<SpliceLayout> layouts() {
        List<SpliceLayout> layouts = new ArrayList<>();
        LayoutMaker maker = new LayoutMaker(this);
        ends.stream()
                .map(maker::layout)
                .filter(layout -> !layout.marks().isEmpty() || !layout.counts().isEmpty())
                .forEach(layouts::add);
        along.stream().map(KnotsAlong::layout).forEach(layouts::add);
        if (!make.asked().marks().isEmpty()) {
            layouts.add(new MarksAlong(this).layout());
        }
        return layouts;
    }

    private static void addOrdered(List<Line> lines, String label, FineLength amount) {
        if (amount.isPositive()) {
            lines.add(new Line(label, "", amount, Provenance.ORDER));
        }
    }
}
