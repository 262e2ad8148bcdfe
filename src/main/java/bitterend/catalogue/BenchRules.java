package bitterend.catalogue;

import java.util.List;
import java.util.Optional;

/**
 * What the bench itself does to lengths and pieces.
 *
 * @param counters how its counter measures; the first rule that admits a rope counts
 * @param handling what people handle without a hoist
 */
public record BenchRules(List<CounterRule> counters, Handling handling) {
    public BenchRules {
        counters = List.copyOf(counters);
    }

    /** How the counter measures a rope. */
    public Optional<CounterRule> findCounter(Rope rope) {
        return counters.stream().filter(rule -> rule.admits(rope)).findFirst();
    }
}
