package bitterend.demand;

import bitterend.catalogue.BenchRules;
import bitterend.catalogue.Handling;
import bitterend.catalogue.Handling.Hands;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import bitterend.demand.Assembly.Asked;
import bitterend.demand.Assembly.WantedMark;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Mass;
import bitterend.measure.Sentence;
import java.util.List;

/** What to watch when a leg can be made: tolerances, unverified ends in a batch, heavy pieces, marks in a splice. */
final class Watch {
    private final BenchRules bench;

    Watch(BenchRules bench) {
        this.bench = bench;
    }

    void over(Leg leg, Assembly assembly, Problems problems) {
        batch(leg, assembly, problems);
        tolerances(leg, problems);
        mass(leg, problems);
        marks(leg, problems);
    }

    private static void batch(Leg leg, Assembly assembly, Problems problems) {
        int pieces = assembly.ordered().pieces();
        if (pieces < 2) {
            return;
        }
        List<Termination> unverified = leg.ends().stream()
                .map(MadeEnd::termination)
                .filter(row -> !row.isVerified())
                .distinct()
                .toList();
        boolean rings = leg.rings() > 1;
        unverified.forEach(row -> problems.warning(
                "quantity",
                pieces + (rings ? " rings of " : " pieces with ") + row.id() + ", an unverified termination",
                Demanded.MAKE_ONE_FIRST + (rings ? "making" : "cutting") + " the other " + (pieces - 1)));
    }

    /** The take-up of both ends may come out long or short together: their spreads add up. */
    private static void tolerances(Leg leg, Problems problems) {
        Asked asked = leg.make().asked();
        FineLength spread = leg.ends().stream()
                .map(end -> end.length(What.TAKE_UP_SPREAD))
                .reduce(FineLength.ZERO, FineLength::plus);
        String known = leg.ends().stream()
                .map(end -> Unchecked.mark(end.allowance(What.TAKE_UP_SPREAD)))
                .filter(mark -> !mark.isEmpty())
                .findFirst()
                .orElse("");
        FineLength finished = leg.make().finished().exact();
        tighter("tolerance", asked.finished(), finished, new Spread(spread, known), problems);
        tighter(
                "set tolerance",
                asked.set(),
                finished,
                new Spread(spread.plus(leg.hardwareTolerance()).times(2), known),
                problems);
    }

    /** Half the width of the band of a take-up, and how it is known. */
    private record Spread(FineLength width, String known) {}

    private static void tighter(String column, Tolerance tolerance, FineLength of, Spread spread, Problems problems) {
        if (tolerance.isStated() && tolerance.of(of).compareTo(spread.width()) < 0) {
            problems.warning(
                    column,
                    tolerance.words(of),
                    Sentence.of("no tighter than the take-up is known, ")
                            .and(spread.width())
                            .and(spread.known() + ": measure this splice and calibrate"));
        }
    }

    private void mass(Leg leg, Problems problems) {
        Length cut = Leg.sum(leg.lines(leg.make().extras().sample().exact())).roundedUp();
        Mass mass = leg.rope().mass().of(cut);
        Handling handling = bench.handling();
        switch (handling.needed(mass)) {
            case ONE -> {}
            case TWO -> problems.warning(
                    "length",
                    Sentence.of("a piece weighs ").and(mass),
                    Sentence.of("more than ").and(handling.one()).and(" needs " + Hands.TWO.words()));
            case HOIST -> problems.warning(
                    "length",
                    Sentence.of("a piece weighs ").and(mass),
                    Sentence.of("more than ").and(handling.two()).and(" needs " + Hands.HOIST.words()));
        }
    }

    private static void marks(Leg leg, Problems problems) {
        if (leg.make().asked().marks().isEmpty()) {
            return;
        }
        MarksAlong along = new MarksAlong(leg);
        for (WantedMark mark : leg.make().asked().marks()) {
            if (!along.isOnClearRope(mark)) {
                problems.error("marks", mark.name(), "a place on clear rope, outside the eyes");
            }
        }
    }
}
