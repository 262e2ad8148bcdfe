package bitterend.demand;

import bitterend.catalogue.Danger;
import bitterend.catalogue.Rope;
import bitterend.catalogue.Termination.Kind;
import bitterend.catalogue.Termination.What;
import bitterend.measure.FineLength;
import bitterend.measure.Sentence;
import java.util.List;
import java.util.stream.Stream;

/** Ends that are dangerous on their rope or in their size: refused for lifting, warned of otherwise. */
final class EndSafety {
    void check(Leg leg, Assembly.Terms terms, Problems problems) {
        String noSling = leg.rope().construction().notForLifting();
        if (terms.use().isLifting() && !noSling.isEmpty()) {
            problems.error(
                    "rope", Sentence.of(leg.rope().construction().word() + " for lifting"), Sentence.of(noSling));
        }
        List<MadeEnd> made = Stream.concat(
                        leg.ends().stream(), leg.along().stream().map(KnotsAlong::each))
                .toList();
        for (MadeEnd end : made) {
            checkUse(end, terms, problems);
            checkDangers(end, leg.rope(), terms, problems);
            checkEye(end, terms, problems);
            checkTail(end, terms, problems);
            checkTucks(end, leg.rope(), problems);
        }
    }

    private static void checkUse(MadeEnd end, Assembly.Terms terms, Problems problems) {
        String reason = end.termination().work().notForLifting();
        if (terms.use().isLifting() && !reason.isEmpty()) {
            problems.unsuited(end.name(), end.termination(), end.termination().id() + " for lifting", reason);
        }
    }

    private static void checkDangers(MadeEnd end, Rope rope, Assembly.Terms terms, Problems problems) {
        for (Danger danger : end.termination().work().dangers()) {
            if (danger.holds(rope, terms.ownRope(), terms.use() == Assembly.Use.TURNING)) {
                boolean refused = terms.use().isLifting() || danger.when() == Danger.When.ALWAYS;
                String found = end.termination().id() + " on " + rope.id() + ", "
                        + rope.identity().described();
                if (refused) {
                    problems.unsuited(end.name(), end.termination(), found, danger.words());
                } else {
                    problems.warning(end.name(), found, danger.words());
                }
            }
        }
    }

    /** A soft eye too small for its rope; on a thimble or in a fitting that part's own row decides. */
    private void checkEye(MadeEnd end, Assembly.Terms terms, Problems problems) {
        if (end.termination().kind() != Kind.EYE || end.eye().firm()) {
            return;
        }
        FineLength least = end.length(What.LEAST_EYE);
        if (end.eye().flat().compareTo(least) < 0) {
            problems.tell(terms.use().isLifting(), end.name(), found(end), atLeast(least, source(end)));
        }
    }

    /** A tail, the shop's own too, below the least that print knows. */
    private void checkTail(MadeEnd end, Assembly.Terms terms, Problems problems) {
        FineLength least = end.length(What.LEAST_TAIL);
        if (end.length(What.TAIL).compareTo(least) < 0) {
            problems.tell(
                    terms.use().isLifting(),
                    end.name(),
                    Sentence.of(end.termination().id() + " with a tail of ").and(end.length(What.TAIL)),
                    Sentence.of("at least ")
                            .and(least)
                            .and(": "
                                    + end.allowance(What.LEAST_TAIL)
                                            .provenance()
                                            .source()));
        }
    }

    private static Sentence found(MadeEnd end) {
        return Sentence.of("an eye of ").and(end.eye().flat()).and(" laid flat");
    }

    private static Sentence atLeast(FineLength least, String source) {
        return Sentence.of("at least ").and(least).and(" laid flat, or a thimble: " + source);
    }

    private static String source(MadeEnd end) {
        return end.allowance(What.LEAST_EYE).provenance().source();
    }

    private static void checkTucks(MadeEnd end, Rope rope, Problems problems) {
        if (isBelowAdvised(end, rope)) {
            problems.remark(
                    end.name(),
                    end.termination().id() + " on " + rope.id() + " with "
                            + Tail.fullOnASide(end.termination(), end.spec().options(), rope) + " full tucks",
                    end.termination().tucking().advised().words() + "; fewer than "
                            + end.termination().tucking().least(rope.fibre())
                                    / end.termination().tucking().form().sides()
                            + " are refused");
        }
    }

    /** Whether a synthetic rope gets fewer full tucks than handbooks ask. */
    static boolean isBelowAdvised(MadeEnd end, Rope rope) {
        return !end.termination().tucking().isNone()
                && end.termination().kind() != Kind.BARE
                && !rope.isWire()
                && !rope.fibre().isNatural()
                && Tail.fullOnASide(end.termination(), end.spec().options(), rope)
                        < end.termination().tucking().advised().count();
    }
}
