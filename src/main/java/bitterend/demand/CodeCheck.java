package bitterend.demand;

import bitterend.catalogue.CodeRule;
import bitterend.catalogue.CodeRule.Rule;
import bitterend.catalogue.Codes;
import bitterend.catalogue.Rope;
import bitterend.catalogue.Termination.Kind;
import bitterend.measure.FineLength;
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the code in force asks of the ends of a leg: the size of a soft eye, a thimble, tucks, the size of a ring. Refused
 * for lifting, unless the code's row only warns, and warned of otherwise. Clear rope between splices is {@link
 * ClearRopeCheck}'s.
 */
final class CodeCheck {
    /** Of rules that ask equally much the one that refuses comes last. */
    private static final Comparator<CodeRule> REFUSING =
            Comparator.comparing(CodeRule::warned).reversed();

    private final Codes codes;

    CodeCheck(Codes codes) {
        this.codes = codes;
    }

    /** Tells what an unknown code or a rule of the code in force has against a leg. */
    void check(Leg leg, Assembly.Terms terms, Problems problems) {
        if (!terms.code().isEmpty() && !codes.knows(terms.code())) {
            problems.error("code", terms.code(), "the id of a code: " + String.join(", ", codes.ids()));
            return;
        }
        String accepted = leg.make().asked().acceptedBy(Accepted.CODE);
        for (MadeEnd end : leg.ends()) {
            for (Asked asked : asked(leg, end, terms)) {
                if (!asked.isKept()) {
                    boolean refused = terms.use().isLifting() && !asked.rule().warned();
                    problems.tell(
                            refused,
                            end.name(),
                            asked.found(),
                            asked.words().and(refused || accepted.isEmpty() ? "" : "; accepted by " + accepted));
                }
            }
        }
    }

    /** What the code asks of a leg, a line each, whether it is kept or not. */
    List<Sentence> lines(Leg leg, Assembly.Terms terms) {
        return leg.ends().stream()
                .flatMap(end -> asked(leg, end, terms).stream())
                .map(Asked::words)
                .distinct()
                .toList();
    }

    /** One thing that a rule asks of an end. */
    private record Asked(CodeRule rule, boolean isKept, Sentence found, Sentence wanted) {
        Sentence words() {
            return wanted.and(": " + rule.words());
        }
    }

    private List<Asked> asked(Leg leg, MadeEnd end, Assembly.Terms terms) {
        List<Asked> asked = new ArrayList<>();
        boolean softEye = end.termination().kind() == Kind.EYE && !end.eye().firm();
        if (softEye) {
            ruling(Rule.LEAST_EYE, leg, end, terms).ifPresent(rule -> asked.add(eye(rule, end, leg.rope())));
        }
        if (terms.use().isLifting() && end.termination().kind() == Kind.EYE && isOnAFitting(end)) {
            ruling(Rule.THIMBLE, leg, end, terms).ifPresent(rule -> asked.add(thimble(rule, end)));
        }
        if (!end.termination().tucking().isNone() && end.termination().kind() != Kind.BARE) {
            ruling(Rule.TUCKS, leg, end, terms).ifPresent(rule -> asked.add(tucks(rule, end, leg)));
        }
        if (end.termination().kind() == Kind.GROMMET) {
            ruling(Rule.RING, leg, end, terms).ifPresent(rule -> asked.add(ring(rule, end)));
        }
        return asked;
    }

    /** An eye on a thimble goes on a fitting; a soft one does where its pin is stated. */
    private static boolean isOnAFitting(MadeEnd end) {
        return end.eye().firm() || end.eye().isSoftOnPin();
    }

    private Optional<CodeRule> ruling(Rule kind, Leg leg, MadeEnd end, Assembly.Terms terms) {
        return codes.ruling(kind, leg.rope(), List.of(end.termination()), terms.code()).stream()
                .max(Comparator.<CodeRule>comparingInt(rule -> rule.least().count())
                        .thenComparing(rule -> length(rule, end))
                        .thenComparing(REFUSING));
    }

    private static FineLength length(CodeRule rule, MadeEnd end) {
        return rule.least().length().length(end.yardsticks());
    }

    private static Asked eye(CodeRule rule, MadeEnd end, Rope rope) {
        boolean fromMemory = rope.layLength().equals(FineLength.ZERO)
                && Unchecked.countsLays(rule.least().length());
        FineLength flat = end.eye().flat();
        FineLength least = length(rule, end);
        return new Asked(
                rule,
                flat.compareTo(least) >= 0,
                Sentence.of("an eye of ").and(flat).and(" laid flat"),
                Sentence.of("a soft eye of at least ")
                        .and(least)
                        .and(" laid flat" + (fromMemory ? " (lay of the rope from memory, type yours)" : "")
                                + ", or a thimble"));
    }

    private static Asked thimble(CodeRule rule, MadeEnd end) {
        return new Asked(
                rule,
                end.eye().firm(),
                Sentence.of(end.termination().id() + " on a pin without a thimble"),
                Sentence.of("a thimble in every eye that goes on a fitting"));
    }

    private static Asked tucks(CodeRule rule, MadeEnd end, Leg leg) {
        int made = Tail.fullOnASide(end.termination(), end.spec().options(), leg.rope());
        int least = rule.least().count();
        return new Asked(
                rule,
                made >= least,
                Sentence.of(end.termination().id() + " with " + made + " full tucks"),
                Sentence.of("at least " + least + " full tucks in "
                        + leg.rope().fibre().word()));
    }

    private static Asked ring(CodeRule rule, MadeEnd end) {
        FineLength round = end.eye().round();
        FineLength least = length(rule, end);
        return new Asked(
                rule,
                round.compareTo(least) >= 0,
                Sentence.of("a ring ").and(round).and(" round its inside"),
                Sentence.of("a ring of at least ").and(least).and(" round its inside"));
    }
}
