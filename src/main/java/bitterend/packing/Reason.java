package bitterend.packing;

import bitterend.measure.Sentence;

/**
 * Why something is as it is, as a foreman would say it.
 *
 * @param rule the rule behind it
 * @param sentence one sentence naming the piece, the reel and the lengths concerned
 */
public record Reason(Rule rule, Sentence sentence) {
    /** A sentence without a figure. */
    public Reason(Rule rule, String sentence) {
        this(rule, Sentence.of(sentence));
    }
}
