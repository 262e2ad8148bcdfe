package bitterend.catalogue;

import bitterend.measure.Mass;
import java.util.List;
import java.util.Optional;

/**
 * What the bench itself does to lengths and pieces.
 *
 * @param counters how its counter measures; the first rule that admits a rope counts
 * @param handlingLimit the heaviest piece one person handles; zero for no limit
 */
public record BenchRules(List<CounterRule> counters, Mass handlingLimit) {
    public BenchRules {
        counters = List.copyOf(counters);
    }

    /** How the counter measures a rope. */
    public Optional<CounterRule> findCounter(Rope rope) {
        return counters.stream().filter(rule -> rule.admits(rope)).findFirst();
    }
}
