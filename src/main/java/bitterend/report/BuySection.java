package bitterend.report;

import java.util.List;

/**
 * One rope of a buying study before it is set on paper.
 *
 * @param rope name of the rope
 * @param act the paragraph to act on
 * @param table every way to buy
 * @param notes how the figures came about
 * @param cautions what makes the answer doubtful
 * @param pictures drawings, as SVG
 */
public record BuySection(
        String rope, String act, QuoteBlock table, List<String> notes, List<String> cautions, List<String> pictures) {
    public BuySection {
        notes = List.copyOf(notes);
        cautions = List.copyOf(cautions);
        pictures = List.copyOf(pictures);
    }
}
