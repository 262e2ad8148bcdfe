package bitterend.report;

import bitterend.catalogue.Catalogue;
import bitterend.catalogue.CounterRule;
import bitterend.catalogue.Handling;
import bitterend.catalogue.Preparation;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.measure.FineLength;
import bitterend.measure.Mass;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the bench knows of a rope when it is cut: what is done at a mark before, and how the counter measures it.
 *
 * @param brief for a row of the cutting table, such as {@code seizings: 3}
 * @param words in full, with count, width and spacing
 * @param counter true length over reading of the counter; 1 for one that reads true
 * @param handling what people handle without a hoist
 * @param floats whether its fibre is known to float
 * @param cautions what to know of such rope whenever it is cut, a sentence each
 */
public record BeforeCut(
        String brief, String words, Ratio counter, Handling handling, boolean floats, List<String> cautions) {
    static final BeforeCut NOTHING = new BeforeCut("", "");

    public BeforeCut {
        cautions = List.copyOf(cautions);
    }

    /** With a counter that reads true, and no limit. */
    public BeforeCut(String brief, String words) {
        this(brief, words, Ratio.ONE, Handling.UNLIMITED, false, List.of());
    }

    /** Of every rope of a shop, by id. */
    public static Map<String, BeforeCut> ofAll(Catalogue catalogue, Units units) {
        Map<String, BeforeCut> byRope = new TreeMap<>();
        for (Rope rope : catalogue.ropes()) {
            byRope.put(rope.id(), of(catalogue.splices(), rope, units));
        }
        return byRope;
    }

    private static BeforeCut of(SpliceBook splices, Rope rope, Units units) {
        Optional<Preparation> found = splices.findPreparation(rope);
        return new BeforeCut(
                found.map(each -> each.brief(rope)).orElse(""),
                found.map(each -> each.words(rope).print(units)).orElse(""),
                splices.bench().findCounter(rope).map(CounterRule::factor).orElse(Ratio.ONE),
                splices.bench().handling(),
                rope.fibre().floats(),
                rope.cautions());
    }

    /** {@code : two people or a hoist} for what one person should not handle alone; empty for less. */
    String hands(Mass mass) {
        String words = handling.needed(mass).words();
        return words.isEmpty() ? "" : ": " + words;
    }

    /** What the counter shows at a true length. */
    FineLength reading(FineLength length) {
        return length.times(counter.inverse());
    }

    /** What a reader of its figures must know of the counter; empty for one that reads true. */
    String counterWords() {
        return counter.equals(Ratio.ONE)
                ? ""
                : "Counter: true length is " + RatioText.exact(counter)
                        + " x its reading. Every \"cut at\" is what it will show; lengths of pieces are true";
    }
}
