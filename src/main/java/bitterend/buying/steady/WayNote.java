package bitterend.buying.steady;

import bitterend.measure.Length;
import java.util.List;

/** A way to buy as it is written down: its offers by their ids. */
public record WayNote(List<RuleNote> rules) {
    public WayNote {
        rules = List.copyOf(rules);
    }

    /** When so many reels of an offer are ordered. */
    public record RuleNote(String offer, Length point, int reels) {}
}
