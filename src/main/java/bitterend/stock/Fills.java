package bitterend.stock;

import bitterend.measure.Length;
import bitterend.measure.Ratio;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What was learned about reel types by gauging a reel of known length: the share of the whole-turn figure that is there. */
public final class Fills {
    private static final String TYPE = "reel type";
    private static final String KNOWN = "known mm";
    private static final String TURNS = "turns mm";

    private Fills() {}

    /**
     * The facts of an event that a reel of a type held a known length.
     *
     * @param turns what whole turns in whole layers would hold
     */
    public static Map<String, String> facts(String type, Length known, Length turns) {
        Map<String, String> facts = new TreeMap<>();
        facts.put(TYPE, type);
        facts.put(KNOWN, "" + known.mm());
        facts.put(TURNS, "" + turns.mm());
        return facts;
    }

    /** The shares found on reels of a type, oldest first. */
    public static List<Ratio> of(Ledger.Stock stock, String type) {
        return stock.standing(Event.Kind.GAUGED).stream()
                .filter(event -> event.fact(TYPE).equals(type))
                .map(event -> new Ratio(length(event, KNOWN), length(event, TURNS)))
                .toList();
    }

    private static long length(Event event, String fact) {
        long mm = event.number(fact);
        if (mm < 1) {
            throw event.damaged(fact, "length");
        }
        return mm;
    }
}
