package bitterend.buying;

import bitterend.measure.Length;
import bitterend.measure.Sentence;

/**
 * A piece that no reel can hold, neither one that is there nor one that is offered.
 *
 * @param piece its id
 * @param cut its cut length
 * @param why a sentence
 */
public record Unheld(String piece, Length cut, Sentence why) {}
