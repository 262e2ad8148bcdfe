package bitterend.serve;

import bitterend.report.sheet.CardSheet;
import java.util.List;

/**
 * Cut pieces of one order line that wait for their ends.
 *
 * @param line the line, {@code ORDER/LINE}
 * @param due the day they are wanted
 * @param cards their splice cards, one for each plan that cut some of them; none where the order has changed since or no plan
 *     cut them
 * @param pieces the pieces
 */
public record LineToSplice(String line, String due, List<CardSheet> cards, List<ToSplice> pieces) {
    public LineToSplice {
        cards = List.copyOf(cards);
        pieces = List.copyOf(pieces);
    }
}
