package bitterend.demand;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.CodeRule;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Units;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether a leg has rope enough between its throats. Two finished splices never overlap, and no mark may lie beyond the
 * other throat: such a leg is refused. The working room, in which the tools come out of slack rope, is only warned of.
 */
final class ClearRopeCheck {
    private static final FineLength SOME = new FineLength(1);

    private final SpliceBook splices;
    private final Leg leg;
    private final Units units;
    private final FreeRope rope;

    ClearRopeCheck(SpliceBook splices, Leg leg, Units units) {
        this.splices = splices;
        this.leg = leg;
        this.units = units;
        this.rope = new FreeRope(leg, units);
    }

    void check(Assembly.Terms terms, Problems problems) {
        FineLength needed = needed(terms);
        if (rope.finished().compareTo(needed) < 0) {
            Length shortest = leg.standingPart(units).shortest(needed);
            problems.error(
                    "length",
                    leg.make().finished().print(units, length -> LengthText.print(length, units)) + ", which leaves "
                            + LengthText.print(TapeStep.down(rope.finished(), units), units) + " between the throats",
                    (needed.equals(SOME)
                                    ? "rope between the ends"
                                    : "room for the ends, " + LengthText.print(TapeStep.up(needed, units), units))
                            + note(terms).map(note -> " (" + note + ")").orElse("") + ": a finished length of at least "
                            + LengthText.print(shortest, units));
            return;
        }
        warnOfWorkingRoom(problems);
        leg.ends().forEach(end -> warnOfSlipKnot(end, problems));
    }

    /** Clear rope of the finished leg that both splices fill, and what must stay free between them. */
    private FineLength needed(Assembly.Terms terms) {
        FineLength filled = sum(What.FILLS);
        FineLength needed = bothHeld() ? filled.plus(free(terms).length()) : filled;
        for (MadeEnd end : leg.ends()) {
            needed = longer(needed, forItsMarks(end));
        }
        return longer(needed, SOME);
    }

    /** Clear rope on which every mark of an end lies before the other throat when its turn has come; a ring has none. */
    private FineLength forItsMarks(MadeEnd end) {
        if (end.termination().kind() == Termination.Kind.GROMMET) {
            return SOME;
        }
        FineLength shortenedBy = rope.betweenThroats(end).minus(rope.finished());
        return LayoutMaker.reach(end).minus(shortenedBy);
    }

    private FineLength sum(What what) {
        return leg.ends().stream().map(end -> end.length(what)).reduce(FineLength.ZERO, FineLength::plus);
    }

    private static FineLength longer(FineLength one, FineLength other) {
        return one.compareTo(other) >= 0 ? one : other;
    }

    /**
     * Clear rope asked for between two splices or fittings.
     *
     * @param length how much
     * @param words who asks it; empty where nobody does
     */
    private record Free(FineLength length, String words) {
        static final Free NOTHING = new Free(FineLength.ZERO, "");

        Free orMore(Free other) {
            return other.length.compareTo(length) > 0 ? other : this;
        }
    }

    /** The largest that the codes in force ask, or the shop's own row where that asks more. */
    private Free free(Assembly.Terms terms) {
        return ruling(terms).orElse(Free.NOTHING).orMore(own(terms).orElse(Free.NOTHING));
    }

    private Optional<Free> own(Assembly.Terms terms) {
        boolean lifting = terms.use().isLifting();
        return splices.clearRope().stream()
                .filter(row -> row.suits().admits(leg.rope()) && (lifting || !row.lifting()))
                .findFirst()
                .map(row -> new Free(length(row.length()), "the shop's own row"));
    }

    private Optional<Free> ruling(Assembly.Terms terms) {
        if (!terms.use().isLifting()) {
            return Optional.empty();
        }
        List<Termination> made = leg.ends().stream().map(MadeEnd::termination).toList();
        return splices.codes().ruling(CodeRule.Rule.CLEAR_ROPE, leg.rope(), made, terms.code()).stream()
                .map(rule -> new Free(length(rule.least().length()), rule.words()))
                .max(Comparator.comparing(Free::length));
    }

    private FineLength length(Allowance allowance) {
        return allowance.length(leg.ends().get(0).yardsticks());
    }

    /** Who asks how much clear rope; nothing where nobody does. */
    Optional<String> note(Assembly.Terms terms) {
        Free free = bothHeld() ? free(terms) : Free.NOTHING;
        return free.words().isEmpty()
                ? Optional.empty()
                : Optional.of("clear rope between splices and fittings of at least "
                        + LengthText.print(free.length(), units) + ": " + free.words());
    }

    /** Whether either end is a splice or a fitting. */
    private boolean bothHeld() {
        return leg.ends().stream()
                .allMatch(end -> end.termination().kind() == Termination.Kind.FITTING
                        || !end.termination().allowance(What.FILLS).isNothing());
    }

    private void warnOfWorkingRoom(Problems problems) {
        FineLength room = sum(What.ROOM);
        if (rope.slack().compareTo(room) >= 0) {
            return;
        }
        String accepted = leg.make().asked().acceptedBy(Accepted.WORKING_ROOM);
        problems.warning(
                "length",
                "only " + LengthText.print(rope.slack(), units) + " of slack rope between the throats",
                "at least " + LengthText.print(room, units) + ", the working room for the tools"
                        + (accepted.isEmpty() ? "" : "; accepted by " + accepted));
        if (accepted.isEmpty()) {
            problems.remark(
                    "accept",
                    "",
                    "who accepts less than the working room for the tools, such as \"working room: NAME\"");
        }
    }

    private void warnOfSlipKnot(MadeEnd end, Problems problems) {
        FineLength knot = end.length(What.SLIP_KNOT);
        Optional<FineLength> place = SlipKnot.fromThroat(end, rope);
        if (!place.equals(Optional.of(knot))) {
            problems.warning(
                    end.name(),
                    LengthText.print(rope.free(end), units) + " of rope still free",
                    "a slip knot " + LengthText.print(knot, units) + " from the throat"
                            + Unchecked.mark(end.allowance(What.SLIP_KNOT))
                            + (place.isPresent()
                                    ? "; here it must sit closer: mind the core"
                                    : "; " + SlipKnot.held(end, units)));
        }
    }
}
