package bitterend.demand;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.CodeRule;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
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
    private final FreeRope rope;

    ClearRopeCheck(SpliceBook splices, Leg leg) {
        this.splices = splices;
        this.leg = leg;
        this.rope = new FreeRope(leg);
    }

    void check(Assembly.Terms terms, Problems problems) {
        FineLength needed = needed(terms);
        if (rope.finished().compareTo(needed) < 0) {
            Length shortest = leg.standingPart().shortest(needed);
            problems.error(
                    "length",
                    Sentence.NONE
                            .finely(leg.make().finished())
                            .and(", which leaves ")
                            .noMoreThan(rope.finished())
                            .and(" between the throats"),
                    room(needed)
                            .and(note(terms)
                                    .map(note -> Sentence.of(" (").and(note).and(")"))
                                    .orElse(Sentence.NONE))
                            .and(": a finished length of at least ")
                            .and(shortest));
            return;
        }
        warnOfWorkingRoom(problems);
        leg.ends().forEach(end -> warnOfSlipKnot(end, problems));
    }

    private static Sentence room(FineLength needed) {
        return needed.equals(SOME)
                ? Sentence.of("rope between the ends")
                : Sentence.of("room for the ends, ").noLessThan(needed);
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
                .filter(row -> row.suits().concerns(leg.rope()) && (lifting || !row.lifting()))
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
    Optional<Sentence> note(Assembly.Terms terms) {
        Free free = bothHeld() ? free(terms) : Free.NOTHING;
        return free.words().isEmpty()
                ? Optional.empty()
                : Optional.of(Sentence.of("clear rope between splices and fittings of at least ")
                        .and(free.length())
                        .and(": " + free.words()));
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
                Sentence.of("only ").and(rope.slack()).and(" of slack rope between the throats"),
                Sentence.of("at least ")
                        .and(room)
                        .and(", the working room for the tools"
                                + (accepted.isEmpty() ? "" : "; accepted by " + accepted)));
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
        if (knot.isPositive() && !place.equals(Optional.of(knot))) {
            problems.warning(
                    end.name(),
                    Sentence.NONE.and(rope.free(end)).and(" of rope still free"),
                    Sentence.of("a slip knot ")
                            .and(knot)
                            .and(" from the throat" + Unchecked.mark(end.allowance(What.SLIP_KNOT)) + "; ")
                            .and(
                                    place.isPresent()
                                            ? Sentence.of("here it must sit closer: mind the core")
                                            : SlipKnot.held(end)));
        }
    }
}
