package bitterend.buying;

import bitterend.measure.Length;
import java.util.List;

/**
 * One scenario worked out for every way to buy, on the same orders.
 *
 * @param number which scenario, from 0
 * @param useful rope in the pieces
 * @param outcomes in the order of the study's options
 */
public record Scenario(int number, Length useful, List<Outcome> outcomes) {
    public Scenario {
        outcomes = List.copyOf(outcomes);
    }
}
