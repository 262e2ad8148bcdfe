package bitterend.quoting;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.UnitPrice;
import bitterend.packing.LengthBook;
import bitterend.quoting.sharing.RopeShares;
import java.util.List;

/**
 * What the lines of one rope draw and cost together.
 *
 * @param rope id of the rope
 * @param lines the lines that are made of it
 * @param finished finished lengths together
 * @param drawn rope drawn for each line, in the order of the lines: pieces, cut losses and scrap in proportion to what its
 *     pieces take
 * @param book where the rope goes when the lines are cut by themselves from new reels
 * @param price what a metre comes to of the reel cut that is the cheapest by the metre, rounded down
 * @param worth the rope in the pieces at that price
 * @param inPieces the same of each line, in whole coins that add up to it
 * @param shares the cost of cutting the lines by themselves, shared out
 * @param waste the three views of the waste
 * @param buying the new reels that it is priced on
 * @param charged the view that is charged, and what each line pays for rope, waste and reel handling
 */
public record RopeQuote(
        String rope,
        List<String> lines,
        Length finished,
        List<Length> drawn,
        LengthBook book,
        UnitPrice price,
        Cost worth,
        List<Money> inPieces,
        RopeShares shares,
        Waste waste,
        RopeBuying buying,
        Charged charged) {
    public RopeQuote {
        lines = List.copyOf(lines);
        drawn = List.copyOf(drawn);
        inPieces = List.copyOf(inPieces);
    }

    /** The three views of the waste. */
    public record Waste(WasteView alone, WasteView marginal, WasteView usual) {
        public WasteView of(WasteBasis basis) {
            return switch (basis) {
                case ALONE -> alone;
                case MARGINAL -> marginal;
                case USUAL -> usual;
            };
        }
    }

    /**
     * What is charged.
     *
     * @param basis the view that is charged: the shop's own, or alone where that is not known
     * @param total for rope, waste and reel handling
     * @param byLine in the order of the lines; they add up to the rounded total
     */
    public record Charged(WasteBasis basis, Cost total, List<Money> byLine) {
        public Charged {
            byLine = List.copyOf(byLine);
        }
    }

    /** Rope drawn for a line. */
    Length drawnFor(String line) {
        return drawn.get(lines.indexOf(line));
    }

    /** What the rope in the pieces of a line is counted at. */
    Money inPiecesOf(String line) {
        return inPieces.get(lines.indexOf(line));
    }

    /** Waste in coins that, with the rope in the pieces, add up to what is charged where it is charged. */
    public Money inCoins(Cost waste) {
        return worth.plus(waste).rounded().minus(worth.rounded());
    }

    /** What a line pays for rope, waste and reel handling. */
    Money paidBy(String line) {
        return charged.byLine().get(lines.indexOf(line));
    }
}
