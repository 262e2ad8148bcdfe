package bitterend.demand;

import bitterend.catalogue.Termination.Kind;
import bitterend.measure.LengthsInWords;
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.List;

/** How the legs of a sling hang, each by itself, and how they are matched at the bench. */
final class HangNotes {
    private final Leg leg;
    private final Assembly assembly;
    private final Hang hang;

    HangNotes(Leg leg, Assembly assembly) {
        this.leg = leg;
        this.assembly = assembly;
        this.hang = leg.make().hang();
    }

    /** What stands below the derivation of a leg. */
    List<Sentence> all() {
        List<Sentence> notes = new ArrayList<>();
        boolean several = assembly.ordered().legs() > 1;
        if (hang.isStated()) {
            notes.add(triangle());
            notes.add(Sentence.of(
                    "each leg is worked out by itself: that legs share a load is never taken for granted (NAVEDTRA 14080"
                            + " p. 3-24)"));
        } else if (several && assembly.terms().use().isLifting()) {
            notes.add(Sentence.of("angle of the legs not checked, no height and spread stated (hang): above 60 degrees"
                    + " from the vertical ask a qualified rigger"));
        }
        if (several || (hang.isStated() && assembly.terms().matching().bond() != Piece.Bond.NONE)) {
            notes.add(matching());
        }
        return notes;
    }

    private Sentence triangle() {
        Sentence how = Sentence.of("a leg hangs " + hang.angle().words() + ", opposite legs alike "
                        + hang.angle().included() + " included: it spans ")
                .tape(hang.height())
                .and(" and reaches ")
                .tape(hang.out())
                .and(" out, opposite points ")
                .tape(hang.spread())
                .and(" apart");
        return hang.lengthWorkedOut()
                ? how.and("; its length is worked out from ").and(LengthsInWords.sentence(hang.words()))
                : how;
    }

    private Sentence matching() {
        Sentence how = Sentence.of(
                "matched at the bench: measure the first leg when it is made, bearing point to bearing point;"
                        + " set out the second throat of each other leg by what that one came out at; then hang"
                        + " all legs of the sling from one pin under the same light pull and compare each with"
                        + " its own ordered length");
        return leg.make().asked().set().isStated()
                ? how
                : how.and("; how near they must come is not stated (set tolerance)");
    }

    /** Tells what speaks against a leg that hangs so, and of a wide one whom to ask. */
    void check(Problems problems) {
        if (!hang.isStated()) {
            return;
        }
        boolean beyond =
                leg.ends().stream().flatMap(end -> end.hardware().stream()).anyMatch(each -> !each.inLength());
        if (beyond) {
            problems.error(
                    "hang",
                    hang.words(),
                    "a length over all its hardware, for height and spread run from its outermost bearing");
        }
        if (leg.ends().get(0).termination().kind() == Kind.GROMMET) {
            problems.error("hang", hang.words(), "nothing: a ring is no leg");
        }
        if (hang.angle().isWide()) {
            problems.warning(
                    "hang",
                    "a leg " + hang.angle().words() + ", " + hang.angle().included()
                            + " included between opposite legs",
                    "at most 60 degrees from the vertical, 120 included, 30 from the horizontal: ask a qualified rigger");
        }
    }
}
