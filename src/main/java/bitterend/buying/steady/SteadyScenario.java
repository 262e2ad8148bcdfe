package bitterend.buying.steady;

import java.util.List;

/**
 * One future, with every way to buy tried on the same orders.
 *
 * @param number which, from 0
 * @param lived what each way came to, in the order of the ways
 */
public record SteadyScenario(int number, List<Lived> lived) {
    public SteadyScenario {
        lived = List.copyOf(lived);
    }
}
