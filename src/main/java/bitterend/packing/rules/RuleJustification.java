package bitterend.packing.rules;

import bitterend.packing.Reason;
import bitterend.packing.Rule;
import org.optaplanner.core.api.score.stream.ConstraintJustification;

/**
 * Why a rule costs a plan something, handed through the solver.
 *
 * @param reason the rule and its sentence
 */
public record RuleJustification(Reason reason) implements ConstraintJustification {
    static RuleJustification of(Rule rule, String sentence) {
        return new RuleJustification(new Reason(rule, sentence));
    }
}
